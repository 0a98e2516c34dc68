package soakloop.quantity;

import java.util.List;
import java.util.Optional;

/**
 * What a value measures, with every unit a scenario or log may write it in.
 *
 * <p>The first unit of a list is the SI unit that the program computes in; the others convert to it
 * by {@code si = value * scale + offset}. US and metric units are equals. A temperature and a
 * temperature difference are different dimensions, and so are gauge, absolute and differential
 * pressure.
 *
 * <p>Conversion factors are exact by definition (inch, pound, gallon, Btu of the International
 * Table, standard gravity) or follow from those; BIPM SI Brochure, 9th ed. (2019), and NIST SP 811
 * (2008), appendix B.
 */
public enum Dimension {
  /** A temperature on a scale; K. */
  TEMPERATURE(
      "temperature",
      Unit.of("K", 1),
      Unit.of("degC", 1, 273.15),
      Unit.of("degF", 5.0 / 9.0, 273.15 - 32 * 5.0 / 9.0)),
  /** A difference of temperatures; K. */
  TEMPERATURE_DIFFERENCE(
      "temperature difference", Unit.of("K", 1), Unit.of("degC", 1), Unit.of("degF", 5.0 / 9.0)),
  /** Pressure above the atmosphere, such as boost; Pa. */
  GAUGE_PRESSURE(
      "gauge pressure",
      Unit.of("Pa", 1),
      Unit.of("kPa", 1e3),
      Unit.of("bar", 1e5),
      Unit.of("psi", Unit.PSI),
      Unit.of("psig", Unit.PSI),
      Unit.of("inHg", Unit.IN_HG)),
  /** Pressure above vacuum, such as a barometer's; Pa. */
  ABSOLUTE_PRESSURE(
      "absolute pressure",
      Unit.of("Pa", 1),
      Unit.of("kPa", 1e3),
      Unit.of("hPa", 1e2),
      Unit.of("mbar", 1e2),
      Unit.of("bar", 1e5),
      Unit.of("psi", Unit.PSI),
      Unit.of("psia", Unit.PSI),
      Unit.of("inHg", Unit.IN_HG)),
  /** A pressure loss or rise; Pa. */
  PRESSURE_DIFFERENCE(
      "pressure difference",
      Unit.of("Pa", 1),
      Unit.of("kPa", 1e3),
      Unit.of("bar", 1e5),
      Unit.of("psi", Unit.PSI),
      Unit.of("inHg", Unit.IN_HG)),
  /** Volume in time, such as a pump's flow; m3/s. */
  VOLUME_FLOW(
      "volume flow",
      Unit.of("m3/s", 1),
      Unit.of("L/min", 1e-3 / 60),
      Unit.of("gpm", Unit.GALLON / 60),
      Unit.of("L/s", 1e-3),
      Unit.of("L/h", 1e-3 / 3600),
      Unit.of("m3/h", 1.0 / 3600),
      Unit.of("cfm", Unit.FOOT * Unit.FOOT * Unit.FOOT / 60)),
  /** Mass in time; kg/s. */
  MASS_FLOW(
      "mass flow",
      Unit.of("kg/s", 1),
      Unit.of("g/s", 1e-3),
      Unit.of("kg/h", 1.0 / 3600),
      Unit.of("lb/min", Unit.POUND / 60)),
  /** Volume; m3. */
  VOLUME(
      "volume",
      Unit.of("m3", 1),
      Unit.of("L", 1e-3),
      Unit.of("mL", 1e-6),
      Unit.of("gal", Unit.GALLON),
      Unit.of("qt", Unit.GALLON / 4),
      Unit.of("in3", Unit.INCH * Unit.INCH * Unit.INCH)),
  /** Volume displaced by one turn of a shaft; m3 per revolution. */
  VOLUME_PER_REVOLUTION(
      "volume per revolution",
      Unit.of("m3/rev", 1),
      Unit.of("L/rev", 1e-3),
      Unit.of("cc/rev", 1e-6),
      Unit.of("in3/rev", Unit.INCH * Unit.INCH * Unit.INCH)),
  /** Mass; kg. */
  MASS("mass", Unit.of("kg", 1), Unit.of("g", 1e-3), Unit.of("lb", Unit.POUND)),
  /** Length; m. */
  LENGTH(
      "length",
      Unit.of("m", 1),
      Unit.of("mm", 1e-3),
      Unit.of("cm", 1e-2),
      Unit.of("in", Unit.INCH),
      Unit.of("ft", Unit.FOOT)),
  /** Fins in a length of face; 1/m. */
  FIN_DENSITY(
      "fin density",
      Unit.of("fins/m", 1),
      Unit.of("fpi", 1 / Unit.INCH),
      Unit.of("fins/in", 1 / Unit.INCH),
      Unit.of("fins/cm", 100),
      Unit.of("fins/dm", 10)),
  /** Area; m2. */
  AREA(
      "area",
      Unit.of("m2", 1),
      Unit.of("cm2", 1e-4),
      Unit.of("in2", Unit.INCH * Unit.INCH),
      Unit.of("ft2", Unit.FOOT * Unit.FOOT)),
  /** Time; s. */
  TIME("time", Unit.of("s", 1), Unit.of("ms", 1e-3), Unit.of("min", 60), Unit.of("h", 3600)),
  /** How often something happens, such as a logger writing a row; 1/s. */
  FREQUENCY("rate", Unit.of("Hz", 1)),
  /** Speed of travel or of air; m/s. */
  SPEED(
      "speed",
      Unit.of("m/s", 1),
      Unit.of("km/h", 1 / 3.6),
      Unit.of("mph", Unit.MILE / 3600),
      Unit.of("ft/min", Unit.FOOT / 60)),
  /** Shaft speed; revolutions per second. */
  ROTATION("shaft speed", Unit.of("rev/s", 1), Unit.of("rpm", 1.0 / 60)),
  /** Heat conductance; W/K. */
  CONDUCTANCE(
      "conductance",
      Unit.of("W/K", 1),
      Unit.of("kW/K", 1e3),
      Unit.of("Btu/(h degF)", Unit.BTU / 3600 * 1.8)),
  /** Heat transfer coefficient; W/(m2 K). */
  HEAT_TRANSFER("heat transfer coefficient", Unit.of("W/(m2 K)", 1)),
  /** Thermal conductivity; W/(m K). */
  CONDUCTIVITY("conductivity", Unit.of("W/(m K)", 1)),
  /** Conductance per volume of an exchanger's block; W/(K m3). */
  CONDUCTANCE_PER_VOLUME(
      "conductance per volume",
      Unit.of("W/(K m3)", 1),
      Unit.of("W/(K L)", 1e3),
      Unit.of("kW/(K L)", 1e6)),
  /** Mass flow per area; kg/(s m2). */
  MASS_FLUX("mass flow per area", Unit.of("kg/(s m2)", 1)),
  /** Mass per volume; kg/m3. */
  DENSITY(
      "mass per volume",
      Unit.of("kg/m3", 1),
      Unit.of("kg/L", 1e3),
      Unit.of("lb/gal", Unit.POUND / Unit.GALLON)),
  /** Power or heat flow; W. */
  POWER("power", Unit.of("W", 1), Unit.of("kW", 1e3), Unit.of("hp", Unit.HORSEPOWER)),
  /** Electric voltage; V. */
  VOLTAGE("voltage", Unit.of("V", 1)),
  /** Energy; J. */
  ENERGY(
      "energy",
      Unit.of("J", 1),
      Unit.of("kJ", 1e3),
      Unit.of("MJ", 1e6),
      Unit.of("Wh", 3600),
      Unit.of("kWh", 3.6e6),
      Unit.of("Btu", Unit.BTU)),
  /** Fuel for the energy that it makes; kg/J. */
  FUEL_PER_ENERGY(
      "fuel per energy",
      Unit.of("kg/J", 1),
      Unit.of("g/kWh", 1e-3 / 3.6e6),
      Unit.of("lb/(hp h)", Unit.POUND / (3600 * Unit.HORSEPOWER))),
  /** Torque; N m. */
  TORQUE("torque", Unit.of("N m", 1), Unit.of("lb-ft", Unit.FOOT * Unit.POUND * Unit.GRAVITY)),
  /** An angle, such as spark advance; rad. */
  ANGLE("angle", Unit.of("rad", 1), Unit.of("deg", Math.PI / 180)),
  /** A share of a whole; 1 is all of it. */
  FRACTION("share", Unit.of("", 1), Unit.of("%", 1e-2)),
  /** A pure number, such as a ratio of diameters or an exponent. */
  NUMBER("number", Unit.of("", 1));

  private final String label;
  private final List<Unit> units;

  Dimension(String label, Unit... units) {
    this.label = label;
    this.units = List.of(units);
  }

  /** Returns the name of this dimension in plain words. */
  public String label() {
    return label;
  }

  /** Returns that name with its article. */
  String article() {
    return ("aeiou".indexOf(label.charAt(0)) >= 0 ? "an " : "a ") + label;
  }

  /** Returns all units, the SI one first. */
  public List<Unit> units() {
    return units;
  }

  /** Returns the SI unit. */
  public Unit si() {
    return units.get(0);
  }

  /** Returns whether a value may, and must, stand without a unit. */
  public boolean isPlainNumber() {
    return this == NUMBER;
  }

  /**
   * Returns the dimension that a spread of this one is stated in: a temperature's spread is a
   * difference.
   */
  public Dimension ofSpread() {
    return this == TEMPERATURE ? TEMPERATURE_DIFFERENCE : this;
  }

  /**
   * Finds a unit by its symbol. Spaces do not count, a degree sign may stand for "deg", and letter
   * case counts only where it would make two units one.
   *
   * @param symbol the symbol as written
   * @return the unit, or empty if this dimension has none of that name
   */
  public Optional<Unit> unit(String symbol) {
    String wanted = Unit.plain(symbol);
    if (wanted.isEmpty() != isPlainNumber()) {
      return Optional.empty();
    }
    Optional<Unit> exact = units.stream().filter(u -> u.plainSymbol().equals(wanted)).findFirst();
    if (exact.isPresent()) {
      return exact;
    }
    List<Unit> alike =
        units.stream().filter(u -> u.plainSymbol().equalsIgnoreCase(wanted)).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  /**
   * Returns the unit of that symbol.
   *
   * @param symbol one of this dimension's symbols
   * @throws IllegalArgumentException if there is none
   */
  public Unit require(String symbol) {
    return unit(symbol)
        .orElseThrow(() -> new IllegalArgumentException(label + " has no unit " + symbol));
  }

  /** Returns the symbols a person may write, such as "kPa, bar or psi". */
  public String allowed() {
    List<String> symbols = units.stream().map(Unit::symbol).filter(s -> !s.isEmpty()).toList();
    if (symbols.size() < 2) {
      return symbols.isEmpty() ? "no unit" : symbols.get(0);
    }
    int last = symbols.size() - 1;
    return String.join(", ", symbols.subList(0, last)) + " or " + symbols.get(last);
  }
}
