package soakloop.fluid;

/**
 * The lowest layer of the standard atmosphere, up to 11 km.
 *
 * <p>Equations, with the geopotential altitude H = 6356766 z / (6356766 + z) [m]: t = 288.15 -
 * 0.0065 H; p = 101325 (t / 288.15)^5.25588.
 *
 * <p>Source: U.S. Standard Atmosphere, 1976, NOAA/NASA/USAF.
 */
public final class StandardAtmosphere {
  private static final double EARTH_RADIUS = 6_356_766; // m
  private static final double LAPSE_RATE = 0.0065; // K/m
  private static final double SEA_LEVEL_TEMPERATURE = 288.15; // K
  private static final double SEA_LEVEL_PRESSURE = 101_325; // Pa
  private static final double EXPONENT = 5.25588;
  private static final double GAS_CONSTANT = 287.0529; // J/(kg K), as the 1976 standard has it
  private static final double MIN_ALTITUDE = -5_000; // m
  private static final double MAX_ALTITUDE = 11_000; // m

  private StandardAtmosphere() {}

  /**
   * Temperature at an altitude.
   *
   * @param altitude geometric altitude above sea level [m], -5000 to 11000
   * @return temperature [K]
   * @throws IllegalArgumentException if the altitude is NaN or outside that range
   */
  public static double temperature(double altitude) {
    Require.within("altitude", altitude, MIN_ALTITUDE, MAX_ALTITUDE);
    double geopotential = EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude);
    return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotential;
  }

  /**
   * Pressure at an altitude.
   *
   * @param altitude geometric altitude above sea level [m], -5000 to 11000
   * @return absolute pressure [Pa]
   * @throws IllegalArgumentException if the altitude is NaN or outside that range
   */
  public static double pressure(double altitude) {
    return SEA_LEVEL_PRESSURE * Math.pow(temperature(altitude) / SEA_LEVEL_TEMPERATURE, EXPONENT);
  }

  /**
   * Density at an altitude.
   *
   * @param altitude geometric altitude above sea level [m], -5000 to 11000
   * @return density of dry air [kg/m3]
   * @throws IllegalArgumentException if the altitude is NaN or outside that range
   */
  public static double density(double altitude) {
    return pressure(altitude) / (GAS_CONSTANT * temperature(altitude));
  }
}
