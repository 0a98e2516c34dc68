package soakloop.simulate;

/**
 * A loop element cut into cells of the state vector: coolant as theta of {@link EnthalpyScale},
 * walls as temperatures, all in K.
 *
 * <p>Coolant moves as a constant mass through cells of constant mass; storage is enthalpy, so a
 * cell's balance is {@code m c0 dtheta/dt = mdot c0 (theta_in - theta) + heat}.
 */
interface LoopCells {
  /** Prepares coefficients that hold for a whole phase. */
  default void startPhase(double[] y, double coolantFlow) {}

  /** Takes up the moment's flows, before anything is asked that depends on them. */
  default void flows(Moment m) {}

  /**
   * Writes this element's derivatives and adds its heat flows to the moment.
   *
   * @param m the moment; its coolant is what enters
   */
  void derivatives(double[] y, double[] dy, Moment m);

  /** Adds this element's heat flows to the moment, as {@link #derivatives} does, and no more. */
  void heats(double[] y, Moment m);

  /** Sets the moment's coolant to what leaves this element. */
  void outlet(double[] y, Moment m);

  /** Returns the states that leave this element. */
  Outflow outflow();

  /**
   * Gives this element's part of the Jacobian at the moment's flows and coefficients.
   *
   * @param y the state
   * @param m the moment found there
   * @param inlet the states that enter
   * @param ledger where its heat flows are booked
   * @param entries takes the part
   */
  void jacobian(double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries);

  /** Sets every temperature of the element, K. */
  void fill(double[] y, double temperature);

  /** Returns the coolant's stored enthalpy, J. */
  double storedInCoolant(double[] y);

  /** Returns the enthalpy stored in exchanger metal, J. */
  default double storedInMetal(double[] y) {
    return 0;
  }

  /** Returns what ice and the water it has become gained since it went in, J. */
  default double storedInIce(double[] y) {
    return 0;
  }

  /** Returns the enthalpy stored in hose walls, J. */
  default double storedInWalls(double[] y) {
    return 0;
  }
}
