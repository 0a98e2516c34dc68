package soakloop.versus;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import soakloop.fit.Band;

/**
 * How far one contender is from another.
 *
 * @param by the other's figure less the first one's, SI
 * @param better probability that the other is better by at least what was asked, 0 to 1
 */
public record Difference(Band by, double better) {
  private static final NormalDistribution NORMAL = new NormalDistribution();

  /**
   * Works it out from equally likely cars. What the model itself is off by in each of the two is
   * independent; it widens the interval and makes the probability smooth.
   *
   * @param one figures of the first, car by car, NaN where there is none
   * @param other the same cars with the other
   * @param error standard deviation of the model's own error of the difference
   * @param news a standard normal number for each car
   * @param figure which
   * @param atLeast by how much the other must be better, 0 or more
   */
  static Difference of(
      double[] one,
      double[] other,
      double error,
      double[] news,
      PullFigure figure,
      double atLeast) {
    double[] by = new double[one.length];
    Arrays.setAll(by, i -> other[i] - one[i]);
    double sum = 0;
    int count = 0;
    for (double plain : by) {
      if (Double.isFinite(plain)) {
        double over = (figure.lessIsBetter() ? -plain : plain) - atLeast;
        sum += error > 0 ? NORMAL.cumulativeProbability(over / error) : step(over);
        count++;
      }
    }
    double[] wide = new double[by.length];
    Arrays.setAll(wide, i -> by[i] + error * news[i]);
    return new Difference(Band.of(wide), count == 0 ? Double.NaN : sum / count);
  }

  /** Returns 1 above 0, a half at it: two that are exactly alike are as likely better as worse. */
  private static double step(double over) {
    return over > 0 ? 1 : over == 0 ? 0.5 : 0;
  }

  /** Returns whether there is one. */
  public boolean isKnown() {
    return Double.isFinite(better);
  }
}
