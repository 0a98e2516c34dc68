package soakloop.reading;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the moment at which a signal's slope breaks, between its updates: a line before it, as
 * where speed is held, and a parabola after it, meeting at the moment that leaves the least
 * squares; or a cubic before it, as a smooth run-up is, where that leaves clearly less.
 */
final class Kink {
  /** How far from the first guess it is looked for, s. */
  private static final double REACH = 0.7;

  private static final double STEP = 0.02;

  /** How far both ways the updates must allow it to be looked for, s. */
  private static final double BOTH_WAYS = 0.25;

  /** Values before the moment: eight in its second or so hold a curve, fewer only its noise. */
  private static final int LEAST_BEFORE = 8;

  /** Values after it beside the two factors of that side. */
  private static final int LEAST_AFTER = 4;

  /** How much less a cubic must leave for its two factors more [-]. */
  private static final double BETTER = 1.5;

  private Kink() {}

  /**
   * Finds the break.
   *
   * @param signal what breaks
   * @param guess where about, s
   * @param from where the side before begins, s
   * @param to where the side after ends, s
   * @return s; empty if there are too few updates on either side or the best moment is at the end
   *     of what was tried
   */
  static Optional<Double> find(Updates signal, double guess, double from, double to) {
    Updates window = signal.between(from, to);
    int last = (int) Math.round(REACH / STEP);
    int[] steps =
        IntStream.rangeClosed(-last, last)
            .filter(i -> window.from(guess + i * STEP) >= LEAST_BEFORE)
            .filter(i -> window.size() - window.from(guess + i * STEP) >= LEAST_AFTER)
            .toArray();
    if (steps.length == 0
        || steps[0] * STEP > -BOTH_WAYS
        || steps[steps.length - 1] * STEP < BOTH_WAYS) {
      return Optional.empty();
    }
    double[] held = residuals(window, guess, steps, false);
    double[] bent = residuals(window, guess, steps, true);
    int heldBest = least(held);
    int bentBest = least(bent);
    int where = held[heldBest] > BETTER * bent[bentBest] ? bentBest : heldBest;
    return where == 0 || where == steps.length - 1
        ? Optional.empty()
        : Optional.of(guess + steps[where] * STEP);
  }

  private static int least(double[] residuals) {
    int best = 0;
    for (int i = 1; i < residuals.length; i++) {
      best = residuals[i] < residuals[best] ? i : best;
    }
    return best;
  }

  private static double[] residuals(Updates window, double guess, int[] steps, boolean bent) {
    return Arrays.stream(steps)
        .mapToDouble(
            step -> {
              double moment = guess + step * STEP;
              return LeastSquares.fit(window, t -> terms(t - moment, bent))
                  .map(LeastSquares.Fit::residual)
                  .orElse(Double.POSITIVE_INFINITY);
            })
        .toArray();
  }

  private static double[] terms(double t, boolean bent) {
    double before = Math.min(t, 0);
    double after = Math.max(t, 0);
    double square = before * before;
    return bent
        ? new double[] {1, before, square, square * before, after, after * after}
        : new double[] {1, before, after, after * after};
  }
}
