package soakloop.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityParser;
import soakloop.quantity.Unit;

/** Says in words which values a key allows. */
final class Ranges {
  private static final double SLACK = 1e-9;
  private static final int DIGITS = 4;

  private Ranges() {}

  static boolean outside(double value, KeySpec spec) {
    double low = spec.low().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
    double high = spec.high().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
    double slack = SLACK * Math.max(Math.abs(low), Math.abs(high));
    return value < low - slack || value > high + slack;
  }

  /** Returns the range in the unit that was written. */
  static String of(KeySpec spec, String written) {
    Dimension dimension = spec.dimension().orElse(Dimension.NUMBER);
    return in(spec, QuantityParser.unitOf(written, dimension).orElse(unit(dimension)));
  }

  /** Returns the range in the unit that people write; empty if any value goes. */
  static String of(KeySpec spec) {
    return spec.low().isEmpty() && spec.high().isEmpty()
        ? ""
        : in(spec, unit(spec.dimension().orElse(Dimension.NUMBER)));
  }

  /** Returns the unit that most people write. */
  static Unit unit(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> dimension.require("degC");
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE, PRESSURE_DIFFERENCE -> dimension.require("kPa");
      case VOLUME_FLOW -> dimension.require("L/min");
      case VOLUME -> dimension.require("L");
      case VOLUME_PER_REVOLUTION -> dimension.require("L/rev");
      case LENGTH -> dimension.require("mm");
      case FIN_DENSITY -> dimension.require("fpi");
      case ANGLE -> dimension.require("deg");
      case ROTATION -> dimension.require("rpm");
      case FRACTION -> dimension.require("%");
      case CONDUCTANCE_PER_VOLUME -> dimension.require("kW/(K L)");
      case DENSITY -> dimension.require("kg/L");
      default -> dimension.si();
    };
  }

  private static String in(KeySpec spec, Unit unit) {
    return (show(spec.low(), unit) + " to " + show(spec.high(), unit) + " " + unit.symbol())
        .strip();
  }

  private static String show(Optional<Estimate> bound, Unit unit) {
    return bound.map(e -> show(unit.fromSi(e.value()))).orElse("any");
  }

  private static String show(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS, RoundingMode.HALF_UP));
    // What is left of a zero after its trip through the units.
    boolean zero = rounded.abs().compareTo(BigDecimal.valueOf(SLACK)) < 0;
    return zero ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
