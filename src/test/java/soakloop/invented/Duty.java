package soakloop.invented;

/** What the car is asked to do, as a function of time, and the air it stands in. */
interface Duty {

  /**
   * One moment.
   *
   * @param engineSpeed [rev/min]
   * @param roadSpeed [km/h]
   * @param manifoldPressure absolute pressure the throttle asks for [Pa]
   * @param engineCoolant [degC]
   * @param underHood air around hoses, reservoir and plenum [degC]
   * @param inletAir air entering the blower [degC]
   * @param coolerAir air meeting the heat exchanger [degC]
   * @param coolerVelocity air speed on the heat exchanger's face [m/s], above 0
   */
  record Moment(
      double engineSpeed,
      double roadSpeed,
      double manifoldPressure,
      double engineCoolant,
      double underHood,
      double inletAir,
      double coolerAir,
      double coolerVelocity) {}

  /** The air of the day. */
  Day day();

  /** Length of the session [s]. */
  double duration();

  /** The moment at a time [s] from the start. */
  Moment at(double time);

  /** A smooth way from 0 to 1: 0 up to the first time, 1 from the second on. */
  static double smooth(double time, double from, double to) {
    double s = Math.max(0, Math.min(1, (time - from) / (to - from)));
    return s * s * (3 - 2 * s);
  }
}
