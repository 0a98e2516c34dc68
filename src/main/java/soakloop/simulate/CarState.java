package soakloop.simulate;

/**
 * A car at one instant: every temperature, the ice, the fan's switch and the books, so that a run
 * can go on from there as if it had never stopped. Immutable; belongs to runs of one setup.
 */
public final class CarState {
  private final double time;
  private final double[] y;
  private final boolean fanOn;
  private final boolean stood;
  private final Icing.Memory ice;
  private final Ledger.Stored opened;

  /**
   * Takes a state.
   *
   * @param time s
   * @param y of the model; copied
   * @param fanOn whether the thermostat had the fan switched on
   * @param stood whether the engine was off, or had not run yet
   * @param ice what is known of it beside its states
   * @param opened what was stored when the books were opened
   */
  CarState(
      double time,
      double[] y,
      boolean fanOn,
      boolean stood,
      Icing.Memory ice,
      Ledger.Stored opened) {
    this.time = time;
    this.y = y.clone();
    this.fanOn = fanOn;
    this.stood = stood;
    this.ice = ice;
    this.opened = opened;
  }

  /** Returns when it is, s of its session. */
  public double time() {
    return time;
  }

  double[] y() {
    return y.clone();
  }

  boolean fanOn() {
    return fanOn;
  }

  boolean stood() {
    return stood;
  }

  Icing.Memory ice() {
    return ice;
  }

  Ledger.Stored opened() {
    return opened;
  }
}
