package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The charge temperature sensor: first order, slower in slow air, with some heat through its boss.
 *
 * @param timeConstant s at {@code airFlow}
 * @param airFlow kg/s
 * @param flowExponent power of air flow that its film goes with
 * @param bossShare share of what it feels at {@code airFlow} that is the boss's metal, 0 to 0.9
 */
public record Sensor(double timeConstant, double airFlow, double flowExponent, double bossShare) {
  /** Film left in still air, as a share of that at the reference flow. */
  private static final double STILL_AIR = 0.02;

  /** Checks the parts. */
  public Sensor {
    Require.positive("sensor time constant", timeConstant);
    Require.positive("sensor reference air flow", airFlow);
    Require.within("sensor flow exponent", flowExponent, 0, 1);
    Require.within("sensor boss share", bossShare, 0, 0.9);
  }

  /**
   * Returns how quickly it follows the air.
   *
   * @param flow kg/s
   * @return 1/s
   */
  public double airRate(double flow) {
    double film = STILL_AIR + (1 - STILL_AIR) * Math.pow(flow / airFlow, flowExponent);
    return (1 - bossShare) / timeConstant * film;
  }

  /**
   * Returns how quickly it follows its boss.
   *
   * @return 1/s
   */
  public double bossRate() {
    return bossShare / timeConstant;
  }
}
