package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Two gas-to-liquid exchangers coupled by a circulating liquid, at any flow of that liquid: how
 * much flow is best?
 *
 * <p>Both exchangers in counterflow. At fixed conductances there is a best flow,
 *
 * <pre>
 * CL* = (UAh + UAc) / (UAh / Ch + UAc / Cc)
 * </pre>
 *
 * <p>at which the pair does as well as one counterflow exchanger of conductance 1 / (1 / UAh + 1 /
 * UAc) between the gases. Derivation: in that one exchanger put a wall at T = (UAh Th + UAc Tc) /
 * (UAh + UAc). Along it dQ = Ch dTh = Cc dTc, so dT / dQ = (UAh / Ch + UAc / Cc) / (UAh + UAc) is
 * constant, and a liquid of that capacity rate follows the wall everywhere. Theory of coupled
 * exchangers: W. M. Kays, A. L. London, Compact Heat Exchangers, liquid-coupled exchangers (the
 * chapter was not seen; for Ch = Cc = C their optimum is CL = C, from memory).
 *
 * <p>Two things move it. Coolant-side conductance grows with flow, which asks for more. The pump's
 * power ends as heat and grows with the cube of flow, which asks for less.
 *
 * @param hot exchanger of the hot gas
 * @param cold exchanger of the cold gas
 * @param pumpHeat W at {@link #referenceFlow}, going with the cube of flow, entering the liquid on
 *     its way to the hot exchanger
 * @param referenceFlow capacity rate of the liquid at which conductances and pump heat are given,
 *     W/K
 */
public record CoupledFlow(Side hot, Side cold, double pumpHeat, double referenceFlow) {
  /**
   * One exchanger.
   *
   * @param capacityRate of the gas, W/K
   * @param gasSide conductance from gas to wall, wall included, W/K
   * @param liquidSide conductance from wall to liquid at the reference flow, W/K
   * @param exponent power of flow that {@code liquidSide} goes with, 0 (fixed) to 1
   */
  public record Side(double capacityRate, double gasSide, double liquidSide, double exponent) {
    /** Checks the parts. */
    public Side {
      Require.positive("gas capacity rate", capacityRate);
      Require.positive("gas-side conductance", gasSide);
      Require.positive("liquid-side conductance", liquidSide);
      Require.within("exponent of the liquid side", exponent, 0, 1);
    }

    /**
     * Overall conductance.
     *
     * @param flowRatio flow over reference flow
     * @return W/K
     */
    public double conductance(double flowRatio) {
      return 1 / (1 / gasSide + 1 / (liquidSide * Math.pow(flowRatio, exponent)));
    }

    /** Effectiveness times smaller capacity rate, W/K. */
    double exchange(double flow, double flowRatio) {
      double smaller = Math.min(capacityRate, flow);
      double ratio = smaller / Math.max(capacityRate, flow);
      return smaller
          * FlowArrangement.COUNTERFLOW.effectiveness(conductance(flowRatio) / smaller, ratio);
    }
  }

  /** Checks the parts. */
  public CoupledFlow {
    Require.notNegative("pump heat", pumpHeat);
    Require.positive("reference flow", referenceFlow);
  }

  /**
   * Heat taken from the hot gas.
   *
   * <p>Equation: Qh (1/Eh + 1/Ec - 1/CL) = (Th - Tc) - P/Ec, E effectiveness times smaller capacity
   * rate, P pump heat; from the balances of {@link LiquidCoupledPair} with P added.
   *
   * @param flow capacity rate of the liquid, W/K, above 0
   * @param difference hot gas inlet over cold gas inlet temperature, K
   * @return W; below zero where the pump heats the gas
   */
  public double heat(double flow, double difference) {
    Require.positive("liquid capacity rate", flow);
    Require.finite("temperature difference", difference);
    double ratio = flow / referenceFlow;
    double eh = hot.exchange(flow, ratio);
    double ec = cold.exchange(flow, ratio);
    double pump = pumpHeat * ratio * ratio * ratio;
    return (difference - pump / ec) / (1 / eh + 1 / ec - 1 / flow);
  }

  /**
   * The best flow at the conductances of the reference flow and no pump heat.
   *
   * @return capacity rate of the liquid, W/K
   */
  public double bestAtFixedConductance() {
    double h = hot.conductance(1);
    double c = cold.conductance(1);
    return (h + c) / (h / hot.capacityRate() + c / cold.capacityRate());
  }
}
