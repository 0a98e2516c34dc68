package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The compressor in front of the core.
 *
 * @param delivery air it moves with the bypass shut
 * @param adiabaticEfficiency isentropic over real temperature rise, 0.2 to 1
 * @param inletPickUp rise of its inlet air over the day, K
 * @param inletLoss pressure lost before its inlet at full load, Pa
 * @param casing metal of the case
 */
public record Blower(
    AirDelivery delivery,
    double adiabaticEfficiency,
    double inletPickUp,
    double inletLoss,
    DuctMetal casing) {
  /** Checks the parts. */
  public Blower {
    Require.within("adiabatic efficiency", adiabaticEfficiency, 0.2, 1);
    Require.finite("inlet pick-up", inletPickUp);
    Require.notNegative("inlet loss", inletLoss);
  }
}
