package soakloop.reading;

/**
 * The time between two pulls.
 *
 * @param after number of the pull before it
 * @param from s
 * @param to s
 * @param engine what the engine does
 * @param engineOff how long the engine is seen to be off, s
 * @param unknown how long the log is silent on engine speed, s
 * @param moving how long the car rolls faster than walking, s; 0 without a road speed
 */
public record Wait(
    int after,
    double from,
    double to,
    Engine engine,
    double engineOff,
    double unknown,
    double moving) {
  /** What the engine does during a wait. */
  public enum Engine {
    /** It runs throughout. */
    RUNNING,
    /** It is off nearly throughout. */
    OFF,
    /** It is off for a part. */
    OFF_FOR_A_PART,
    /** The log does not say. */
    UNKNOWN
  }

  /** Returns its length, s. */
  public double duration() {
    return to - from;
  }
}
