package soakloop.fluid;

/**
 * Humid air below saturation, as an ideal mixture of dry air and water vapour.
 *
 * @param humidityRatio mass of vapour per mass of dry air [kg/kg], 0 or more
 */
public record MoistAir(double humidityRatio) {
  /** Molar mass of water over that of dry air [-] (ASHRAE Handbook, Fundamentals). */
  private static final double MASS_RATIO = 0.621945;

  private static final double DRY_HEAT_CAPACITY = 1006; // J/(kg K), near 25 degC
  private static final double VAPOUR_HEAT_CAPACITY = 1860; // J/(kg K), near 25 degC
  private static final double ZERO_CELSIUS = 273.15; // K

  // Buck: p = BASE exp((SLOPE - t/CURVE) t / (SHIFT + t)), t in degC.
  private static final double BASE = 611.21; // Pa
  private static final double SLOPE = 18.678;
  private static final double CURVE = 234.5; // K
  private static final double SHIFT = 257.14; // K

  /**
   * Checks the humidity ratio.
   *
   * @throws IllegalArgumentException if it is NaN, infinite or negative
   */
  public MoistAir {
    if (!(humidityRatio >= 0 && humidityRatio < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("humidity ratio must be 0 or more, not " + humidityRatio);
    }
  }

  /**
   * Air of a stated relative humidity (over liquid water, as weather stations report it).
   *
   * @param t temperature [K]
   * @param pressure absolute pressure [Pa]
   * @param relativeHumidity vapour pressure over saturation pressure [-], 0 to 1
   * @return the air
   * @throws IllegalArgumentException if an argument is impossible, or the vapour pressure would
   *     reach the total pressure
   */
  public static MoistAir of(double t, double pressure, double relativeHumidity) {
    Require.pressure(pressure);
    Require.within("relative humidity", relativeHumidity, 0, 1);
    double vapour = relativeHumidity * saturationPressure(t);
    if (!(vapour < pressure)) {
      throw new IllegalArgumentException(
          "vapour pressure " + vapour + " Pa reaches the total pressure " + pressure + " Pa");
    }
    return new MoistAir(MASS_RATIO * vapour / (pressure - vapour));
  }

  /**
   * Saturation pressure of vapour over liquid water.
   *
   * <p>Valid: -40 to 60 degC; within 0.05 % of IAPWS-IF97 from 0 to 60 degC, and within 0.1 % of
   * one atmosphere at 100 degC. Over ice the true value is lower.
   *
   * <p>Source: A. L. Buck, Buck Research CR-1A manual, 1996, liquid-water form of the equation of
   * J. Appl. Meteorol. 20 (1981) 1527; coefficients from memory, checked against IF97.
   *
   * @param t temperature [K], above 16.01 K (pole of the equation)
   * @return saturation pressure [Pa]
   * @throws IllegalArgumentException if {@code t} is NaN, infinite or at or below the pole
   */
  public static double saturationPressure(double t) {
    double c = Require.temperature(t) - ZERO_CELSIUS;
    if (!(c > -SHIFT)) {
      throw new IllegalArgumentException("no saturation pressure at " + t + " K");
    }
    return BASE * Math.exp((SLOPE - c / CURVE) * c / (SHIFT + c));
  }

  /**
   * Humidity ratio of saturated air; allocates nothing.
   *
   * @param t temperature [K]
   * @param pressure absolute pressure [Pa]
   * @return humidity ratio [kg/kg]; infinite where vapour alone would fill the pressure
   * @throws IllegalArgumentException if an argument is impossible
   */
  public static double saturationHumidity(double t, double pressure) {
    double vapour = saturationPressure(t);
    return vapour < Require.pressure(pressure)
        ? MASS_RATIO * vapour / (pressure - vapour)
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Slope of {@link #saturationHumidity} over temperature, for air that is not saturated by itself.
   *
   * @param t temperature [K]
   * @param pressure absolute pressure [Pa], above the saturation pressure
   * @return change of humidity ratio [kg/(kg K)]
   */
  public static double saturationHumiditySlope(double t, double pressure) {
    double vapour = saturationPressure(t);
    double c = t - ZERO_CELSIUS;
    // d ln p / dc of Buck's equation.
    double log =
        (SLOPE - 2 * c / CURVE) / (SHIFT + c)
            - (SLOPE - c / CURVE) * c / ((SHIFT + c) * (SHIFT + c));
    double left = pressure - vapour;
    return MASS_RATIO * pressure / (left * left) * vapour * log;
  }

  /**
   * Partial pressure of the vapour.
   *
   * @param pressure absolute pressure [Pa]
   * @return vapour pressure [Pa]
   * @throws IllegalArgumentException if {@code pressure} is NaN, infinite or not above 0
   */
  public double vapourPressure(double pressure) {
    return Require.pressure(pressure) * humidityRatio / (MASS_RATIO + humidityRatio);
  }

  /**
   * Dew point: the temperature at which this air becomes saturated at a pressure, the exact inverse
   * of {@link #saturationPressure}.
   *
   * <p>For dry air the limit of the equation, 16.01 K, is returned: nothing condenses.
   *
   * @param pressure absolute pressure [Pa]
   * @return dew point [K]
   * @throws IllegalArgumentException if {@code pressure} is NaN, infinite or not above 0, or so
   *     high that the equation has no solution (vapour pressure above about 80 MPa)
   */
  public double dewPoint(double pressure) {
    double vapour = vapourPressure(pressure);
    if (vapour == 0) {
      return ZERO_CELSIUS - SHIFT;
    }
    // (SLOPE - c/CURVE) c = log (SHIFT + c): a quadratic in c, of which the smaller root is wanted.
    double log = Math.log(vapour / BASE);
    double b = SLOPE - log;
    double discriminant = b * b - 4 * SHIFT * log / CURVE;
    if (!(b > 0 && discriminant >= 0)) {
      throw new IllegalArgumentException("no dew point at vapour pressure " + vapour + " Pa");
    }
    return ZERO_CELSIUS + 2 * SHIFT * log / (b + Math.sqrt(discriminant));
  }

  /**
   * Specific gas constant of the mixture.
   *
   * @return gas constant per mass of humid air [J/(kg K)]
   */
  public double gasConstant() {
    return Air.GAS_CONSTANT * (1 + humidityRatio / MASS_RATIO) / (1 + humidityRatio);
  }

  /**
   * Heat capacity of the mixture near 25 degC, from 1006 J/(kg K) for dry air and 1860 J/(kg K) for
   * vapour (ASHRAE Handbook, Fundamentals, from memory).
   *
   * @return heat capacity per mass of humid air [J/(kg K)]
   */
  public double heatCapacity() {
    return (DRY_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * humidityRatio) / (1 + humidityRatio);
  }

  /**
   * Density of the mixture.
   *
   * @param t temperature [K]
   * @param pressure absolute pressure [Pa]
   * @return density [kg/m3]
   * @throws IllegalArgumentException if an argument is NaN, infinite or not above 0
   */
  public double density(double t, double pressure) {
    return Require.pressure(pressure) / (gasConstant() * Require.temperature(t));
  }
}
