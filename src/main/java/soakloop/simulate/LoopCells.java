package soakloop.simulate;

/**
 * A loop element cut into cells of the state vector, temperatures in K.
 *
 * <p>Coolant moves as a constant mass through cells of constant mass; storage is enthalpy, so a
 * cell's balance is {@code m cp(T) dT/dt = mdot (h_in - h(T)) + heat}.
 */
interface LoopCells {
  /** Prepares coefficients that hold for a whole phase. */
  default void startPhase(double[] y, double coolantFlow) {}

  /**
   * Writes this element's derivatives and adds its heat flows to the moment.
   *
   * @param m the moment; its coolant temperature and enthalpy are what enters
   */
  void derivatives(double[] y, double[] dy, Moment m);

  /** Sets the moment's coolant temperature and enthalpy to what leaves this element. */
  void outlet(double[] y, Moment m);

  /** Sets every temperature of the element. */
  void fill(double[] y, double temperature);

  /** Returns the coolant's stored enthalpy, J. */
  double storedInCoolant(double[] y);

  /** Returns the enthalpy stored in exchanger metal, J. */
  default double storedInMetal(double[] y) {
    return 0;
  }

  /** Returns the enthalpy stored in hose walls, J. */
  default double storedInWalls(double[] y) {
    return 0;
  }
}
