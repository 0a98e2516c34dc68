package soakloop.flow;

import soakloop.fluid.Coolant;
import soakloop.quantity.Require;

/**
 * What a pressure loss needs to know of the fluid.
 *
 * @param density kg/m3
 * @param viscosity dynamic, Pa s
 */
public record Liquid(double density, double viscosity) {
  /** Checks the parts. */
  public Liquid {
    Require.positive("density", density);
    Require.positive("viscosity", viscosity);
  }

  /**
   * A coolant at a temperature, or at the end of its properties' range that is nearer.
   *
   * @param coolant which
   * @param temperature K
   */
  public static Liquid held(Coolant coolant, double temperature) {
    return of(coolant, coolant.held(temperature));
  }

  /**
   * A coolant at a temperature.
   *
   * @param coolant which
   * @param temperature K
   */
  public static Liquid of(Coolant coolant, double temperature) {
    return new Liquid(coolant.density(temperature), coolant.viscosity(temperature));
  }
}
