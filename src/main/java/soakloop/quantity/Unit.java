package soakloop.quantity;

import java.util.Locale;

/**
 * A unit of measure, convertible to SI by {@code si = value * scale + offset}.
 *
 * @param symbol as written in a scenario
 * @param scale SI units per unit
 * @param offset SI value at zero
 */
public record Unit(String symbol, double scale, double offset) {
  static final double INCH = 0.0254;
  static final double FOOT = 0.3048;
  static final double MILE = 1609.344;
  static final double POUND = 0.45359237;
  static final double GRAVITY = 9.80665;
  static final double GALLON = 231 * INCH * INCH * INCH;
  static final double PSI = POUND * GRAVITY / (INCH * INCH);
  static final double IN_HG = 3386.389;
  static final double BTU = 1055.05585262;
  static final double HORSEPOWER = 550 * FOOT * POUND * GRAVITY;

  static Unit of(String symbol, double scale) {
    return new Unit(symbol, scale, 0);
  }

  static Unit of(String symbol, double scale, double offset) {
    return new Unit(symbol, scale, offset);
  }

  /**
   * Converts a value in this unit to SI.
   *
   * @param value a value in this unit
   */
  public double toSi(double value) {
    return value * scale + offset;
  }

  /**
   * Converts an SI value to this unit.
   *
   * @param si a value in SI units
   */
  public double fromSi(double si) {
    return (si - offset) / scale;
  }

  String plainSymbol() {
    return plain(symbol);
  }

  /**
   * Strips what does not count in a symbol: spaces, and how degrees, squares and cubes are typeset.
   */
  static String plain(String symbol) {
    return symbol
        .replace("\u00b0", "deg")
        .replace('\u00b2', '2')
        .replace('\u00b3', '3')
        .replaceAll("\\s+", "");
  }

  /**
   * Formats an SI value in this unit.
   *
   * @param si a value in SI units
   * @param decimals digits after the point
   * @return the number without the symbol; "n/a" if it is not finite
   */
  public String format(double si, int decimals) {
    double value = fromSi(si);
    if (!Double.isFinite(value)) {
      return "n/a";
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }
}
