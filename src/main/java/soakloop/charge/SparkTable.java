package soakloop.charge;

import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * Spark that a calibration takes out as its charge sensor reads higher, and what that costs. The
 * table is the user's own; none is assumed.
 *
 * @param takenOut rad over the sensor's reading in K, 0 or more; level beyond its ends
 * @param laterThanBest how much later than best torque spark stands with nothing taken out, rad
 * @param loss torque lost by late spark
 */
public record SparkTable(Curve takenOut, double laterThanBest, SparkLoss loss) {
  /** Checks the parts. */
  public SparkTable {
    for (int i = 0; i < takenOut.size(); i++) {
      Require.notNegative("spark taken out", takenOut.value(i));
    }
    Require.notNegative("spark later than best", laterThanBest);
  }

  /**
   * Spark taken out.
   *
   * @param reading of the charge sensor, K
   * @return rad
   */
  public double out(double reading) {
    return takenOut.at(reading);
  }

  /**
   * Share of the engine's torque that is lost by what is taken out.
   *
   * @param reading of the charge sensor, K
   * @return share [-], 0 to 1
   */
  public double share(double reading) {
    return loss.shareOf(Math.toDegrees(laterThanBest), Math.toDegrees(out(reading)));
  }

  /**
   * Whether spark at a reading stands no later than the rule for lost torque is good for.
   *
   * @param reading of the charge sensor, K
   */
  public boolean isWithinRule(double reading) {
    return Math.toDegrees(laterThanBest + out(reading)) <= SparkLoss.GOOD_TO;
  }

  /**
   * Whether a reading lies beyond the table, where its last value is held.
   *
   * @param reading of the charge sensor, K
   */
  public boolean isBeyond(double reading) {
    return takenOut.size() > 1 && reading > takenOut.place(takenOut.size() - 1);
  }
}
