package soakloop.rig;

import soakloop.quantity.Require;

/**
 * Pressure loss of a whole loop from one known point.
 *
 * @param loss Pa at {@code flow}
 * @param flow m3/s
 * @param exponent power of flow that the loss goes with, 1 (laminar) to 2 (fittings)
 */
public record PressureLoss(double loss, double flow, double exponent) {
  /** Checks the parts. */
  public PressureLoss {
    Require.positive("loop pressure loss", loss);
    Require.positive("loop pressure loss flow", flow);
    Require.within("loop pressure loss exponent", exponent, 1, 2);
  }

  /**
   * Returns the loss at a flow.
   *
   * @param at m3/s, zero or more
   * @return Pa
   */
  public double at(double at) {
    return loss * Math.pow(at / flow, exponent);
  }
}
