package soakloop.invented;

/**
 * A reservoir of two mixed zones in series with some stirring between them, the return entering the
 * larger and the pump drawing from the smaller.
 */
final class TwoZoneReservoir {
  private static final double ENTRY_SHARE = 0.6;

  /** Stirring between the zones as a share of the flow through them [-]. */
  private static final double STIRRING = 0.5;

  /** Conductance of each zone's wall to the air around it [W/K]. */
  private static final double WALL = 0.7;

  private final double entryCapacity;
  private final double exitCapacity;
  private final double coolantPerVolume;
  private double entry;
  private double exit;

  TwoZoneReservoir(double volume, double coolantPerVolume, double temperature) {
    this.coolantPerVolume = coolantPerVolume;
    entryCapacity = ENTRY_SHARE * volume * coolantPerVolume;
    exitCapacity = (1 - ENTRY_SHARE) * volume * coolantPerVolume;
    entry = temperature;
    exit = temperature;
  }

  /**
   * Steps on.
   *
   * @param dt step [s]
   * @param flow coolant flow [m3/s]
   * @param in returning coolant [degC]
   * @param around air around the reservoir [degC]
   * @return heat from the surroundings [W]
   */
  double step(double dt, double flow, double in, double around) {
    double stream = flow * coolantPerVolume;
    double over = stream * (entry - exit) * (1 + STIRRING);
    double back = stream * (entry - exit) * STIRRING;
    double first = WALL * (around - entry);
    double second = WALL * (around - exit);
    double carried = stream * (in - entry);
    entry += dt * (carried - back + first) / entryCapacity;
    exit += dt * (over + second) / exitCapacity;
    return first + second;
  }

  /** Coolant drawn by the pump [degC]. */
  double out() {
    return exit;
  }

  /** Heat held above 0 degC [J]. */
  double stored() {
    return entry * entryCapacity + exit * exitCapacity;
  }
}
