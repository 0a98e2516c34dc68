package soakloop.simulate;

/**
 * Where the heat came from and went to over a session, J. Heat into the rig counts positive except
 * {@code toAmbient} and {@code toChiller}, which count what left.
 *
 * @param fromChargeToCore charge air to the core
 * @param fromChargeToDucts charge air to blower case and plenum metal
 * @param fromEngine engine to plenum metal
 * @param fromPump pump power
 * @param fromUnderhood underhood air to hoses, reservoirs and blower case
 * @param toAmbient through the heat exchangers to the outside air
 * @param toChiller out of the coolant to the refrigerant of chillers
 * @param storedCoolant gained by all coolant
 * @param storedExchangers gained by the metal of core and heat exchangers
 * @param storedWalls gained by hose walls
 * @param storedDucts gained by blower case and plenum metal
 * @param storedIce gained by ice and the water it has become, from when it went in
 * @param turnover integral of the sum of the magnitudes of all heat flows
 */
public record EnergyLedger(
    double fromChargeToCore,
    double fromChargeToDucts,
    double fromEngine,
    double fromPump,
    double fromUnderhood,
    double toAmbient,
    double toChiller,
    double storedCoolant,
    double storedExchangers,
    double storedWalls,
    double storedDucts,
    double storedIce,
    double turnover) {
  /** Energy that keeps the residual's fraction finite when nothing happens, J. */
  private static final double FLOOR = 1000;

  /** Returns the net heat that came in, J. */
  public double gained() {
    return fromChargeToCore
        + fromChargeToDucts
        + fromEngine
        + fromPump
        + fromUnderhood
        - toAmbient
        - toChiller;
  }

  /** Returns what all masses gained, J. */
  public double stored() {
    return storedCoolant + storedExchangers + storedWalls + storedDucts + storedIce;
  }

  /** Returns what does not add up, as a fraction of all heat moved. */
  public double residualFraction() {
    return Math.abs(stored() - gained()) / (turnover + FLOOR);
  }
}
