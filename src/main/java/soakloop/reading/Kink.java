package soakloop.reading;

import java.util.Optional;

/**
 * Finds the moment at which a signal's slope breaks, between its updates: a parabola on each side,
 * meeting at the moment, the moment that leaves the least squares.
 */
final class Kink {
  /** How far from the first guess it is looked for, s. */
  private static final double REACH = 0.5;

  private static final double STEP = 0.02;

  /** Values that each side needs beside the two factors of its own. */
  private static final int LEAST = 4;

  private Kink() {}

  /**
   * Finds the break.
   *
   * @param signal what breaks
   * @param guess where about, s
   * @param from where the side before begins, s
   * @param to where the side after ends, s
   * @return s; empty if there are too few updates or the best moment is at the end of what was
   *     tried
   */
  static Optional<Double> find(Updates signal, double guess, double from, double to) {
    Updates window = signal.between(from, to);
    double best = Double.POSITIVE_INFINITY;
    double where = Double.NaN;
    int last = (int) Math.round(REACH / STEP);
    int found = 0;
    for (int i = -last; i <= last; i++) {
      double moment = guess + i * STEP;
      int before = window.from(moment);
      if (before < LEAST || window.size() - before < LEAST) {
        continue;
      }
      double residual =
          LeastSquares.fit(window, t -> terms(t - moment))
              .map(LeastSquares.Fit::residual)
              .orElse(Double.POSITIVE_INFINITY);
      if (residual < best) {
        best = residual;
        where = moment;
        found = i;
      }
    }
    return Double.isNaN(where) || Math.abs(found) == last ? Optional.empty() : Optional.of(where);
  }

  private static double[] terms(double t) {
    double before = Math.min(t, 0);
    double after = Math.max(t, 0);
    return new double[] {1, before, before * before, after, after * after};
  }
}
