package soakloop.invented;

/**
 * What a car on a chassis dyno does about a pull: engine speed sweeps in a straight line, then the
 * throttle shuts, the engine runs down and idles; in the last three seconds before the next pull it
 * is brought up at part load. The cell warms as time goes on.
 *
 * @param from engine speed at the start [rev/min]
 * @param to at the end [rev/min]
 * @param lasts [s]
 * @param boost manifold pressure above the barometer at the top [Pa]
 * @param warming of the cell in the long run [K]
 * @param fanVelocity true air speed on the heat exchanger's face [m/s]
 */
record Sweep(
    double from, double to, double lasts, double boost, double warming, double fanVelocity) {
  private static final double IDLE = 850;
  static final double RUN_UP = 3;

  /**
   * The moment at a time.
   *
   * @param day the air
   * @param time from the session's start [s]
   * @param since the last pull's start [s]; NaN before the first
   * @param toNext until the next pull [s]; NaN after the last
   */
  Duty.Moment at(Day day, double time, double since, double toNext) {
    double speed = IDLE;
    double pressure = 38e3;
    if (since < lasts) {
      speed = from + (to - from) * since / lasts;
      double low = (to - speed) / (to - from);
      pressure = day.pressure() + boost * (1 - 0.11 * low * low);
    } else {
      if (since >= lasts) {
        speed += (to - IDLE) * StrictMath.exp(-(since - lasts) / 1.1);
      }
      if (toNext < RUN_UP) {
        speed += (from - IDLE) * Duty.smooth(RUN_UP - toNext, 0, RUN_UP);
        pressure = 62e3;
      }
    }
    double warm = 1 - StrictMath.exp(-time / 500);
    double cell = day.temperature() + warming * warm;
    return new Duty.Moment(
        speed, 0, pressure, 88 + 3 * warm, 44 + 10 * warm, cell + 5 + warm, cell, fanVelocity);
  }
}
