package soakloop.study;

import java.util.List;
import java.util.OptionalInt;

/**
 * Where a measure stands to its limit as one key goes up.
 *
 * @param measure which
 * @param limit SI
 * @param along which key goes up, 0 or 1
 * @param beside index of the other key's value, where there are two keys
 * @param startsOver whether it is over the limit at the key's smallest value that ran
 * @param crossings where it crosses the limit, rising
 */
public record LimitLine(
    Measure measure,
    double limit,
    int along,
    OptionalInt beside,
    boolean startsOver,
    List<Crossing> crossings) {
  /**
   * A crossing, found by halving between two values of the grid. It lies between two values that
   * were run: one at which the measure is over the limit, one at which it is not.
   *
   * @param under key's value at which it is not over the limit, in the key's unit
   * @param over key's value at which it is over
   */
  public record Crossing(double under, double over) {
    /** Relative distance below which a crossing counts as found: three digits. */
    static final double FOUND = 2e-4;

    /** Returns whether the measure passes the limit as the key goes up. */
    public boolean rises() {
      return over > under;
    }

    /** Returns whether it is known to three digits. */
    public boolean found() {
      return Math.abs(over - under) <= FOUND * Math.max(Math.abs(over), Math.abs(under));
    }
  }

  /** Copies the list. */
  public LimitLine {
    crossings = List.copyOf(crossings);
  }
}
