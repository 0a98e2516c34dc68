package soakloop.flow;

import soakloop.quantity.Require;

/** Friction factor of a round pipe. */
public final class PipeFriction {
  /** Below this the equation is 64 / Re to the last digit, and its powers would overflow. */
  private static final double CREEPING = 1;

  private PipeFriction() {}

  /**
   * Friction factor (Darcy) in laminar, transitional and turbulent flow.
   *
   * <p>Equation: f = 8 [(8/Re)^12 + 1 / (A + B)^1.5]^(1/12), A = {2.457 ln[1 / ((7/Re)^0.9 + 0.27
   * e/D)]}^16, B = (37530/Re)^16. Valid: all Re; the transition is a plausible path, not a
   * prediction. Accuracy against the Colebrook equation: a few percent.
   *
   * <p>Source: S. W. Churchill, Friction-factor equation spans all fluid-flow regimes, Chem. Eng.
   * 84 (1977) 91, as given in textbooks.
   *
   * @param reynolds Reynolds number, above 0
   * @param relativeRoughness roughness over diameter [-], 0 to 0.1
   * @return friction factor [-]
   * @throws IllegalArgumentException if an argument is outside
   */
  public static double churchill(double reynolds, double relativeRoughness) {
    Require.positive("Reynolds number", reynolds);
    Require.within("relative roughness", relativeRoughness, 0, 0.1);
    if (reynolds < CREEPING) {
      return 64 / reynolds;
    }
    double a =
        Math.pow(-2.457 * Math.log(Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness), 16);
    double b = Math.pow(37530 / reynolds, 16);
    double laminar = Math.pow(8 / reynolds, 12);
    return 8 * Math.pow(laminar + 1 / Math.pow(a + b, 1.5), 1.0 / 12);
  }
}
