package soakloop.log;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.quantity.Unit;

/**
 * What a scenario says of a log's columns; what it does not say is recognised by name, unit and
 * values.
 *
 * @param chosen for each signal it names, the column
 * @param rate rows a second, for a log without times; goes before a time column
 */
public record LogColumns(Map<Signal, Choice> chosen, OptionalDouble rate) {
  /** Says nothing. */
  public static final LogColumns NONE = new LogColumns(Map.of());

  /**
   * A named column.
   *
   * @param header as in the file; letter case and spaces count only where two columns differ in
   *     nothing else
   * @param unit unit of its cells; goes before the one that the header says
   */
  public record Choice(String header, Optional<Unit> unit) {}

  /** Copies the map. */
  public LogColumns {
    chosen = Map.copyOf(chosen);
  }

  /**
   * Says no rate.
   *
   * @param chosen for each signal it names, the column
   */
  public LogColumns(Map<Signal, Choice> chosen) {
    this(chosen, OptionalDouble.empty());
  }
}
