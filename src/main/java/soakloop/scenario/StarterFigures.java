package soakloop.scenario;

import java.util.List;
import java.util.Locale;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.UnitSystem;

/**
 * Writes values as a scenario takes them, rounded to what a log tells of them.
 *
 * @param units which units
 */
record StarterFigures(UnitSystem units) {
  /** A value with its unit. */
  String show(double si, Dimension dimension) {
    String number = units.unit(dimension).format(si, decimals(dimension));
    return (trimmed(number) + " " + units.unit(dimension).symbol()).strip();
  }

  /** A value with its spread. */
  String show(double si, double spread, Dimension dimension) {
    return show(si, dimension) + " +/- " + show(spread, dimension.ofSpread());
  }

  /** An engine speed, to 10 rpm. */
  String speed(double si) {
    return rpm(si) + " rpm";
  }

  /** An engine speed in rpm to the nearest ten. */
  static long rpm(double si) {
    return 10 * Math.round(si * 6);
  }

  /** Seconds, to a tenth. */
  static String seconds(double s) {
    return trimmed(String.format(Locale.ROOT, "%.1f", s)) + " s";
  }

  /** A value held within what its key allows. */
  static double within(String key, double si) {
    KeySpec spec = KeyTable.get().require(key);
    double low = spec.low().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
    double high = spec.high().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
    return Math.max(low, Math.min(high, si));
  }

  /** Returns whether a key allows a value. */
  static boolean allows(String key, double si) {
    return within(key, si) == si;
  }

  /** A key's default as the table has it, in these units. */
  String defaultOf(String key) {
    KeySpec spec = KeyTable.get().require(key);
    Assumed told = new Assumed(key, spec.defaultValue(), spec.defaultSpread(), spec.because());
    if (spec.defaultEstimate().isEmpty()) {
      return told.value();
    }
    Stated value =
        new Stated(key, spec.dimension().orElseThrow(), spec.defaultEstimate().get(), true);
    Assumed shown = AssumedShown.in(units, told, List.of(value));
    return (shown.value() + " " + shown.spread()).strip();
  }

  private int decimals(Dimension dimension) {
    boolean us = units == UnitSystem.US;
    return switch (dimension) {
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> us ? 0 : 1;
      case GAUGE_PRESSURE, MASS_FLOW -> us ? 1 : 0;
      case ABSOLUTE_PRESSURE -> us ? 2 : 1;
      case VOLUME_PER_REVOLUTION, VOLUME -> 2;
      default -> 0;
    };
  }

  /** A number without zeros at the end of its decimals. */
  static String trimmed(String number) {
    return number.contains(".") ? number.replaceAll("\\.?0+$", "") : number;
  }
}
