package soakloop.log;

import java.util.Locale;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Values that a log can hold: outside them the unit is wrong or the sensor broken. Bounds by common
 * practice, no source.
 *
 * @param low lowest, SI
 * @param high highest, SI
 * @param shown unit that the bounds are told in
 */
record PlausibleRange(double low, double high, Unit shown) {
  /** Returns the range of a signal. */
  static PlausibleRange of(Signal signal) {
    Dimension dimension = signal.dimension();
    return switch (dimension) {
      case TEMPERATURE -> in(dimension, "degC", -60, 400);
      case ROTATION -> in(dimension, "rpm", 0, 30_000);
      case SPEED -> in(dimension, "km/h", -30, 600);
      case GAUGE_PRESSURE -> in(dimension, "kPa", -105, 600);
      case ABSOLUTE_PRESSURE ->
          signal == Signal.BAROMETER ? in(dimension, "kPa", 40, 115) : in(dimension, "kPa", 0, 700);
      case MASS_FLOW -> in(dimension, "g/s", -50, 3000);
      case POWER -> in(dimension, "kW", -500, 3000);
      case TORQUE -> in(dimension, "N m", -3000, 30_000);
      case ANGLE -> in(dimension, "deg", -120, 120);
      case FRACTION -> in(dimension, "%", -10, 130);
      case NUMBER ->
          signal == Signal.LAMBDA ? in(dimension, "", 0.3, 20) : in(dimension, "", -1, 12);
      case TIME -> in(dimension, "s", -1e12, 1e12);
      default -> throw new IllegalArgumentException("no log holds a " + dimension.label());
    };
  }

  private static PlausibleRange in(Dimension dimension, String symbol, double low, double high) {
    Unit unit = dimension.require(symbol);
    return new PlausibleRange(unit.toSi(low), unit.toSi(high), unit);
  }

  boolean contains(double si) {
    return si >= low && si <= high;
  }

  /** Says a value and the range it is outside of. */
  String outside(double si, Unit unit) {
    String range =
        String.format(
                Locale.ROOT,
                "outside %s to %s %s",
                number(shown.fromSi(low)),
                number(shown.fromSi(high)),
                shown.symbol())
            .strip();
    String value = unit.equals(shown) ? "" : shown.format(si, 1) + " " + shown.symbol() + ", ";
    return value + range + "; is the unit wrong?";
  }

  private static String number(double value) {
    return Math.abs(value) < 1
        ? String.format(Locale.ROOT, "%.1f", value)
        : String.format(Locale.ROOT, "%.0f", value);
  }
}
