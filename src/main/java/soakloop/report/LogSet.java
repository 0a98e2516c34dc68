package soakloop.report;

import java.util.List;
import java.util.OptionalDouble;
import soakloop.quantity.UnitSystem;

/**
 * Logs laid over each other.
 *
 * @param sheets one or more, their labels all different
 * @param units what they are shown in
 * @param limit charge temperature over which time is counted, K; empty for none
 */
public record LogSet(List<LogSheet> sheets, UnitSystem units, OptionalDouble limit) {
  /** Most logs that can be told apart on one chart. */
  public static final int MOST = 6;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there are none, more than {@link #MOST}, or two of a label
   */
  public LogSet {
    sheets = List.copyOf(sheets);
    if (sheets.isEmpty() || sheets.size() > MOST) {
      throw new IllegalArgumentException("1 to " + MOST + " logs, not " + sheets.size());
    }
    if (sheets.stream().map(LogSheet::label).distinct().count() < sheets.size()) {
      throw new IllegalArgumentException("two logs of one label");
    }
  }

  boolean single() {
    return sheets.size() == 1;
  }

  LogSheet first() {
    return sheets.get(0);
  }

  /** Returns the engine speed at which all pulls are read, rev/s. */
  OptionalDouble counted() {
    return first().reading().countedSpeed();
  }

  /** Returns what the logs are called together. */
  String title() {
    return String.join(", ", sheets.stream().map(LogSheet::label).toList());
  }
}
