package soakloop.exchange;

import org.hipparchus.special.Erf;

/**
 * Exact effectiveness of a crossflow exchanger, both streams unmixed.
 *
 * <p>Equation (Mason's series, N transfer units, C capacity ratio):
 *
 * <pre>
 * eps = 1/(C N) sum over n &gt;= 0 of P(n, N) P(n, C N),
 * P(n, x) = 1 - exp(-x) sum over m &lt;= n of x^m / m!
 * </pre>
 *
 * <p>P(n, x) is the chance that a Poisson variable of mean x exceeds n, so the sum is the mean of
 * the smaller of two independent Poisson variables of means N and C N. That reading gives the limit
 * for many transfer units, where the terms of the series would underflow.
 *
 * <p>Source: J. L. Mason, Heat transfer in crossflow, Proc. 2nd U.S. National Congress of Applied
 * Mechanics, 1954, p. 801 (attribution and series from secondary sources, the paper was not seen).
 * The Poisson reading and the limit are derived here.
 */
final class UnmixedCrossflow {
  /** Above this many transfer units the limit is used: exp(-N) is still far from underflow. */
  private static final double SERIES_LIMIT = 500;

  /** Relative size of the terms left out. */
  private static final double NEGLIGIBLE = 1e-18;

  /** Standard deviations past which the normal tail is below one rounding. */
  private static final double FAR_TAIL = 10;

  private UnmixedCrossflow() {}

  /** Effectiveness for ntu and ratio whose product does not underflow; the caller sees to that. */
  static double effectiveness(double ntu, double ratio) {
    return ntu > SERIES_LIMIT ? manyUnits(ntu, ratio) : series(ntu, ratio);
  }

  /**
   * The series, summed forward.
   *
   * <p>Subtracting one Poisson weight after the other leaves in each P an absolute error of a
   * rounding of P(0). Terms small enough to feel it are smaller still beside the sum, so that the
   * result keeps a relative error of a few roundings for few units, about 1e-13 for 500.
   */
  private static double series(double ntu, double ratio) {
    double small = ratio * ntu;
    double weightN = Math.exp(-ntu);
    double weightSmall = Math.exp(-small);
    double aboveN = above(ntu, weightN);
    double aboveSmall = above(small, weightSmall);
    double sum = aboveN * aboveSmall;
    int n = 0;
    do {
      n++;
      weightN *= ntu / n;
      weightSmall *= small / n;
      aboveN -= weightN;
      aboveSmall -= weightSmall;
      sum += aboveN * aboveSmall;
      // Past its mean the Poisson tail falls faster than its weight: the rest is negligible.
    } while (n <= small || weightSmall * aboveN > NEGLIGIBLE * sum);
    return Math.min(1, sum / small);
  }

  /** Returns 1 - exp(-mean), quickly where that loses no more than one digit. */
  private static double above(double mean, double weight) {
    return mean > 0.1 ? 1 - weight : -Math.expm1(-mean);
  }

  /**
   * Limit for many transfer units: 1 - eps = E max(Z, 0) / (C N), where Z is the difference of the
   * Poisson variables, of mean m = C N - N and variance v = C N + N.
   *
   * <p>Normal distribution with the first correction for skewness, kurtosis and whole steps
   * (Edgeworth and Euler-Maclaurin; absolute error below 2e-9), z = -m / sqrt(v), p and q the
   * normal density and upper tail: E max(Z, 0) = sqrt(v) p(z) + m q(z) - p(z) (1 + z^2) / (8
   * sqrt(v)).
   */
  private static double manyUnits(double ntu, double ratio) {
    double small = ratio * ntu;
    double mean = -(1 - ratio) * ntu;
    double deviation = Math.sqrt(ntu) * Math.sqrt(1 + ratio);
    double z = -mean / deviation;
    if (z > FAR_TAIL) {
      return 1;
    }
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    double tail = Erf.erfc(z / Math.sqrt(2)) / 2;
    double excess = deviation * density + mean * tail - density * (1 + z * z) / (8 * deviation);
    return Math.min(1, 1 - Math.max(0, excess) / small);
  }
}
