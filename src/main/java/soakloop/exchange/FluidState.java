package soakloop.exchange;

import soakloop.fluid.Air;
import soakloop.fluid.Coolant;
import soakloop.quantity.Require;

/**
 * What heat transfer and friction need to know of a fluid.
 *
 * @param viscosity dynamic viscosity, Pa s
 * @param heatCapacity isobaric, J/(kg K)
 * @param conductivity thermal, W/(m K)
 */
public record FluidState(double viscosity, double heatCapacity, double conductivity) {
  /** Checks the parts. */
  public FluidState {
    Require.positive("viscosity", viscosity);
    Require.positive("heat capacity", heatCapacity);
    Require.positive("conductivity", conductivity);
  }

  /**
   * Dry air.
   *
   * @param temperature K
   */
  public static FluidState ofAir(double temperature) {
    return new FluidState(
        Air.viscosity(temperature), Air.heatCapacity(temperature), Air.conductivity(temperature));
  }

  /**
   * A coolant.
   *
   * @param coolant which
   * @param temperature K
   */
  public static FluidState of(Coolant coolant, double temperature) {
    return new FluidState(
        coolant.viscosity(temperature),
        coolant.heatCapacity(temperature),
        coolant.conductivity(temperature));
  }

  /** Prandtl number [-]. */
  public double prandtl() {
    return viscosity * heatCapacity / conductivity;
  }
}
