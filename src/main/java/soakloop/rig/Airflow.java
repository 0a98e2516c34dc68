package soakloop.rig;

import java.util.Optional;
import soakloop.quantity.Require;

/**
 * Air through the heat exchanger: each source as the face speed it would make alone.
 *
 * <p>Pressures in series add, and pressure goes with speed squared, so the speeds add as squares.
 *
 * @param shopFan face speed from a shop fan, m/s
 * @param carFan face speed from the car's own fan, m/s
 * @param roadShare face speed over road speed, 0 to 1
 * @param stillAir face speed from natural draught, m/s, above zero
 * @param inletRise how much warmer than the day the air at the heat exchanger is, K
 * @param thermostat the car fan's switch, if it has one
 */
public record Airflow(
    double shopFan,
    double carFan,
    double roadShare,
    double stillAir,
    double inletRise,
    Optional<Thermostat> thermostat) {
  /** Checks the parts. */
  public Airflow {
    Require.notNegative("shop fan face speed", shopFan);
    Require.notNegative("car fan face speed", carFan);
    Require.within("road share", roadShare, 0, 1);
    Require.positive("still-air face speed", stillAir);
    Require.finite("heat exchanger inlet rise", inletRise);
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
    double ram = roadShare * road;
    double squares = stillAir * stillAir + ram * ram;
    if (shop) {
      squares += shopFan * shopFan;
    }
    if (car) {
      squares += carFan * carFan;
    }
    return Math.sqrt(squares);
  }
}
