package soakloop.simulate;

import soakloop.exchange.Condensation;
import soakloop.fluid.MoistAir;
import soakloop.rig.Day;

/**
 * The vapour of charge air on its way over a core's cold walls: what condenses in each cell goes to
 * the cell's wall as heat and is gone from the air behind it.
 *
 * <p>In a cell the air closes the share {@code 1 - exp(-N / Le^(2/3))} of the distance between its
 * humidity and that of saturated air at the wall, N the transfer units of the cell's air side
 * ({@link Condensation}). The water leaves with the charge; it does not evaporate again, and does
 * not freeze.
 */
final class CondensingAir {
  /** Pressure up to which {@link #warmest} is first worked out, Pa. */
  private static final double FIRST_PRESSURE = 2e5;

  private static final double COLDEST = 230;
  private static final double HOTTEST = 400;

  private final MoistAir air;
  private double highest = FIRST_PRESSURE;
  private double warmest;
  private double pressure;
  private double dryFlow;
  private double share;
  private double humidity;
  private double water;
  private double slope;

  CondensingAir(Day day) {
    this.air = MoistAir.of(day.temperature(), day.pressure(), day.humidity());
    this.warmest = air.dewPoint(highest);
  }

  /**
   * Takes up an instant.
   *
   * @param absolute pressure in the core, Pa
   * @param flow air flow of one strip of cells, kg/s
   * @param units transfer units of a cell's air side
   */
  void begin(double absolute, double flow, double units) {
    pressure = absolute;
    dryFlow = flow / (1 + air.humidityRatio());
    share = -Math.expm1(-Condensation.massUnits(units));
    water = 0;
  }

  /**
   * Returns a temperature above which walls stay dry: the dew point at the highest pressure yet.
   *
   * @param absolute pressure in the core, Pa
   * @return K
   */
  double warmestWetWall(double absolute) {
    if (absolute > highest) {
      highest = absolute;
      warmest = air.dewPoint(absolute);
    }
    return warmest;
  }

  /** Returns the share of its distance to saturation that the air closes in a cell, 0 to 1. */
  double share() {
    return share;
  }

  /** Starts a strip with air as it came in. */
  void startStrip() {
    humidity = air.humidityRatio();
  }

  /**
   * Lets the strip's air pass over one more wall.
   *
   * <p>A step that is tried and then refused may ask at temperatures that cannot be; water's
   * properties are then those at the end of their range.
   *
   * @param temperature of the wall, K
   * @return heat to the wall, W
   */
  double heat(double temperature) {
    double wall = Math.max(COLDEST, Math.min(HOTTEST, temperature));
    double driving = humidity - MoistAir.saturationHumidity(wall, pressure);
    if (!(driving > 0)) {
      slope = 0;
      return 0;
    }
    double condensed = dryFlow * share * driving;
    double latent = Condensation.heatOfVaporisation(wall);
    humidity -= share * driving;
    water += condensed;
    slope = dryFlow * share * latent * MoistAir.saturationHumiditySlope(wall, pressure);
    return condensed * latent;
  }

  /** Returns by how much less heat the last wall gets for each kelvin it is warmer, W/K. */
  double slope() {
    return slope;
  }

  /** Returns the water that condensed since the instant was taken up, kg/s. */
  double water() {
    return water;
  }
}
