package soakloop.exchange;

import soakloop.fluid.MoistAir;
import soakloop.quantity.Require;

/**
 * Water that condenses where humid air meets a wall below its dew point, and the heat it brings.
 *
 * <p>Equation (Lewis relation): mass flux = h / (cp Le^(2/3)) (W - Ws), W humidity ratio of the
 * air, Ws that of saturated air at the wall's temperature and the pressure in the core; latent heat
 * flux is that times the heat of vaporisation. The film coefficient stays as it was dry. Accuracy:
 * some 10 % for moderate rates; fog, run-off and water re-evaporating downstream are left out.
 * Below 0 degC the water is ice; its heat of fusion (a tenth more) and the growing layer are left
 * out.
 *
 * <p>Source: analogy of heat and mass transfer as in textbooks (Chilton and Colburn); Lewis number
 * and heat of vaporisation from memory.
 */
public final class Condensation {
  /** Lewis number of water vapour in air, thermal over mass diffusivity; from memory. */
  public static final double LEWIS = 0.86;

  private static final double HEAT_AT_FREEZING = 2.501e6; // J/kg, from memory
  private static final double HEAT_SLOPE = -2361; // J/(kg K), from memory
  private static final double ZERO_CELSIUS = 273.15;

  private Condensation() {}

  /**
   * Heat of vaporisation of water: 2501 kJ/kg - 2.361 kJ/(kg K) t.
   *
   * <p>Accuracy: 0.2 % from 0 to 60 degC (from memory).
   *
   * @param temperature K
   * @return J/kg
   */
  public static double heatOfVaporisation(double temperature) {
    Require.within("temperature of condensing", temperature, 230, 400);
    return HEAT_AT_FREEZING + HEAT_SLOPE * (temperature - ZERO_CELSIUS);
  }

  /**
   * Driving difference of humidity ratio.
   *
   * @param air in the stream
   * @param pressure absolute pressure in the core, Pa
   * @param wall wall temperature, K
   * @return kg/kg; 0 where the wall is at the dew point or warmer
   */
  public static double driving(MoistAir air, double pressure, double wall) {
    double saturation = MoistAir.saturationPressure(wall);
    // Where the vapour alone would fill the pressure nothing can condense.
    if (!(saturation < pressure)) {
      return 0;
    }
    return Math.max(0, air.humidityRatio() - MoistAir.of(wall, pressure, 1).humidityRatio());
  }

  /**
   * Water that condenses.
   *
   * @param air in the stream
   * @param pressure absolute pressure in the core, Pa
   * @param wall wall temperature, K
   * @param conductance film coefficient times surface, W/K
   * @return kg/s; 0 where the wall is at the dew point or warmer
   */
  public static double waterFlow(MoistAir air, double pressure, double wall, double conductance) {
    Require.notNegative("conductance", conductance);
    return conductance / (air.heatCapacity() * lewisFactor()) * driving(air, pressure, wall);
  }

  /**
   * Latent over sensible heat at a place.
   *
   * @param air in the stream
   * @param pressure absolute pressure in the core, Pa
   * @param temperature of the air, K, above the wall's
   * @param wall wall temperature, K
   * @return ratio [-]; 0 where the wall is at the dew point or warmer
   */
  public static double latentToSensible(
      MoistAir air, double pressure, double temperature, double wall) {
    double difference = Require.positive("air over wall temperature", temperature - wall);
    double driving = driving(air, pressure, wall);
    return driving == 0
        ? 0
        : heatOfVaporisation(wall) * driving / (air.heatCapacity() * lewisFactor() * difference);
  }

  /**
   * Transfer units of the vapour beside those of the heat: N / Le^(2/3).
   *
   * @param units transfer units of the heat, film conductance over capacity rate [-], 0 or more
   * @return transfer units of the vapour [-]
   */
  public static double massUnits(double units) {
    return Require.notNegative("transfer units", units) / lewisFactor();
  }

  /** Le^(2/3). */
  private static double lewisFactor() {
    return Math.cbrt(LEWIS * LEWIS);
  }
}
