package soakloop.log;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Units as loggers spell them. Beside the symbols of {@link Dimension} it knows the other spellings
 * listed here (common practice, no source). Spaces, dots and letter case do not count.
 */
final class LogUnits {
  /** Metric horsepower: 75 kgf m/s, by definition of the kilogram-force. */
  static final Unit METRIC_HORSEPOWER = new Unit("PS", 75 * 9.80665, 0);

  /** Air-fuel ratio of petrol, 14.7 to 1 at lambda 1 (common practice, no source). */
  static final Unit AIR_FUEL_RATIO = new Unit("AFR", 1 / 14.7, 0);

  /** Microseconds. */
  private static final Unit MICROSECOND = new Unit("us", 1e-6, 0);

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
          Map.entry("u/min", "rpm"),
          Map.entry("lb/in2", "psi"),
          Map.entry("g/sec", "g/s"),
          Map.entry("gps", "g/s"),
          Map.entry("kg/hr", "kg/h"),
          Map.entry("lbs/min", "lb/min"),
          Map.entry("lb/m", "lb/min"),
          Map.entry("bhp", "hp"),
          Map.entry("whp", "hp"),
          Map.entry("nm", "Nm"),
          Map.entry("n-m", "Nm"),
          Map.entry("n*m", "Nm"),
          Map.entry("ftlb", "lb-ft"),
          Map.entry("ft-lb", "lb-ft"),
          Map.entry("ftlbs", "lb-ft"),
          Map.entry("ft-lbs", "lb-ft"),
          Map.entry("lbft", "lb-ft"),
          Map.entry("lb*ft", "lb-ft"),
          Map.entry("percent", "%"),
          Map.entry("pct", "%"));

  private static final Pattern LOST_DEGREE = Pattern.compile("\ufffd(?=[CF]\\b)");
  private static final Pattern BRACKETS = Pattern.compile("^[\\[(]\\s*|\\s*[\\])]$");
  private static final Pattern BLANKS_AND_DOTS = Pattern.compile("[\\s.]+");
  private static final Pattern DEGREES = Pattern.compile("(?i)degrees?");
  private static final Pattern DEGREE = Pattern.compile("(?i)^\u00b0|^deg");

  /** No unit is longer, spelled out. */
  private static final int LONGEST = 24;

  private LogUnits() {}

  /**
   * Takes off what stands around a unit, and puts right a degree sign that was encoded twice or
   * lost on the way.
   */
  static String clean(String text) {
    String plain =
        text.replace("\u00c3\u201a", "\u00c2")
            .replace("\u00c3\u0082", "\u00c2")
            .replace("\u00c2", "")
            .replace('\u00ba', '\u00b0')
            .replace("\u2103", "\u00b0C")
            .replace("\u2109", "\u00b0F")
            .strip();
    String whole =
        plain.indexOf('\ufffd') < 0 ? plain : LOST_DEGREE.matcher(plain).replaceAll("\u00b0");
    return BRACKETS.matcher(whole).replaceAll("");
  }

  /** Finds a unit of a dimension. */
  static Optional<Unit> find(Dimension dimension, String text) {
    return text.length() > LONGEST ? Optional.empty() : ofPlain(dimension, plain(text));
  }

  /** Spaces and dots taken out, a degree sign spelled. */
  private static String plain(String text) {
    String close = BLANKS_AND_DOTS.matcher(clean(text)).replaceAll("");
    return DEGREE.matcher(DEGREES.matcher(close).replaceAll("deg")).replaceAll("deg");
  }

  private static Optional<Unit> ofPlain(Dimension dimension, String text) {
    String plain = text;
    String lower = plain.toLowerCase(Locale.ROOT);
    if (dimension == Dimension.POWER && lower.equals("ps")) {
      return Optional.of(METRIC_HORSEPOWER);
    }
    if (dimension == Dimension.TIME && (lower.equals("us") || lower.equals("\u00b5s"))) {
      return Optional.of(MICROSECOND);
    }
    if (dimension == Dimension.NUMBER && lower.matches("lambda|\u03bb|ratio|-|1")) {
      return dimension.unit("");
    }
    if (dimension == Dimension.NUMBER && lower.equals("afr")) {
      return Optional.of(AIR_FUEL_RATIO);
    }
    if (dimension == Dimension.ANGLE && lower.matches("deg(btdc|crank|ca)?|\u00b0ca")) {
      return dimension.unit("deg");
    }
    if (dimension == Dimension.ABSOLUTE_PRESSURE) {
      plain = plain.replaceFirst("(?i)(?<=psi|pa|bar)[(]?(abs|absolute|a)[)]?$", "");
    } else if (dimension == Dimension.GAUGE_PRESSURE) {
      plain = plain.replaceFirst("(?i)(?<=psi|pa|bar)[(]?(gauge|g)[)]?$", "");
    }
    String symbol = SPELLINGS.getOrDefault(plain.toLowerCase(Locale.ROOT), plain);
    return dimension.unit(symbol);
  }

  /**
   * Returns whether a text is a unit of any dimension that a log has signals of. A voltage is none:
   * it is what a sensor gave before it was made a temperature or a pressure.
   */
  static boolean known(String text) {
    if (text.length() > LONGEST) {
      return false;
    }
    String plain = plain(text);
    return isAbsolutePressure(text)
        || Stream.of(Dimension.values())
            .filter(d -> d != Dimension.VOLTAGE)
            .anyMatch(d -> ofPlain(d, plain).isPresent());
  }

  /** Returns whether a unit says that a pressure counts from vacuum. */
  static boolean isAbsolutePressure(String text) {
    return plainPressure(text).matches("(psi|[kh]?pa|m?bar)a(bs(olute)?)?|abs(olute)?");
  }

  /** Returns whether a unit says that a pressure counts from the barometer. */
  static boolean isGaugePressure(String text) {
    return plainPressure(text).matches("(psi|k?pa|bar)g(auge)?|gauge");
  }

  private static String plainPressure(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s.()]+", "");
  }
}
