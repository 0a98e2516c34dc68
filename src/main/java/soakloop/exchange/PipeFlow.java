package soakloop.exchange;

/**
 * Heat transfer inside a smooth round pipe.
 *
 * <p>Laminar (Re at or below 2300): Nu = 3.66, constant wall temperature, developed. Turbulent (Re
 * at or above 4000): Gnielinski (1976), Nu = (f/8)(Re - 1000)Pr / [1 + 12.7 sqrt(f/8)(Pr^(2/3) -
 * 1)], with Petukhov's friction factor f = (0.79 ln Re - 1.64)^-2; valid to Re 5e6 and Pr 0.5 to
 * 2000. Between, straight from one to the other, so that the result is continuous.
 *
 * <p>Source: V. Gnielinski, Int. Chem. Eng. 16 (1976) 359-368; B. S. Petukhov, Adv. Heat Transfer 6
 * (1970) 503-564; both as given in standard textbooks.
 */
public final class PipeFlow {
  private static final double LAMINAR_NUSSELT = 3.66;
  private static final double LAMINAR_END = 2300;
  private static final double TURBULENT_START = 4000;

  private PipeFlow() {}

  /**
   * Returns Petukhov's friction factor (Darcy).
   *
   * @param reynolds Reynolds number, 3000 to 5e6
   * @return friction factor [-]
   */
  public static double petukhovFriction(double reynolds) {
    double root = 0.79 * Math.log(reynolds) - 1.64;
    return 1 / (root * root);
  }

  /**
   * Returns Gnielinski's Nusselt number.
   *
   * @param reynolds Reynolds number, 3000 to 5e6
   * @param prandtl Prandtl number, 0.5 to 2000
   * @param friction friction factor (Darcy)
   * @return Nusselt number [-]
   */
  public static double gnielinski(double reynolds, double prandtl, double friction) {
    double f8 = friction / 8;
    return f8
        * (reynolds - 1000)
        * prandtl
        / (1 + 12.7 * Math.sqrt(f8) * (Math.cbrt(prandtl * prandtl) - 1));
  }

  /**
   * Returns the mean Nusselt number from still to turbulent flow.
   *
   * @param reynolds Reynolds number, zero or more
   * @param prandtl Prandtl number, above zero
   * @return Nusselt number [-]
   * @throws IllegalArgumentException if either is NaN or out of range
   */
  public static double nusselt(double reynolds, double prandtl) {
    if (!(reynolds >= 0) || !(prandtl > 0)) {
      throw new IllegalArgumentException("Re " + reynolds + ", Pr " + prandtl);
    }
    if (reynolds <= LAMINAR_END) {
      return LAMINAR_NUSSELT;
    }
    double re = Math.max(reynolds, TURBULENT_START);
    double turbulent = gnielinski(re, prandtl, petukhovFriction(re));
    double share = Math.min(1, (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END));
    return LAMINAR_NUSSELT + share * (turbulent - LAMINAR_NUSSELT);
  }
}
