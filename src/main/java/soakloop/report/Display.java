package soakloop.report;

import java.util.Locale;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.UnitSystem;

/**
 * Writes SI values for people, in the scenario's units.
 *
 * @param units metric or US
 * @param plain whether to keep to ASCII, for a console of any kind
 */
record Display(UnitSystem units, boolean plain) {
  /** Shown where there is no number. */
  static final String NOTHING = "-";

  /** Returns a unit's symbol, such as the degree sign and C. */
  String symbol(Dimension dimension) {
    String symbol = units.unit(dimension).symbol();
    return plain ? symbol : symbol.replace("deg", "\u00b0");
  }

  /** Returns the number alone; a dash if it is not finite. */
  String number(double si, Dimension dimension, int decimals) {
    return Double.isFinite(si) ? units.unit(dimension).format(si, decimals) : NOTHING;
  }

  /** Returns the number with its sign, zero without one. */
  String signed(double si, Dimension dimension, int decimals) {
    String number = number(si, dimension, decimals);
    boolean rises = si > 0 && !number.matches("0(\\.0*)?");
    return rises ? "+" + number : number;
  }

  /** Returns number and symbol. */
  String show(double si, Dimension dimension, int decimals) {
    return with(number(si, dimension, decimals), dimension);
  }

  /** Returns a value with half its interval and the symbol: to a tenth if the half is small. */
  String spread(Estimate si, Dimension dimension) {
    int decimals = decimals(si, dimension);
    return number(si.value(), dimension, decimals)
        + (plain ? " +/- " : " \u00b1 ")
        + show(si.spread(), dimension, decimals);
  }

  /** Returns the decimals that an interval leaves of its value. */
  int decimals(Estimate si, Dimension dimension) {
    return units.unit(dimension).fromSi(si.spread()) < 3 ? 1 : 0;
  }

  /** Returns a temperature in whole degrees: what a sensor in a car is good for. */
  String temperature(double kelvin) {
    return show(kelvin, Dimension.TEMPERATURE, 0);
  }

  /** Returns the size of a temperature difference in whole degrees. */
  String difference(double kelvin) {
    return show(Math.abs(kelvin), Dimension.TEMPERATURE_DIFFERENCE, 0);
  }

  /** Returns a temperature difference in whole degrees with its sign. */
  String signedDifference(double kelvin) {
    return with(
        signed(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 0), Dimension.TEMPERATURE_DIFFERENCE);
  }

  /** Returns a fine temperature difference with its sign, such as a bias. */
  String fineDifference(double kelvin) {
    return with(
        signed(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1), Dimension.TEMPERATURE_DIFFERENCE);
  }

  /** Returns an engine speed, such as 6500 rpm. */
  String speed(double revolutionsPerSecond) {
    return show(revolutionsPerSecond, Dimension.ROTATION, 0);
  }

  /** Returns the size of a fine temperature difference, such as an RMS. */
  String fineSize(double kelvin) {
    return show(Math.abs(kelvin), Dimension.TEMPERATURE_DIFFERENCE, 1);
  }

  /** Returns heat in whole units, to three figures. */
  String heat(double joule) {
    double value = units.unit(Dimension.ENERGY).fromSi(joule);
    double grain = Math.pow(10, Math.max(0, Math.floor(Math.log10(Math.abs(value) + 1)) - 2));
    String rounded = String.format(Locale.ROOT, "%.0f", Math.rint(value / grain) * grain);
    return with(rounded.replaceFirst("^-0$", "0"), Dimension.ENERGY);
  }

  /** Returns whether a temperature difference is shown as none in whole degrees. */
  boolean isNone(double kelvin) {
    return number(Math.abs(kelvin), Dimension.TEMPERATURE_DIFFERENCE, 0).equals("0");
  }

  /** Joins number and symbol so that no line breaks between them. */
  private String with(String number, Dimension dimension) {
    String symbol = symbol(dimension);
    return symbol.isEmpty() ? number : number + (plain ? " " : "\u00a0") + symbol;
  }

  /** Returns a length of time: seconds below two minutes, then minutes and seconds. */
  static String duration(double seconds) {
    if (seconds > 0 && seconds < 0.5) {
      return "under 1 s";
    }
    long whole = Math.round(seconds);
    if (whole < 120) {
      return whole + " s";
    }
    String minutes = whole / 60 + " min";
    return whole % 60 == 0 ? minutes : minutes + " " + whole % 60 + " s";
  }

  /** Returns a moment of the session as minutes and seconds, such as 3:05. */
  static String clock(double seconds) {
    long whole = Math.round(Math.abs(seconds));
    String sign = seconds < 0 && whole > 0 ? "-" : "";
    return String.format(Locale.ROOT, "%s%d:%02d", sign, whole / 60, whole % 60);
  }

  /** Returns a text with its first letter large. */
  static String sentenceStart(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
