package soakloop.reading;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** Robust figures of a few numbers. */
final class Numbers {
  /** Median absolute deviation of a normal distribution to its standard deviation. */
  private static final double TO_SIGMA = 1.4826;

  private Numbers() {}

  /** The median; NaN of none. */
  static double median(double... values) {
    return quantile(0.5, values);
  }

  /** The value under which a share of them lies; NaN of none. */
  static double quantile(double share, double... values) {
    return values.length == 0 ? Double.NaN : new Percentile(100 * share).evaluate(values);
  }

  /**
   * Standard deviation of the noise on a smooth signal: second differences take the signal out, the
   * median of their size keeps steps and spikes out. 0 for fewer than three values.
   */
  static double noise(double... values) {
    if (values.length < 3) {
      return 0;
    }
    double[] second =
        IntStream.range(1, values.length - 1)
            .mapToDouble(i -> Math.abs(values[i + 1] - 2 * values[i] + values[i - 1]))
            .toArray();
    return TO_SIGMA * median(second) / Math.sqrt(6);
  }

  /** The middle one of each value and its neighbours, which takes out single bad values. */
  static double[] middleOfThree(double... values) {
    double[] middle = values.clone();
    for (int i = 1; i < values.length - 1; i++) {
      double[] three = {values[i - 1], values[i], values[i + 1]};
      Arrays.sort(three);
      middle[i] = three[1];
    }
    return middle;
  }
}
