package soakloop.charge;

import soakloop.quantity.Require;

/**
 * Torque lost by spark later than best: share k d^2.
 *
 * <p>Source: the shape of a spark hook near its top; k about 4e-4 to 6e-4 per square degree is from
 * memory. Good to some 15 degrees, and no statement on knock.
 *
 * @param curvature k, 1 per square degree of crank angle
 */
public record SparkLoss(double curvature) {
  /** Middle of the range from memory; a spread of 20 % covers it. */
  public static final SparkLoss USUAL = new SparkLoss(5e-4);

  /** How late spark may stand for the rule to hold, degrees of crank angle; from memory. */
  public static final double GOOD_TO = 15;

  /** Checks the curvature. */
  public SparkLoss {
    Require.positive("spark curvature", curvature);
  }

  /**
   * Share of torque lost.
   *
   * @param degrees later than best torque, degrees of crank angle, 0 or more
   * @return share [-], at most 1
   */
  public double share(double degrees) {
    Require.notNegative("degrees of spark", degrees);
    return Math.min(1, curvature * degrees * degrees);
  }

  /**
   * Share of torque lost by taking out more spark.
   *
   * @param already degrees later than best before
   * @param taken degrees taken out in addition
   * @return share of the torque before [-]
   */
  public double shareOf(double already, double taken) {
    double before = 1 - share(already);
    if (!(before > 0)) {
      throw new IllegalArgumentException(
          "at " + already + " degrees later than best there is no torque left to lose");
    }
    return 1 - (1 - share(already + Require.notNegative("degrees of spark", taken))) / before;
  }
}
