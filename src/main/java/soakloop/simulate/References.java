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

  static double coolantRate(Coolant coolant, double flow) {
    return flow * coolant.density(COOLANT) * coolant.heatCapacity(COOLANT);
  }
}
