package soakloop.charge;

import soakloop.quantity.Require;

/**
 * What lies between blower and manifold: how far the charge is cooled, and the pressure that costs.
 *
 * @param cooling charge temperature from blower outlet and air flow
 * @param loss pressure lost at {@code lossFlow} and {@code lossDensity}, Pa; goes with flow squared
 *     over density
 * @param lossFlow kg/s
 * @param lossDensity kg/m3
 */
public record ChargePath(Cooling cooling, double loss, double lossFlow, double lossDensity) {
  /** How far the charge is cooled. */
  @FunctionalInterface
  public interface Cooling {
    /**
     * Charge temperature behind the core.
     *
     * @param blowerOutlet K
     * @param massFlow kg/s
     * @return K
     */
    double charge(double blowerOutlet, double massFlow);

    /**
     * A charge held at a temperature, whatever comes in.
     *
     * @param temperature K
     */
    static Cooling heldAt(double temperature) {
      Require.positive("charge temperature", temperature);
      return (blowerOutlet, massFlow) -> temperature;
    }

    /**
     * A core of given effectiveness against its coolant.
     *
     * @param effectiveness [-], 0 to 1
     * @param coolant coolant entering the core, K
     */
    static Cooling byCore(double effectiveness, double coolant) {
      Require.within("effectiveness", effectiveness, 0, 1);
      Require.positive("coolant temperature", coolant);
      return (blowerOutlet, massFlow) -> blowerOutlet - effectiveness * (blowerOutlet - coolant);
    }
  }

  /** Checks the parts. */
  public ChargePath {
    Require.notNegative("charge pressure loss", loss);
    Require.positive("flow of the charge pressure loss", lossFlow);
    Require.positive("density of the charge pressure loss", lossDensity);
  }

  /**
   * Pressure lost.
   *
   * @param massFlow kg/s
   * @param density mean density in the core, kg/m3
   * @return Pa
   */
  public double lossAt(double massFlow, double density) {
    double share = massFlow / lossFlow;
    return loss * share * share * lossDensity / density;
  }
}
