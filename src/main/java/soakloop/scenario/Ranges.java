package soakloop.scenario;

import java.util.Locale;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.Unit;

/** Says in words what a key allows. */
final class Ranges {
  private static final double SLACK = 1e-9;

  private Ranges() {}

  static boolean outside(double value, KeySpec spec) {
    double low = spec.low().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
    double high = spec.high().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
    double slack = SLACK * Math.max(Math.abs(low), Math.abs(high));
    return value < low - slack || value > high + slack;
  }

  /** Returns the range in the unit that people write. */
  static String of(KeySpec spec) {
    Dimension dimension = spec.dimension().orElse(Dimension.NUMBER);
    Unit unit = unit(dimension);
    return (show(spec.low(), unit) + " to " + show(spec.high(), unit) + " " + unit.symbol())
        .strip();
  }

  /** Returns what a missing key would take, for the end of a message. */
  static String hint(KeySpec spec) {
    return switch (spec.takes()) {
      case QUANTITY ->
          spec.dimension().map(d -> d.isPlainNumber() ? "" : " (" + d.allowed() + ")").orElse("");
      case CHOICE -> " (" + String.join(", ", spec.choices()) + ")";
      default -> "";
    };
  }

  private static Unit unit(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> dimension.require("degC");
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE, PRESSURE_DIFFERENCE -> dimension.require("kPa");
      case VOLUME_FLOW -> dimension.require("L/min");
      case VOLUME -> dimension.require("L");
      case VOLUME_PER_REVOLUTION -> dimension.require("L/rev");
      case LENGTH -> dimension.require("mm");
      case ROTATION -> dimension.require("rpm");
      case FRACTION -> dimension.require("%");
      case CONDUCTANCE_PER_VOLUME -> dimension.require("kW/(K L)");
      case DENSITY -> dimension.require("kg/L");
      default -> dimension.si();
    };
  }

  private static String show(Optional<Estimate> bound, Unit unit) {
    return bound
        .map(
            e -> {
              String text = String.format(Locale.ROOT, "%.6g", unit.fromSi(e.value()));
              return text.contains(".") && !text.contains("e")
                  ? text.replaceAll("0+$", "").replaceAll("\\.$", "")
                  : text;
            })
        .orElse("any");
  }
}
