package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Pressure loss through a core: entrance, acceleration, friction, exit.
 *
 * <p>Equation: dp = G^2 / (2 rho_i) [(1 - s^2 + Kc) + 2 (rho_i/rho_o - 1) + f (4 L / Dh) rho_i /
 * rho_m - (1 - s^2 - Ke) rho_i / rho_o], G mass velocity in the passages, s free over frontal area.
 * Exact balance for one-dimensional flow; Kc and Ke carry the uncertainty.
 *
 * <p>Source: W. M. Kays, A. L. London, Compact Heat Exchangers (equation as given in textbooks);
 * loss factors Kc = 0.5 (1 - s)^0.75 (I. E. Idelchik, Handbook of Hydraulic Resistance) and Ke = (1
 * - s)^2 (Borda and Carnot) instead of their chart.
 *
 * @param massVelocity G, kg/(m2 s), 0 or more
 * @param freeShare free over frontal area s [-], above 0 to 1
 * @param slenderness flow length over hydraulic diameter [-]
 */
public record PassageLoss(double massVelocity, double freeShare, double slenderness) {
  /** Checks the parts. */
  public PassageLoss {
    Require.notNegative("mass velocity", massVelocity);
    Require.positive("free share", freeShare);
    Require.within("free share", freeShare, 0, 1);
    Require.positive("length over hydraulic diameter", slenderness);
  }

  /**
   * The whole loss.
   *
   * @param friction friction factor (Fanning) [-]
   * @param inlet density at the inlet, kg/m3
   * @param mean mean density, kg/m3
   * @param outlet density at the outlet, kg/m3
   * @return Pa; below zero where cooling slows the air by more than friction takes
   */
  public double total(double friction, double inlet, double mean, double outlet) {
    Require.notNegative("friction factor", friction);
    Require.positive("inlet density", inlet);
    Require.positive("mean density", mean);
    Require.positive("outlet density", outlet);
    double blocked = 1 - freeShare * freeShare;
    double entrance = blocked + contraction(freeShare);
    double acceleration = 2 * (inlet / outlet - 1);
    double drag = friction * 4 * slenderness * inlet / mean;
    double exit = (blocked - expansion(freeShare)) * inlet / outlet;
    return massVelocity * massVelocity / (2 * inlet) * (entrance + acceleration + drag - exit);
  }

  /**
   * Loss factor of the contraction, 0.5 (1 - s)^0.75, on the velocity in the passages.
   *
   * @param freeShare free over frontal area s [-], 0 to 1
   */
  public static double contraction(double freeShare) {
    return 0.5 * Math.pow(1 - Require.within("free share", freeShare, 0, 1), 0.75);
  }

  /**
   * Loss factor of the expansion, (1 - s)^2, on the velocity in the passages.
   *
   * @param freeShare free over frontal area s [-], 0 to 1
   */
  public static double expansion(double freeShare) {
    double step = 1 - Require.within("free share", freeShare, 0, 1);
    return step * step;
  }
}
