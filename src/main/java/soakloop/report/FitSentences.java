package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.fit.FitKey;
import soakloop.fit.FitResult;
import soakloop.fit.HeldOut;
import soakloop.fit.KeyNews;
import soakloop.fit.Quantity;
import soakloop.fit.Role;
import soakloop.quantity.Dimension;

/**
 * What a fit says, in the shop's words.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record FitSentences(FitResult result, FitWords words) {
  /** Stands for what could not be computed. */
  static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);

  /** Keys named in one sentence. */
  private static final int NAMED = 6;

  /** Sensors and tests named. */
  private static final int ADVISED = 4;

  /** Share of a spread that is not worth a sensor. */
  private static final double LITTLE = 0.03;

  /** Half the width of a 90 % interval in standard deviations. */
  private static final double NINETY = 1.645;

  /** Told first, in this order. */
  private static final List<Quantity> TOLD =
      List.of(
          Quantity.NEXT_PEAK,
          Quantity.CORE_SHARE,
          Quantity.CORE_DUTY,
          Quantity.LOOP_FLOW,
          Quantity.NEXT_COOLANT);

  /** Says what was fitted to what. */
  String about() {
    List<String> logs =
        result.plan().cases().stream()
            .flatMap(c -> c.scenario().logged().stream())
            .map(l -> l.log().name())
            .toList();
    return "Fitted to "
        + LogWords.listed(logs)
        + ": "
        + result.effort().points()
        + " points of "
        + result.signals().size()
        + (result.signals().size() == 1 ? " signal." : " signals.");
  }

  /** Returns the answer: what is known of the next pull and the car, and how that was tried. */
  Answer answer() {
    List<String> sentences = new ArrayList<>();
    for (Quantity quantity : TOLD) {
      for (FitResult.Quantities known : result.quantities()) {
        if (words.isOpen(known, quantity)) {
          sentences.add(told(known, quantity));
        }
      }
      if (quantity == Quantity.NEXT_PEAK) {
        result.heldOut().forEach(h -> sentences.add(heldOut(h)));
      }
    }
    if (sentences.isEmpty()) {
      sentences.add("The session has no pull of its own, so no next one can be foretold.");
    }
    Display display = words.display();
    return new Answer(
        display.number(headline(), Dimension.TEMPERATURE, 0),
        display.symbol(Dimension.TEMPERATURE),
        sentences);
  }

  private double headline() {
    Map<Quantity, Band> after = result.quantities().get(0).after();
    return after.getOrDefault(Quantity.NEXT_PEAK, NONE).middle();
  }

  private String told(FitResult.Quantities known, Quantity quantity) {
    String of = result.quantities().size() > 1 ? known.label() + ": " : "";
    Band after = known.after().getOrDefault(quantity, NONE);
    Band before = known.before().getOrDefault(quantity, NONE);
    String now = words.known(after, quantity.dimension());
    String then = " (" + words.known(before, quantity.dimension()) + " before the log).";
    String said =
        switch (quantity) {
          case NEXT_PEAK -> "One more pull would peak at " + now + " on the sensor";
          case NEXT_END -> "One more pull would end at " + now + " on the sensor";
          case NEXT_COOLANT -> "Coolant would enter the core at " + now + " as that pull starts";
          case CORE_SHARE ->
              "At a pull's counted end the core takes " + now + " of the heat there is to take";
          case CORE_DUTY ->
              "With air "
                  + words.display().difference(Quantity.STATED_DIFFERENCE)
                  + " above the coolant it would take "
                  + now;
          case LOOP_FLOW -> "The loop really flows " + now;
        };
    return Display.sentenceStart(of + said + then);
  }

  private String heldOut(HeldOut held) {
    String of = result.plan().cases().size() > 1 ? " of " + held.label() : "";
    return "Tried on "
        + held.pull()
        + of
        + ", from the pulls before it alone: foretold to peak at "
        + words.known(held.foretold(), Dimension.TEMPERATURE)
        + ", logged "
        + words.display().show(held.logged(), Dimension.TEMPERATURE, 0)
        + ", "
        + (held.inside() ? "inside the band." : "outside the band, so lean on it with care.");
  }

  /** Returns what the logs cannot tell, whole sentences. */
  List<String> cannotTell() {
    List<String> sentences = new ArrayList<>();
    for (FitResult.Pair pair : result.pairs()) {
      sentences.add(
          pair.one()
              + " and "
              + pair.other()
              + " cannot be told apart: only what they do together is known, to "
              + FitWords.percent(pair.known())
              + " of the spread before.");
    }
    List<String> assumed =
        result.keys().stream()
            .filter(k -> !k.isNews() && isOfScenario(k))
            .map(k -> k.key().name())
            .toList();
    if (!assumed.isEmpty()) {
      sentences.add(
          "It says next to nothing of "
              + some(assumed)
              + ": what stands there is what was assumed.");
    }
    List<String> untold = result.untold().stream().map(FitKey::name).toList();
    if (!untold.isEmpty()) {
      sentences.add("It says nothing at all of " + some(untold) + ".");
    }
    return sentences;
  }

  private static String some(List<String> names) {
    return names.size() <= NAMED + 1
        ? LogWords.listed(names)
        : String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
  }

  /** Returns what would tell most of what is not known yet; empty if nothing would. */
  List<String> advice() {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < result.advice().size(); i++) {
      List<Advice> worth = result.advice().get(i).stream().filter(a -> a.gain() > LITTLE).toList();
      if (!worth.isEmpty()) {
        String of = result.advice().size() > 1 ? result.quantities().get(i).label() + ": " : "";
        sentences.add(
            Display.sentenceStart(
                of
                    + "what would narrow the "
                    + result.plan().wanted().label()
                    + " most (now +/- "
                    + spread(worth.get(0).now())
                    + " from what is not known of the car): "
                    + String.join("; ", worth.stream().limit(ADVISED).map(this::narrowed).toList())
                    + "."));
      }
    }
    return sentences;
  }

  private String narrowed(Advice advice) {
    return advice.what() + ", to +/- " + spread(advice.then());
  }

  /** Shows half a 90 % interval. */
  String spread(double deviation) {
    Dimension dimension = result.plan().wanted().dimension().ofSpread();
    double half = NINETY * deviation;
    return words.display().show(half, dimension, FitWords.digits(half, dimension, words.display()));
  }

  /** Returns the keys that the logs say something of, those of the scenario first. */
  List<KeyNews> news() {
    List<KeyNews> news = new ArrayList<>();
    result.keys().stream().filter(k -> k.isNews() && isOfScenario(k)).forEach(news::add);
    result.keys().stream().filter(k -> k.isNews() && !isOfScenario(k)).forEach(news::add);
    return news;
  }

  private static boolean isOfScenario(KeyNews key) {
    return key.key().role() instanceof Role.OfScenario;
  }

  private String widened() {
    return result.widening() > 1
        ? String.format(
            Locale.ROOT,
            " Because held-out pulls came out further off than foretold, what the log says is"
                + " believed less: as if every interval it gives were %.1f times as wide.",
            result.widening())
        : "";
  }

  /** Says how the numbers came about, for those who ask. */
  String method() {
    return String.format(
        Locale.ROOT,
        "The likeliest values of %d keys, with the scenario's values and spreads as what was"
            + " believed before, every key kept within its range. The model's own error is taken to"
            + " last: it fades in time as an Ornstein-Uhlenbeck process does, beside each reading's"
            + " own noise, so that close readings do not count as so many pieces of news; its size"
            + " and time are the likeliest ones too. The log decides as much as %.1f keys would."
            + " Intervals of the next pull are read off %d equally likely cars, the model's own"
            + " error added to sensor readings.%s",
        result.keys().size(),
        result.effort().effectiveKeys(),
        result.plan().draws(),
        widened());
  }
}
