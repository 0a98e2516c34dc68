package soakloop.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soakloop.quantity.Dimension;

/**
 * A key of a scenario that is only known within its spread. A curve is one key: its points move
 * together, each over its own interval, because what is uncertain of a measured curve is mostly
 * common to all of it.
 *
 * @param key dotted path, of a curve without the numbers of its points
 * @param means what it is, in words
 * @param dimension what it measures
 * @param assumed whether it comes from the default table
 * @param parts the values that move: one, or the points of a curve
 */
public record UncertainKey(
    String key, String means, Dimension dimension, boolean assumed, List<Part> parts) {
  /** Enough digits for any value, and few enough that a bound of the table stays itself. */
  private static final MathContext CLEAN = new MathContext(12);

  /**
   * A single value.
   *
   * @param path dotted path at which a scenario takes it
   * @param value the scenario's own, SI
   * @param low lower end of the 90 % interval, SI
   * @param high upper end, SI
   * @param clipped whether an end was moved to the edge of what the key may take
   */
  public record Part(String path, double value, double low, double high, boolean clipped) {
    /**
     * Checks the interval.
     *
     * @throws IllegalArgumentException if it is none
     */
    public Part {
      if (!(low < high)) {
        throw new IllegalArgumentException(path + ": no interval from " + low + " to " + high);
      }
    }

    /** Returns the value at a share of the way from the lower to the upper end, SI. */
    double at(double share) {
      return share >= 1 ? high : low + share * (high - low);
    }
  }

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if nothing would move
   */
  public UncertainKey {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException(key + ": nothing to move");
    }
  }

  /** Returns whether an end of an interval was moved to the edge of what the key may take. */
  public boolean clipped() {
    return parts.stream().anyMatch(Part::clipped);
  }

  /**
   * Returns what a scenario is given for a place in the interval.
   *
   * @param share of the way from the lower end, 0, to the upper, 1
   */
  Map<String, String> written(double share) {
    Map<String, String> written = new LinkedHashMap<>();
    for (Part part : parts) {
      BigDecimal si = BigDecimal.valueOf(part.at(share));
      written.put(part.path(), written(si));
    }
    return written;
  }

  /** Writes an SI value; a share in per cent, since it may not stand without a unit. */
  private String written(BigDecimal si) {
    return dimension == Dimension.FRACTION
        ? si.movePointRight(2).round(CLEAN).toPlainString() + " %"
        : (si.toPlainString() + " " + dimension.si().symbol()).strip();
  }
}
