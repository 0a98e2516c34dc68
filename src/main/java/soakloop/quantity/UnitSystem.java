package soakloop.quantity;

import java.util.EnumMap;
import java.util.Map;

/** The units a result is shown in. */
public enum UnitSystem {
  /** degC, kPa, L/min, km/h. */
  METRIC(
      "degC", "K", "kPa", "kPa", "kPa", "L/min", "g/s", "L", "kg", "mm", "km/h", "kW", "kJ", "kW/K",
      "N m", "fins/cm"),
  /** degF, psi, gpm, mph. */
  US(
      "degF",
      "degF",
      "psi",
      "inHg",
      "psi",
      "gpm",
      "lb/min",
      "gal",
      "lb",
      "in",
      "mph",
      "hp",
      "Btu",
      "Btu/(h degF)",
      "lb-ft",
      "fpi");

  private final Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);

  UnitSystem(String... symbols) {
    Dimension[] shown = {
      Dimension.TEMPERATURE,
      Dimension.TEMPERATURE_DIFFERENCE,
      Dimension.GAUGE_PRESSURE,
      Dimension.ABSOLUTE_PRESSURE,
      Dimension.PRESSURE_DIFFERENCE,
      Dimension.VOLUME_FLOW,
      Dimension.MASS_FLOW,
      Dimension.VOLUME,
      Dimension.MASS,
      Dimension.LENGTH,
      Dimension.SPEED,
      Dimension.POWER,
      Dimension.ENERGY,
      Dimension.CONDUCTANCE,
      Dimension.TORQUE,
      Dimension.FIN_DENSITY
    };
    for (int i = 0; i < shown.length; i++) {
      units.put(shown[i], shown[i].require(symbols[i]));
    }
    units.put(Dimension.ROTATION, Dimension.ROTATION.require("rpm"));
    units.put(Dimension.FRACTION, Dimension.FRACTION.require("%"));
    units.put(Dimension.FREQUENCY, Dimension.FREQUENCY.require("Hz"));
    units.put(Dimension.ANGLE, Dimension.ANGLE.require("deg"));
  }

  /**
   * Returns the unit this system shows a dimension in.
   *
   * @param dimension any dimension
   */
  public Unit unit(Dimension dimension) {
    return units.getOrDefault(dimension, dimension.si());
  }

  /**
   * Formats an SI value with its symbol.
   *
   * @param si a value in SI units
   * @param dimension what it measures
   * @param decimals digits after the point
   */
  public String show(double si, Dimension dimension, int decimals) {
    Unit unit = unit(dimension);
    return (unit.format(si, decimals) + " " + unit.symbol()).strip();
  }
}
