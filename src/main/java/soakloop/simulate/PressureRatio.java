package soakloop.simulate;

import soakloop.quantity.Bracket;

/**
 * Finds the pressure ratio at which what a blower is asked for is what it gives, from the one found
 * last. The ratio is found to {@link #CLOSE}, so that it does not tell from where the search began.
 */
final class PressureRatio {
  /** Blower and what is behind it. */
  interface Balance {
    /** Returns the ratio that is asked for when the blower gives one, less that. */
    double wanting(double given);
  }

  private static final double CLOSE = 1e-9;
  private static final double LOOSE = 1e-6;
  private static final int PATIENCE = 12;

  /** Slope of asked less given that is usual: a hotter charge asks for more, more leaks back. */
  private static final double USUAL_SLOPE = -0.7;

  private static final double LEAST_SLOPE = -0.05;

  private final Balance balance;
  private double last = 1.8;
  private double slope = USUAL_SLOPE;

  /**
   * Takes what is asked for.
   *
   * @param balance of blower and what is behind it
   */
  PressureRatio(Balance balance) {
    this.balance = balance;
  }

  /**
   * Finds the ratio; the balance was last asked at this ratio.
   *
   * @param greatest ratio that is allowed, above 1
   * @return 1 where nothing is asked for
   * @throws IllegalArgumentException if it would be above the greatest
   */
  double find(double greatest) {
    return find(last, greatest);
  }

  /**
   * Finds the ratio from a guess.
   *
   * @param guess above 0
   * @param greatest ratio that is allowed, above 1
   * @return as {@link #find(double)}
   */
  double find(double guess, double greatest) {
    double ratio = guess;
    double wants = balance.wanting(ratio);
    for (int i = 0; i < PATIENCE && Math.abs(wants) > CLOSE * ratio; i++) {
      double next = Math.max(1, Math.min(greatest, ratio - wants / slope));
      if (next == ratio) {
        break;
      }
      double then = balance.wanting(next);
      double found = (then - wants) / (next - ratio);
      slope = found < LEAST_SLOPE ? found : USUAL_SLOPE;
      ratio = next;
      wants = then;
    }
    if (Math.abs(wants) > CLOSE * ratio) {
      ratio = search(greatest);
    }
    last = ratio;
    return ratio;
  }

  /** The slow way, for an end of the range or a curve that leads the quick one astray. */
  private double search(double greatest) {
    slope = USUAL_SLOPE;
    if (balance.wanting(1) <= 0) {
      return 1;
    }
    if (balance.wanting(greatest) > 0) {
      throw new IllegalArgumentException(
          "the blower would make more than "
              + (int) greatest
              + " times the pressure before it; check displacements and drive ratio");
    }
    double ratio = Bracket.root(1, greatest, balance::wanting);
    double left = balance.wanting(ratio);
    if (!(Math.abs(left) < LOOSE)) {
      throw new IllegalArgumentException("no pressure ratio found for the blower");
    }
    return ratio;
  }
}
