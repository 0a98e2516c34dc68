package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How often intervals held the truth, and how much narrower than before they were.
 *
 * @param cases fitted days
 */
record RecoveryTable(List<RecoveryCase> cases) {
  private static final double FEWEST = 0.85;
  private static final double MOST = 0.95;
  private static final double NARROWER = 0.5;

  /** How far a pull's peak may be foretold wrongly, K, and how often it must not be more. */
  private static final double NEAR = 2;

  private static final double NEARLY_ALWAYS = 0.95;

  RecoveryTable {
    cases = List.copyOf(cases);
  }

  private List<RecoveryCase.Answer> answers(Quantity quantity) {
    return cases.stream().map(c -> c.answer(quantity)).toList();
  }

  /** Share of intervals that hold the truth. */
  double coverage(Quantity quantity) {
    return share(answers(quantity).stream().map(RecoveryCase.Answer::covers).toList());
  }

  /** Median of the intervals' widths over those before, of days that say they have news of it. */
  double width(Quantity quantity) {
    return median(
        answers(quantity).stream()
            .filter(RecoveryCase.Answer::informed)
            .map(RecoveryCase.Answer::width)
            .toList());
  }

  /** Share of days that say that the log has news of it. */
  double informed(Quantity quantity) {
    return share(answers(quantity).stream().map(RecoveryCase.Answer::informed).toList());
  }

  /** Share of held-out peaks foretold nearly enough. */
  double near() {
    return share(cases.stream().map(c -> Math.abs(c.heldOut()) <= NEAR).toList());
  }

  /** Share of held-out peaks within their intervals. */
  double heldInside() {
    return share(cases.stream().map(RecoveryCase::inside).toList());
  }

  /** Median of how far held-out peaks were off, K. */
  double off() {
    return median(cases.stream().map(c -> Math.abs(c.heldOut())).toList());
  }

  /** Returns the same of one kind of logger. */
  RecoveryTable of(String style) {
    return new RecoveryTable(cases.stream().filter(c -> c.style().equals(style)).toList());
  }

  /** Returns what a fit would do that gives back what was believed. */
  RecoveryTable asBelieved() {
    return new RecoveryTable(cases.stream().map(RecoveryCase::asBelieved).toList());
  }

  /** Says what is not as it should be; nothing if all is. */
  List<String> shortfalls() {
    List<String> shortfalls = new ArrayList<>();
    for (Quantity quantity : RecoveryCase.ASKED) {
      double coverage = coverage(quantity);
      if (coverage < FEWEST || coverage > MOST) {
        shortfalls.add(
            String.format(
                Locale.ROOT,
                "%s: %.1f %% of the intervals hold the truth, not 85 to 95 %%",
                quantity.key(),
                100 * coverage));
      }
      if (!(width(quantity) <= NARROWER)) {
        shortfalls.add(
            String.format(
                Locale.ROOT,
                "%s: intervals are %.2f of those before, not at most 0.5",
                quantity.key(),
                width(quantity)));
      }
    }
    if (near() < NEARLY_ALWAYS) {
      shortfalls.add(
          String.format(
              Locale.ROOT, "held-out peaks: %.1f %% within 2 K, not 95 %%", 100 * near()));
    }
    return shortfalls;
  }

  private static double share(List<Boolean> of) {
    return of.stream().filter(b -> b).count() / (double) of.size();
  }

  private static double median(List<Double> of) {
    List<Double> sorted = of.stream().sorted().toList();
    int n = sorted.size();
    return n == 0 ? Double.NaN : (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }
}
