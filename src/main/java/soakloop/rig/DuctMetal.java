package soakloop.rig;

import soakloop.quantity.Require;

/**
 * Metal that charge air brushes past and that something else warms: the blower's case, the plenum
 * and runners.
 *
 * @param heatCapacity J/K
 * @param airConductance conductance to the air at {@code airFlow}, W/K
 * @param airFlow air flow at which that holds, kg/s
 * @param tie conductance to what warms it (underhood air, the engine), W/K
 */
public record DuctMetal(double heatCapacity, double airConductance, double airFlow, double tie) {
  /** Turbulent duct flow: conductance goes with flow to this power (Dittus and Boelter, 1930). */
  private static final double FLOW_EXPONENT = 0.8;

  /** Checks the parts. */
  public DuctMetal {
    Require.positive("duct metal heat capacity", heatCapacity);
    Require.notNegative("duct air conductance", airConductance);
    Require.positive("duct reference air flow", airFlow);
    Require.notNegative("duct tie", tie);
  }

  /**
   * Returns the conductance to the air at a flow.
   *
   * @param flow kg/s
   * @return W/K
   */
  public double conductance(double flow) {
    return airConductance * Math.pow(flow / airFlow, FLOW_EXPONENT);
  }

  /**
   * Returns the share of its distance to the metal's temperature that passing air closes.
   *
   * @param flow kg/s
   * @param capacityRate of that air, W/K
   * @return 0 to 1; 0 without flow
   */
  public double share(double flow, double capacityRate) {
    return flow > 0 ? -Math.expm1(-conductance(flow) / capacityRate) : 0;
  }
}
