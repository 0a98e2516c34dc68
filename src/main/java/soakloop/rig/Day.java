package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The air of the day.
 *
 * @param temperature K
 * @param pressure barometer, Pa
 * @param humidity relative humidity, 0 to 1
 * @param warming how much warmer the air around the car gets in the end, as a closed cell does; K
 */
public record Day(double temperature, double pressure, double humidity, double warming) {
  /**
   * Time in which a cell comes 63 % of the way to where its warmth levels out, s (our own
   * judgement: ventilated cells are changed over within some minutes, their walls take longer).
   */
  private static final double CELL_TIME = 600;

  /** Checks the parts. */
  public Day {
    Require.within("day temperature", temperature, 200, 340);
    Require.within("day pressure", pressure, 40e3, 120e3);
    Require.within("day humidity", humidity, 0, 1);
    Require.within("day warming", warming, -50, 50);
  }

  /**
   * A day whose air stays as it is.
   *
   * @param temperature K
   * @param pressure barometer, Pa
   * @param humidity relative humidity, 0 to 1
   */
  public Day(double temperature, double pressure, double humidity) {
    this(temperature, pressure, humidity, 0);
  }

  /**
   * Returns the temperature of the air around the car at a time of the session.
   *
   * @param time s; before zero nothing has warmed
   * @return K
   */
  public double temperatureAt(double time) {
    return warming == 0 || time <= 0
        ? temperature
        : temperature - warming * Math.expm1(-time / CELL_TIME);
  }
}
