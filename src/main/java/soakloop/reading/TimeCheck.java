package soakloop.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import soakloop.log.Log;

/** Finds missing rows and rows at very unequal distances. */
final class TimeCheck {
  /** Distances of rows that make a gap: this many usual ones, and this many seconds. */
  private static final double USUAL = 5;

  private static final double AT_LEAST = 1;

  /** Ratio of a long distance to a short one from which rates of change cannot be trusted [-]. */
  private static final double UNEVEN = 3;

  /** Gaps told one by one. */
  private static final int TOLD = 10;

  private TimeCheck() {}

  static List<Finding> check(Log log) {
    List<Finding> findings = new ArrayList<>();
    double[] steps = new double[log.size() - 1];
    Arrays.setAll(steps, i -> log.time(i + 1) - log.time(i));
    double usual = Numbers.median(steps);
    int gaps = 0;
    for (int i = 0; i < steps.length; i++) {
      if (steps[i] > USUAL * usual && steps[i] > AT_LEAST && gaps++ < TOLD) {
        findings.add(gap(log, i, steps[i], usual));
      }
    }
    if (gaps > TOLD) {
      findings.add(
          Finding.of(
              Finding.Kind.TIME_GAP,
              Span.all(log),
              Sureness.SURE,
              "There are " + gaps + " gaps in all; the first " + TOLD + " are listed.",
              "Nothing is drawn or counted across any of them."));
    }
    double longer = Numbers.quantile(0.9, steps) / Numbers.quantile(0.1, steps);
    if (longer > UNEVEN) {
      findings.add(
          Finding.of(
              Finding.Kind.UNEVEN_TIME,
              Span.all(log),
              Sureness.SURE,
              String.format(Locale.ROOT, "Rows come at distances that differ %.0f times.", longer),
              "Each row is taken at its own time."));
    }
    return findings;
  }

  private static Finding gap(Log log, int row, double step, double usual) {
    return Finding.of(
        Finding.Kind.TIME_GAP,
        new Span(row, row + 1, log.time(row), log.time(row + 1)),
        Sureness.SURE,
        "No rows for "
            + ChannelWords.number(step)
            + " s after "
            + ChannelWords.number(log.time(row))
            + " s, where one comes each "
            + ChannelWords.number(usual)
            + " s.",
        "No pull is followed across it, and what happened in it is not guessed.");
  }
}
