package soakloop.simulate;

/**
 * The heat flows integrated as states beside the temperatures, and what is stored at a state.
 *
 * <p>Their error is left out of the step control, so that the ledger watches the integration
 * without steering it.
 */
final class Ledger {
  /** Number of integrated flows. */
  static final int FLOWS = 8;

  /** Tolerance that takes a flow out of the step control, J. */
  static final double IGNORED = 1e12;

  private final int first;

  Ledger(StateLayout layout) {
    this.first = layout.reserve(FLOWS);
  }

  int first() {
    return first;
  }

  /** Returns the row of the heat from charge air to the core. */
  int core() {
    return first;
  }

  /** Returns the row of the heat from charge air to blower case and plenum. */
  int ducts() {
    return first + 1;
  }

  /** Returns the row of the heat from the engine to the plenum. */
  int engine() {
    return first + 2;
  }

  /** Returns the row of the heat from underhood air. */
  int underhood() {
    return first + 4;
  }

  /** Returns the row of the heat to the loop from the outside air. */
  int ambient() {
    return first + 5;
  }

  /** Returns the row of the heat that chillers take out of the loop. */
  int chiller() {
    return first + 7;
  }

  void derivatives(double[] dy, Moment m) {
    dy[first] = m.heatCore;
    dy[first + 1] = m.heatDucts;
    dy[first + 2] = m.heatEngine;
    dy[first + 3] = m.pumpPower;
    dy[first + 4] = m.heatUnderhood;
    dy[first + 5] = m.heatAmbient;
    dy[first + 6] =
        Math.abs(m.heatCore)
            + Math.abs(m.heatDucts)
            + Math.abs(m.heatEngine)
            + m.pumpPower
            + Math.abs(m.heatUnderhood)
            + Math.abs(m.heatAmbient)
            + m.heatChiller;
    dy[first + 7] = m.heatChiller;
  }

  /** Sets all flows back to zero. */
  void clear(double[] y) {
    for (int i = 0; i < FLOWS; i++) {
      y[first + i] = 0;
    }
  }

  /** Closes the books between two states. */
  EnergyLedger close(Stored before, Stored after, double[] y) {
    return new EnergyLedger(
        y[first],
        y[first + 1],
        y[first + 2],
        y[first + 3],
        y[first + 4],
        y[first + 5],
        y[first + 7],
        after.coolant() - before.coolant(),
        after.exchangers() - before.exchangers(),
        after.walls() - before.walls(),
        after.ducts() - before.ducts(),
        after.ice() - before.ice(),
        y[first + 6]);
  }

  /**
   * Enthalpy in every mass, J.
   *
   * @param coolant in coolant
   * @param exchangers in the metal of core and heat exchangers
   * @param walls in hose walls
   * @param ducts in blower case and plenum metal
   * @param ice in ice and the water it has become, since it went in
   */
  record Stored(double coolant, double exchangers, double walls, double ducts, double ice) {}
}
