package soakloop.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.Difference;
import soakloop.versus.Origin;
import soakloop.versus.PullFigure;
import soakloop.versus.TestSheet;
import soakloop.versus.VersusResult;

/**
 * What a comparison says, in the shop's words.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record VersusSentences(VersusResult result, VersusWords words) {
  private static final int ADVISED = 3;

  /** Share of a spread that is not worth a sensor. */
  private static final double LITTLE = 0.03;

  /** Says what is held against what. */
  String about() {
    String kind =
        result.isLogged()
            ? "From their logs, fitted together as one car"
            : "From what the scenarios state, without logs: an estimate";
    return kind
        + "; all run under the same conditions, those of "
        + result.conditions()
        + ". What was swapped: "
        + words.swapped()
        + ".";
  }

  /** Returns the answer, the verdicts first. */
  Answer answer() {
    List<String> sentences = new ArrayList<>();
    for (VersusResult.Pairing pairing : result.pairings()) {
      sentences.add(verdict(pairing));
    }
    for (VersusResult.Pairing pairing : result.pairings()) {
      sentences.addAll(worth(pairing));
      sentences.addAll(raw(pairing));
    }
    Difference first = result.pairings().get(0).last(result.plan().by());
    return new Answer(
        words.display().signed(first.by().middle(), Dimension.TEMPERATURE_DIFFERENCE, 1),
        words.display().symbol(Dimension.TEMPERATURE_DIFFERENCE),
        sentences);
  }

  /** Says which of two is better. */
  String verdict(VersusResult.Pairing pairing) {
    String one = words.label(pairing.one());
    String other = words.label(pairing.other());
    Difference by = pairing.last(result.plan().by());
    String size = words.size(by.by(), Dimension.TEMPERATURE_DIFFERENCE);
    String colder = result.plan().by() == PullFigure.RISE ? " lower" : " cooler";
    String hotter = result.plan().by() == PullFigure.RISE ? " higher" : " hotter";
    return switch (pairing.verdict()) {
      case BETTER ->
          Display.sentenceStart(other)
              + " is better: the "
              + words.deciding()
              + " is "
              + size
              + colder
              + " than with "
              + one
              + ", same start, day and boost. Chance that it is better"
              + atLeast()
              + ": "
              + VersusWords.sure(by.better())
              + ".";
      case WORSE ->
          Display.sentenceStart(other)
              + " is worse: the "
              + words.deciding()
              + " is "
              + size
              + hotter
              + " than with "
              + one
              + ", same start, day and boost. Chance that it is worse"
              + atLeast()
              + ": "
              + VersusWords.sure(pairing.worse())
              + ".";
      case OPEN ->
          Display.sentenceStart(other)
              + " and "
              + one
              + " are not distinguishable with "
              + (result.isLogged() ? "these logs" : "what is stated")
              + ": the "
              + words.deciding()
              + " differs by "
              + words.signed(by.by(), Dimension.TEMPERATURE_DIFFERENCE)
              + ". Chance that "
              + other
              + " is better"
              + atLeast()
              + ": "
              + VersusWords.sure(by.better())
              + "; that it is worse"
              + atLeast()
              + ": "
              + VersusWords.sure(pairing.worse())
              + ".";
    };
  }

  private String atLeast() {
    double by = result.plan().atLeast();
    return by > 0 ? " by " + words.display().fineSize(by) + " or more" : "";
  }

  /** Says what the difference is worth in time over the limit, spark, power and pressure. */
  private List<String> worth(VersusResult.Pairing pairing) {
    List<String> parts = new ArrayList<>();
    Difference over = pairing.last(PullFigure.OVER_LIMIT);
    if (over.isKnown() && Math.abs(over.by().middle()) > 0.05) {
      parts.add(
          words.size(over.by(), Dimension.TIME)
              + (over.by().middle() < 0 ? " less" : " more")
              + " over the limit");
    }
    Difference spark = pairing.last(PullFigure.SPARK);
    if (spark.isKnown() && Math.abs(spark.by().middle()) > 1e-3) {
      parts.add(
          words.size(spark.by(), Dimension.ANGLE)
              + (spark.by().middle() < 0 ? " less" : " more")
              + " spark taken out");
    }
    Difference power = pairing.last(PullFigure.POWER);
    if (power.isKnown() && Math.abs(power.by().middle()) > 50) {
      parts.add(words.signed(power.by(), Dimension.POWER) + " at the crank");
    }
    Difference loss = pairing.last(PullFigure.LOSS);
    if (loss.isKnown() && Math.abs(loss.by().middle()) > 10) {
      parts.add(
          words.size(loss.by(), Dimension.PRESSURE_DIFFERENCE)
              + (loss.by().middle() < 0 ? " less" : " more")
              + " pressure lost in it");
    }
    return parts.isEmpty()
        ? List.of()
        : List.of(
            "There that means "
                + LogWords.listed(parts)
                + " with "
                + words.label(pairing.other())
                + ".");
  }

  /** Says what the logs show by themselves, and how much of it the swap explains. */
  private List<String> raw(VersusResult.Pairing pairing) {
    if (pairing.logged().isEmpty()) {
      return List.of();
    }
    VersusResult.Raw raw = pairing.logged().get(0);
    Map<Origin, Band> parts = new EnumMap<>(raw.parts());
    Band swapped = parts.getOrDefault(Origin.SWAPPED, new Band(0, 0, 0));
    return List.of(
        "By the logs alone "
            + raw.pull()
            + " rises "
            + words.display().fineSize(raw.one().rise())
            + " with "
            + words.label(pairing.one())
            + " and "
            + words.display().fineSize(raw.other().rise())
            + " with "
            + words.label(pairing.other())
            + String.format(
                Locale.ROOT,
                ", %.0f %% %s. Of that difference of ",
                100 * Math.abs(raw.reduction()),
                raw.reduction() >= 0 ? "less" : "more")
            + words.degrees(raw.difference())
            + " what was swapped makes "
            + words.signed(swapped, Dimension.TEMPERATURE_DIFFERENCE)
            + ", and what was not alike between the two days "
            + words.degrees(raw.difference() - swapped.middle() - raw.rest())
            + "; "
            + words.degrees(raw.rest())
            + " is not explained.");
  }

  /** Says where the answer would be another; whole sentences. */
  List<String> elsewhere(VersusResult.Pairing pairing) {
    List<String> open = new ArrayList<>();
    List<String> turned = new ArrayList<>();
    double confidence = result.plan().confidence();
    boolean better = pairing.last(result.plan().by()).by().middle() < 0;
    for (VersusResult.Elsewhere there : pairing.elsewhere()) {
      double middle = there.difference().by().middle();
      if (Math.max(there.difference().better(), 1 - there.difference().better()) < confidence) {
        open.add(there.name());
      } else if (middle < 0 != better) {
        turned.add(there.name());
      }
    }
    List<String> sentences = new ArrayList<>();
    String other = words.label(pairing.other());
    if (!turned.isEmpty()) {
      sentences.add("The ranking turns round under: " + String.join("; ", turned) + ".");
    }
    if (!open.isEmpty()) {
      sentences.add(
          "It cannot be said whether "
              + other
              + " is better"
              + atLeast()
              + " under: "
              + String.join("; ", open)
              + ". If that is how the car is used, the dearer of the two is not worth its price by"
              + " these numbers.");
    }
    if (sentences.isEmpty()) {
      sentences.add("Under none of these conditions does the answer change.");
    }
    return sentences;
  }

  /** Says what would settle it, or what would sharpen it; whole sentences. */
  List<String> settling(VersusResult.Pairing pairing) {
    VersusResult.Settling settling = pairing.settling();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "What is not known of the car leaves the difference uncertain by +/- "
            + words.half(settling.deviation())
            + ", nine times in ten; what the model itself is off by adds +/- "
            + words.half(settling.floor())
            + ", however much is measured.");
    if (pairing.verdict() == VersusResult.Verdict.OPEN && !settling.sessions().isEmpty()) {
      sentences.add(
          settling
              .enough()
              .map(
                  n ->
                      "If the difference really is what it most likely is, "
                          + (n == 1 ? "one more pull" : "a further session of " + n + " pulls")
                          + " with each would settle it.")
              .orElse(
                  "Not even a further session of "
                      + settling.sessions().size()
                      + " pulls with each is expected to settle a difference of the likeliest"
                      + " size: for what can be measured they are alike."));
    }
    List<Advice> worth = settling.advice().stream().filter(a -> a.gain() > LITTLE).toList();
    if (!worth.isEmpty()) {
      sentences.add(
          "Most would be learned from "
              + String.join(
                  "; ",
                  worth.stream()
                      .limit(ADVISED)
                      .map(a -> a.what() + " (to +/- " + words.half(a.then()) + ")")
                      .toList())
              + ".");
    }
    return sentences;
  }

  /** Says which conditions were not alike; whole sentences. */
  List<String> conditions(VersusResult.Pairing pairing) {
    List<String> sentences = new ArrayList<>();
    for (VersusResult.Condition condition : pairing.conditions()) {
      if (condition.isBroken()) {
        sentences.add(
            Display.sentenceStart(condition.kind().label())
                + " differed more than it should: it cost "
                + words.label(pairing.other())
                + " "
                + words.degrees(condition.costs())
                + " in the "
                + words.deciding()
                + ".");
      }
    }
    if (sentences.isEmpty() && !pairing.conditions().isEmpty()) {
      sentences.add(
          "No condition differed so much that it cost more than "
              + words.display().fineSize(VersusResult.Condition.TOLERATED)
              + " in the "
              + words.deciding()
              + ".");
    }
    return sentences;
  }

  /** Says how to test fairly; whole sentences. */
  List<String> sheet(TestSheet sheet) {
    List<String> sentences = new ArrayList<>();
    String one = words.label(0);
    String other = words.label(1);
    sentences.add(
        "Order: "
            + one
            + ", then "
            + other
            + ", then "
            + one
            + " again. If the third set does not repeat the first, something else changed.");
    sentences.add(
        "Same gear, same start speed, same speed at which the pull is counted, same tie-down and"
            + " tyre pressure; the shop fan where it was, and marked on the floor.");
    VersusTables tables = new VersusTables(result, words);
    List<String> windows =
        sheet.windows().stream()
            .filter(VersusResult.Condition::matters)
            .map(w -> w.kind().label() + " " + tables.window(w))
            .toList();
    if (!windows.isEmpty()) {
      sentences.add(
          "Keep alike to within: "
              + String.join("; ", windows)
              + ". Each of these alone costs "
              + words.display().fineSize(VersusResult.Condition.TOLERATED)
              + " in the "
              + words.deciding()
              + ".");
    }
    sentences.add(
        "A swap drains the loop: bleed it until the pump runs quiet and the return runs solid, then"
            + " idle with the pump on until the loop reads where the other core started."
            + " Pressure-test the swapped core before cranking.");
    sentences.add(
        "Wait with the engine idling and the pump on, each time alike, and long enough that every"
            + " pull starts alike: `dyno-day` says how long.");
    return sentences;
  }

  /** Says how the numbers came about, for those who ask. */
  String method() {
    return String.format(
        Locale.ROOT,
        "%s Intervals and chances are read off %d equally likely cars, each run with every"
            + " contender, so that what is not known of car and loop weighs on all alike; the"
            + " model's own error of the charge, %s to either side nine times in ten, is taken to be"
            + " another for each. Something is said from %.0f %% on. What a difference comes from"
            + " is shared out as the average over all orders in which things can be changed from"
            + " one day's to the other's (Shapley values), so that the parts sum to the whole.",
        result.isLogged()
            ? "All logs are fitted together: car, loop and sensors are one, the swapped part is"
                + " each one's own, day, start and session each log's."
            : "Nothing is fitted: every key moves within its stated spread.",
        result.cars(),
        words.half(result.modelError()),
        100 * result.plan().confidence());
  }
}
