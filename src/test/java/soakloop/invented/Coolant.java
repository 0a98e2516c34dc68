package soakloop.invented;

/**
 * Coolant with constant heat capacity and a viscosity that follows temperature.
 *
 * <p>The numbers are read from the ASHRAE Fundamentals ethylene glycol tables (percent by volume):
 * density and heat capacity interpolated to the middle of each session, viscosity through three of
 * the table's temperatures.
 *
 * @param density density [kg/m3]
 * @param heatCapacity specific heat capacity [J/(kg K)]
 * @param temperatures the three temperatures of the viscosity curve [degC], rising
 * @param logViscosity natural logarithm of the viscosity [Pa s] at those temperatures
 */
record Coolant(double density, double heatCapacity, Triple temperatures, Triple logViscosity) {

  /** Three numbers in order. */
  record Triple(double a, double b, double c) {}

  /** 30 % ethylene glycol by volume near 30 degC (table rows -10, 20 and 80 degC). */
  static Coolant thirtyPercent() {
    return new Coolant(
        1040, 3674, new Triple(-10, 20, 80), logs(new Triple(6.19e-3, 2.20e-3, 0.65e-3)));
  }

  /** 50 % ethylene glycol by volume near 50 degC (table rows 20, 40 and 80 degC). */
  static Coolant fiftyPercent() {
    return new Coolant(
        1057.4, 3396, new Triple(20, 40, 80), logs(new Triple(3.94e-3, 2.26e-3, 0.98e-3)));
  }

  /** Heat capacity per volume [J/(m3 K)]. */
  double perVolume() {
    return density * heatCapacity;
  }

  /**
   * Viscosity by a parabola in its logarithm.
   *
   * @param t temperature [degC], -10 to 100
   * @return dynamic viscosity [Pa s]
   */
  double viscosity(double t) {
    Triple x = temperatures;
    Triple y = logViscosity;
    double la = (t - x.b) * (t - x.c) / ((x.a - x.b) * (x.a - x.c));
    double lb = (t - x.a) * (t - x.c) / ((x.b - x.a) * (x.b - x.c));
    double lc = (t - x.a) * (t - x.b) / ((x.c - x.a) * (x.c - x.b));
    return StrictMath.exp(y.a * la + y.b * lb + y.c * lc);
  }

  private static Triple logs(Triple v) {
    return new Triple(StrictMath.log(v.a), StrictMath.log(v.b), StrictMath.log(v.c));
  }
}
