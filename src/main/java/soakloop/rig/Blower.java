package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The compressor in front of the core.
 *
 * @param delivery air it moves with the bypass shut
 * @param adiabaticEfficiency isentropic over real temperature rise
 * @param mechanicalEfficiency of rotors, gears and belt, 0.5 to 1
 * @param inletPickUp rise of its inlet air over the day, K
 * @param inletLoss pressure lost before its inlet at full load, Pa
 * @param casing metal of the case
 */
public record Blower(
    AirDelivery delivery,
    AdiabaticEfficiency adiabaticEfficiency,
    double mechanicalEfficiency,
    double inletPickUp,
    double inletLoss,
    DuctMetal casing) {
  /** Checks the parts. */
  public Blower {
    Require.within("mechanical efficiency", mechanicalEfficiency, 0.5, 1);
    Require.finite("inlet pick-up", inletPickUp);
    Require.notNegative("inlet loss", inletLoss);
  }

  /**
   * Returns the adiabatic efficiency.
   *
   * @param pressureRatio outlet over inlet, 1 or more
   * @param engineSpeed rev/s
   * @return above 0 to 1
   */
  public double efficiency(double pressureRatio, double engineSpeed) {
    return adiabaticEfficiency.at(pressureRatio, delivery.speed(engineSpeed));
  }
}
