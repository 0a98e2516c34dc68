package soakloop.invented;

/**
 * The air of the day.
 *
 * @param temperature [degC]
 * @param pressure barometer, absolute [Pa]
 * @param humidity relative humidity [-], 0 to 1
 */
record Day(double temperature, double pressure, double humidity) {

  /** Gas constant of air [J/(kg K)], humidity neglected. */
  static final double GAS_CONSTANT = 287.05;

  /** 0 degC in kelvin. */
  static final double ZERO_CELSIUS = 273.15;

  /**
   * Heat capacity of the humid air [J/(kg K)]: 1007 for the dry air of a charge-air path, 1860 for
   * the vapour; vapour pressure by Buck (1996), from memory.
   */
  double airHeatCapacity() {
    double t = temperature;
    double saturation = 611.21 * StrictMath.exp((18.678 - t / 234.5) * t / (257.14 + t));
    double vapour = humidity * saturation;
    double ratio = 0.621945 * vapour / (pressure - vapour);
    return (1007 + 1860 * ratio) / (1 + ratio);
  }

  /**
   * Air density.
   *
   * @param p absolute pressure [Pa]
   * @param t temperature [degC]
   * @return density [kg/m3]
   */
  static double density(double p, double t) {
    return p / (GAS_CONSTANT * (t + ZERO_CELSIUS));
  }
}
