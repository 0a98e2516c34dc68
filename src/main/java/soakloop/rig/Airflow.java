package soakloop.rig;

import java.util.Optional;
import soakloop.quantity.Require;

/**
 * Air through the heat exchangers.
 *
 * @param face what moves it
 * @param stillAir face speed from natural draught, m/s, above zero; adds as a square
 * @param inletRise how much warmer than the day the air at the heat exchangers is, K
 * @param recirculation share of the entering air that has been through the same exchanger before, 0
 *     to 0.9
 * @param thermostat the car fan's switch, if it has one
 */
public record Airflow(
    FaceAir face,
    double stillAir,
    double inletRise,
    double recirculation,
    Optional<Thermostat> thermostat) {
  /** Checks the parts. */
  public Airflow {
    Require.positive("still-air face speed", stillAir);
    Require.finite("heat exchanger inlet rise", inletRise);
    Require.within("recirculated share", recirculation, 0, 0.9);
  }

  /**
   * Returns the speed of the air at the face.
   *
   * @param road road speed, m/s
   * @param shop whether the shop fan runs
   * @param car whether the car fan runs
   * @return m/s
   */
  public double faceSpeed(double road, boolean shop, boolean car) {
    double moved = face.speed(road, shop, car);
    return Math.sqrt(stillAir * stillAir + moved * moved);
  }
}
