package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.fit.FitKey;
import soakloop.fit.FitResult;
import soakloop.fit.HeldOut;
import soakloop.fit.KeyNews;
import soakloop.fit.Quantity;
import soakloop.quantity.Dimension;

/**
 * What a fit says, in the shop's words.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record FitSentences(FitResult result, FitWords words) {
  /** Keys named in one sentence. */
  private static final int NAMED = 6;

  /** Sensors and tests named. */
  private static final int ADVISED = 4;

  /** Share of a spread that is not worth a sensor. */
  private static final double LITTLE = 0.03;

  /** Half the width of a 90 % interval in standard deviations. */
  private static final double NINETY = 1.645;

  /** Returns the answer: what is known of the car and its next pull, and how that was tried. */
  Answer answer() {
    List<String> sentences = new ArrayList<>();
    boolean several = result.quantities().size() > 1;
    for (FitResult.Quantities known : result.quantities()) {
      String of = several ? known.label() + ": " : "";
      for (Quantity quantity :
          List.of(
              Quantity.NEXT_PEAK, Quantity.CORE_DUTY, Quantity.LOOP_FLOW, Quantity.NEXT_COOLANT)) {
        if (known.after().containsKey(quantity)) {
          sentences.add(Display.sentenceStart(of + told(known, quantity)));
        }
      }
    }
    result.heldOut().forEach(h -> sentences.add(heldOut(h)));
    if (sentences.isEmpty()) {
      sentences.add("The session has no pull of its own, so no next one can be foretold.");
    }
    Display display = words.display();
    double first = headline();
    return new Answer(
        display.number(first, Dimension.TEMPERATURE, 0),
        display.symbol(Dimension.TEMPERATURE),
        sentences);
  }

  private double headline() {
    Map<Quantity, Band> after = result.quantities().get(0).after();
    Band peak = after.get(Quantity.NEXT_PEAK);
    return peak == null ? Double.NaN : peak.middle();
  }

  private String told(FitResult.Quantities known, Quantity quantity) {
    Band after = known.after().getOrDefault(quantity, NONE);
    Band before = known.before().getOrDefault(quantity, NONE);
    String now = words.known(after, quantity.dimension());
    String then = " (" + words.known(before, quantity.dimension()) + " before the log).";
    return switch (quantity) {
      case NEXT_PEAK -> "One more pull would peak at " + now + " on the sensor" + then;
      case NEXT_END -> "One more pull would end at " + now + " on the sensor" + then;
      case NEXT_COOLANT -> "Coolant would enter the core at " + now + " as it starts" + then;
      case CORE_DUTY ->
          "From air 100 K above its coolant the core takes " + now + " at a pull's end" + then;
      case LOOP_FLOW -> "The loop flows " + now + then;
    };
  }

  private static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);

  private String heldOut(HeldOut held) {
    Display display = words.display();
    String where = held.inside() ? "inside that" : "outside that: lean on it with care";
    return "Tried on what it had not seen: from the pulls before, "
        + held.pull()
        + (result.plan().cases().size() > 1 ? " of " + held.label() : "")
        + " was foretold to peak at "
        + words.known(held.foretold(), Dimension.TEMPERATURE)
        + "; the log shows "
        + display.show(held.logged(), Dimension.TEMPERATURE, 0)
        + ", "
        + where
        + ".";
  }

  /** Returns what the logs cannot tell, whole sentences. */
  List<String> cannotTell() {
    List<String> sentences = new ArrayList<>();
    for (FitResult.Pair pair : result.pairs()) {
      sentences.add(
          pair.one()
              + " and "
              + pair.other()
              + " cannot be told apart by this log: only what they do together is known, to "
              + FitWords.percent(pair.known())
              + " of what was believed.");
    }
    List<String> assumed =
        result.keys().stream()
            .filter(k -> !k.isNews())
            .map(k -> k.key().name())
            .filter(n -> !n.startsWith("bias.") && !n.startsWith("lag."))
            .toList();
    if (!assumed.isEmpty()) {
      sentences.add(
          "Of these the answer is little more than what was assumed: " + some(assumed) + ".");
    }
    List<String> untold = result.untold().stream().map(FitKey::name).toList();
    if (!untold.isEmpty()) {
      sentences.add("Of these it says nothing at all: " + some(untold) + ".");
    }
    return sentences;
  }

  private static String some(List<String> names) {
    return names.size() <= NAMED
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
                    + LogWords.listed(worth.stream().limit(ADVISED).map(this::narrowed).toList())
                    + "."));
      }
    }
    return sentences;
  }

  private String narrowed(Advice advice) {
    return advice.what() + ", to " + spread(advice.then());
  }

  /** Shows half a 90 % interval. */
  private String spread(double deviation) {
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
    return key.key().role() instanceof soakloop.fit.Role.OfScenario;
  }
}
