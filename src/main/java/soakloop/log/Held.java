package soakloop.log;

/**
 * A column polled in turn with others, each value held until the next, so that rows can be paired.
 */
final class Held {
  /** How long a value stands for those that follow, s. */
  private static final double LONGEST = 2;

  private Held() {}

  /** Holds a column's values. */
  static Series of(Series values, Series time) {
    double[] held = new double[time.size()];
    double last = Double.NaN;
    double since = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < held.length; i++) {
      double value = values.at(i);
      if (!Double.isNaN(value)) {
        last = value;
        since = time.at(i);
      }
      held[i] = time.at(i) - since <= LONGEST ? last : Double.NaN;
    }
    return new PlainSeries(held);
  }
}
