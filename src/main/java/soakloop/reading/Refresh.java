package soakloop.reading;

/**
 * How often a channel was really measured.
 *
 * @param kind how it was found out
 * @param rows rows with a value per measurement [-], 1 if each row is one
 * @param period time between measurements, s; NaN where a log has too few rows
 */
public record Refresh(Kind kind, double rows, double period) {
  /** How the refresh was found out. */
  public enum Kind {
    /** Each row with a value is a measurement. */
    EVERY_ROW,
    /** One row in a fixed number is, the others repeat it, as where channels are polled in turn. */
    IN_TURN,
    /**
     * Values are held over changing numbers of rows: the logger's clock and the sender's differ.
     */
    HELD,
    /** It changes too seldom to tell; each row is taken as a measurement. */
    UNKNOWN
  }

  /** Returns whether rows repeat older values. */
  public boolean held() {
    return kind == Kind.IN_TURN || kind == Kind.HELD;
  }
}
