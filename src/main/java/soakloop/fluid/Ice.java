package soakloop.fluid;

/**
 * Ordinary ice at one atmosphere.
 *
 * <p>Source: IAPWS R10-06(2009) by iapws 1.5.2: density 916.7 kg/m3 and heat capacity 2096.7 J/(kg
 * K) at the melting point, 2023 at -10 degC and 1950 at -20 degC; heat of fusion with IAPWS-95 for
 * the liquid. The constants here are rounded to the use of engineers.
 */
public final class Ice {
  /** Heat of fusion at 0 degC [J/kg]. */
  public static final double HEAT_OF_FUSION = 333_430;

  /** Mean heat capacity from -20 to 0 degC [J/(kg K)]. */
  public static final double HEAT_CAPACITY = 2050;

  /** Density [kg/m3]. */
  public static final double DENSITY = 917;

  /** Melting point in pure water [K]. */
  public static final double MELTING = 273.15;

  private Ice() {}

  /**
   * Enthalpy, zero for liquid water at 0 degC.
   *
   * @param t temperature [K], up to {@link #MELTING}
   * @return enthalpy [J/kg], below zero
   */
  public static double enthalpy(double t) {
    Require.within("ice temperature", t, 150, MELTING);
    return HEAT_CAPACITY * (t - MELTING) - HEAT_OF_FUSION;
  }

  /**
   * Time to melt ice that is at its melting point.
   *
   * @param mass kg, 0 or more
   * @param heatFlow W, above 0
   * @return s
   */
  public static double meltingTime(double mass, double heatFlow) {
    soakloop.quantity.Require.notNegative("ice mass", mass);
    return mass * HEAT_OF_FUSION / soakloop.quantity.Require.positive("heat flow", heatFlow);
  }
}
