package soakloop.charge;

import soakloop.quantity.Require;

/**
 * A positive-displacement blower and its drive.
 *
 * <p>Volume delivered per revolution: displacement (fill - leakage (PR - 1)). The straight fall
 * with pressure ratio is a description, no more; typical leakage 0.03 to 0.1 is from memory.
 *
 * @param displacement m3 per revolution
 * @param driveRatio turns of the blower per turn of the engine
 * @param fill volumetric efficiency without pressure rise, 0.1 to 1.5
 * @param leakage fall of the volumetric efficiency per unit of pressure ratio, 0 to 1
 */
public record BlowerSize(double displacement, double driveRatio, double fill, double leakage) {
  /** Checks the parts. */
  public BlowerSize {
    Require.positive("blower displacement", displacement);
    Require.positive("drive ratio", driveRatio);
    Require.within("blower fill", fill, 0.1, 1.5);
    Require.within("blower leakage", leakage, 0, 1);
  }

  /**
   * The same blower on other pulleys.
   *
   * @param crankPulley diameter on the engine
   * @param blowerPulley diameter on the blower, same unit; smaller turns the blower faster
   */
  public BlowerSize onPulleys(double crankPulley, double blowerPulley) {
    Require.positive("crank pulley", crankPulley);
    Require.positive("blower pulley", blowerPulley);
    return new BlowerSize(displacement, crankPulley / blowerPulley, fill, leakage);
  }

  /**
   * Volume flow at the inlet.
   *
   * @param engineSpeed rev/s
   * @param pressureRatio 1 or more
   * @return m3/s; 0 where leakage takes everything
   */
  public double volumeFlow(double engineSpeed, double pressureRatio) {
    double efficiency = fill - leakage * (pressureRatio - 1);
    return displacement * driveRatio * engineSpeed * Math.max(0, efficiency);
  }
}
