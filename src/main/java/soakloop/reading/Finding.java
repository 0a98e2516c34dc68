package soakloop.reading;

import java.util.Optional;
import soakloop.log.Signal;

/**
 * Something about a log that a reader of its numbers should know.
 *
 * @param kind what sort of thing
 * @param signal of which channel; empty if of the log
 * @param span where
 * @param sureness how sure it is
 * @param seen what was seen, one sentence
 * @param done what is done about it, one sentence
 */
public record Finding(
    Kind kind, Optional<Signal> signal, Span span, Sureness sureness, String seen, String done) {
  /** Sorts of findings. */
  public enum Kind {
    /** Rows that repeat older values. */
    REFRESH("held values"),
    /** Steps that are coarse beside what the channel does. */
    RESOLUTION("coarse steps"),
    /** Cut off at the top. */
    SATURATION("cut off at the top"),
    /** Stands still where it must move. */
    STUCK("stuck"),
    /** Single impossible values. */
    SPIKE("spikes"),
    /** Two channels that have each other's values. */
    SWAPPED("swapped channels"),
    /** A charge temperature sensor that shows metal, since no air passes it. */
    SENSOR_SOAK("sensor soak"),
    /** A charge temperature that dips as the throttle shuts. */
    LIFT_DIP("lift-off dip"),
    /** Missing rows. */
    TIME_GAP("gap in time"),
    /** Rows at very unequal distances. */
    UNEVEN_TIME("uneven time");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    /** Returns its name in plain words. */
    public String label() {
      return label;
    }
  }

  /** A finding on one channel. */
  static Finding of(
      Kind kind, Signal signal, Span span, Sureness sureness, String seen, String done) {
    return new Finding(kind, Optional.of(signal), span, sureness, seen, done);
  }

  /** A finding on the log as a whole. */
  static Finding of(Kind kind, Span span, Sureness sureness, String seen, String done) {
    return new Finding(kind, Optional.empty(), span, sureness, seen, done);
  }
}
