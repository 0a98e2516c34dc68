package soakloop.log;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.quantity.Dimension;

/**
 * Finds the unit of temperatures that say none. One logger writes all of them in one unit, so what
 * settles one settles all; what settles none leaves them unread.
 */
final class TemperatureUnits {
  /** No inlet air, and no coolant of a running car, is as hot as this in degC. */
  private static final double TOO_HOT_FOR_CELSIUS = 140;

  /** A warm engine's coolant, degC; common practice, no source. */
  private static final double WARM_LOW = 70;

  private static final double WARM_HIGH = 118;

  /** Shortest run after which a steady coolant is a warm engine's, s. */
  private static final double WARMED = 60;

  /**
   * A unit and why.
   *
   * @param symbol degC or degF
   * @param reason in words
   */
  record Answer(String symbol, String reason) {}

  /**
   * A temperature column.
   *
   * @param header as the file has it
   * @param name what its name says, if that is settled
   * @param said unit that it says
   * @param stats of its values, in its unit
   */
  record Column(String header, Optional<Signal> name, Optional<String> said, Stats stats) {}

  private TemperatureUnits() {}

  /**
   * Finds the unit of those that say none.
   *
   * @param columns all temperatures of the file
   * @param running seconds that the engine is seen to run
   */
  static Optional<Answer> of(List<Column> columns, double running) {
    List<String> said =
        columns.stream()
            .flatMap(c -> c.said().stream())
            .distinct()
            .filter(s -> !s.isEmpty())
            .toList();
    if (said.size() == 1) {
      return Optional.of(new Answer(said.get(0), "no unit said: as the file's other temperatures"));
    }
    for (Column c : columns) {
      if (c.said().isPresent() || c.stats().count() == 0) {
        continue;
      }
      boolean coolant = c.name().filter(s -> s == Signal.ENGINE_COOLANT).isPresent();
      if (c.name().filter(s -> s != Signal.CORE_AIR_IN).isPresent()
          && c.stats().middle() > TOO_HOT_FOR_CELSIUS) {
        return answer("degF", c, "is too hot for degC");
      }
      boolean warm = c.stats().middle() >= WARM_LOW && c.stats().middle() <= WARM_HIGH;
      boolean steady = c.stats().high() - c.stats().low() < 20;
      if (coolant && warm && steady && running > WARMED) {
        return answer("degC", c, "is a warm engine in degC and a cold one in degF");
      }
    }
    return Optional.empty();
  }

  private static Optional<Answer> answer(String unit, Column c, String why) {
    return Optional.of(
        new Answer(
            unit,
            String.format(
                Locale.ROOT,
                "no unit said: %.0f of `%s` %s",
                c.stats().middle(),
                c.header(),
                why)));
  }

  /** The symbol of a unit that a header says, if it is one of a temperature. */
  static Optional<String> symbol(Header header) {
    return header
        .unit()
        .flatMap(u -> LogUnits.find(Dimension.TEMPERATURE, u))
        .map(soakloop.quantity.Unit::symbol);
  }
}
