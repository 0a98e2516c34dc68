package soakloop.log;

import java.util.Map;
import java.util.Optional;
import soakloop.quantity.Unit;

/**
 * What a scenario says of a log's columns; what it does not say is recognised by name and unit.
 *
 * @param chosen for each signal it names, the column
 */
public record LogColumns(Map<Signal, Choice> chosen) {
  /** Says nothing. */
  public static final LogColumns NONE = new LogColumns(Map.of());

  /**
   * A named column.
   *
   * @param header as in the file
   * @param unit unit of its cells, if the header does not say it
   */
  public record Choice(String header, Optional<Unit> unit) {}

  /** Copies the map. */
  public LogColumns {
    chosen = Map.copyOf(chosen);
  }
}
