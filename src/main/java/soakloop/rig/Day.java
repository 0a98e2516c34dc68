package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The air of the day.
 *
 * @param temperature K
 * @param pressure barometer, Pa
 * @param humidity relative humidity, 0 to 1
 */
public record Day(double temperature, double pressure, double humidity) {
  /** Checks the parts. */
  public Day {
    Require.within("day temperature", temperature, 200, 340);
    Require.within("day pressure", pressure, 40e3, 120e3);
    Require.within("day humidity", humidity, 0, 1);
  }
}
