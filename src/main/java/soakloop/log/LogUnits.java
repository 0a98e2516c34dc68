package soakloop.log;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Units as loggers spell them. Beside the symbols of {@link Dimension} it knows the other spellings
 * listed here (common practice, no source). Spaces, dots and letter case do not count.
 */
final class LogUnits {
  /** Other spellings, plain, and the symbol each stands for. */
  private static final Map<String, String> SPELLINGS =
      Map.ofEntries(
          Map.entry("c", "degC"),
          Map.entry("celsius", "degC"),
          Map.entry("degcelsius", "degC"),
          Map.entry("f", "degF"),
          Map.entry("fahrenheit", "degF"),
          Map.entry("degfahrenheit", "degF"),
          Map.entry("kelvin", "K"),
          Map.entry("sec", "s"),
          Map.entry("secs", "s"),
          Map.entry("second", "s"),
          Map.entry("seconds", "s"),
          Map.entry("msec", "ms"),
          Map.entry("millis", "ms"),
          Map.entry("milliseconds", "ms"),
          Map.entry("mins", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hr", "h"),
          Map.entry("hours", "h"),
          Map.entry("kph", "km/h"),
          Map.entry("kmh", "km/h"),
          Map.entry("kmph", "km/h"),
          Map.entry("mi/h", "mph"),
          Map.entry("1/min", "rpm"),
          Map.entry("r/min", "rpm"),
          Map.entry("rev/min", "rpm"),
          Map.entry("revs/min", "rpm"),
          Map.entry("lb/in2", "psi"));

  private LogUnits() {}

  /** Finds a unit of a dimension. */
  static Optional<Unit> find(Dimension dimension, String text) {
    String plain =
        text.replaceAll("[\\s.]+", "")
            .replace('\u00ba', '\u00b0')
            .replaceAll("(?i)degrees?", "deg")
            .replaceAll("(?i)^\u00b0|^deg", "deg");
    String symbol = SPELLINGS.getOrDefault(plain.toLowerCase(Locale.ROOT), plain);
    return dimension.unit(symbol);
  }

  /** Returns whether a text is a unit of any dimension. */
  static boolean known(String text) {
    return isAbsolutePressure(text)
        || Stream.of(Dimension.values()).anyMatch(d -> find(d, text).isPresent());
  }

  /** Returns whether a unit says that a pressure counts from vacuum. */
  static boolean isAbsolutePressure(String text) {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[\\s.()]+", "");
    return plain.matches("(psi|k?pa|bar)a(bs(olute)?)?|abs(olute)?");
  }
}
