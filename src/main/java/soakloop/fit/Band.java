package soakloop.fit;

import java.util.Arrays;

/**
 * Where a number lies, nine times in ten.
 *
 * @param low lower end of the 90 % interval, SI
 * @param middle median, SI
 * @param high upper end, SI
 */
public record Band(double low, double middle, double high) {
  /** Checks the order; what could not be computed is NaN throughout. */
  public Band {
    if (low > middle || middle > high) {
      throw new IllegalArgumentException("no band: " + low + ", " + middle + ", " + high);
    }
  }

  /**
   * Reads the band off equally likely values; those that are no numbers do not count.
   *
   * @param values SI
   */
  public static Band of(double[] values) {
    double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    return sorted.length == 0
        ? new Band(Double.NaN, Double.NaN, Double.NaN)
        : new Band(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
  }

  /** Value under which a share lies, straight between the middles of the values' steps. */
  private static double at(double[] sorted, double share) {
    double place = share * sorted.length - 0.5;
    int below = (int) Math.max(0, Math.min(sorted.length - 1.0, Math.floor(place)));
    int above = Math.min(sorted.length - 1, below + 1);
    double part = Math.max(0, Math.min(1, place - below));
    return sorted[below] + part * (sorted[above] - sorted[below]);
  }

  /** Returns half its width, SI. */
  public double half() {
    return (high - low) / 2;
  }

  /** Returns whether a value lies within. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
