package soakloop.simulate;

import soakloop.fluid.Coolant;

/**
 * Temperatures at which the shape of a cell's heat transfer is worked out. The heat itself uses the
 * running temperatures; between 10 and 90 degC the capacity rates differ from these by at most
 * about 5 %, which moves an effectiveness by less than 1 %.
 */
final class References {
  /** Charge air, K. */
  static final double AIR = 350;

  /** Coolant, K. */
  static final double COOLANT = 318.15;

  private References() {}

  /**
   * Returns a temperature, or the nearest that air's properties are asked for: a step that is tried
   * and then refused may come with one that cannot be.
   *
   * @param temperature K
   * @return K, 150 to 1500
   */
  static double possible(double temperature) {
    return Math.max(150, Math.min(1500, temperature));
  }

  static double coolantRate(Coolant coolant, double flow) {
    return flow * coolant.density(COOLANT) * coolant.heatCapacity(COOLANT);
  }
}
