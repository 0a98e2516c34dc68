package soakloop.log;

import soakloop.quantity.Dimension;

/** What is said of units that lack or do not fit. */
final class UnitWords {
  private UnitWords() {}

  /** Says that a unit does not fit, and which do. */
  static String wrongUnit(String text, Signal signal) {
    return "has the unit `"
        + text
        + "`; allowed for "
        + signal.key()
        + ": "
        + signal.dimension().allowed();
  }

  /** Says that there is no unit, and how to say one. */
  static String noUnit(Header header, Signal signal) {
    Dimension dimension = signal.dimension();
    String example = example(dimension);
    return "has no unit; head it `"
        + header.name()
        + " ["
        + example
        + "]`, or write `"
        + signal.key()
        + ": {name: \""
        + header.text()
        + "\", unit: "
        + example
        + "}` in the scenario under log, columns; allowed: "
        + dimension.allowed();
  }

  private static String example(Dimension dimension) {
    return switch (dimension) {
      case ROTATION -> "rpm";
      case SPEED -> "km/h";
      case TEMPERATURE -> "degC";
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> "kPa";
      case MASS_FLOW -> "g/s";
      case POWER -> "kW";
      default -> dimension.si().symbol();
    };
  }
}
