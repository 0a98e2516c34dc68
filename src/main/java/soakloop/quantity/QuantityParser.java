package soakloop.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as a person writes them: {@code 18 L/min}, {@code 62 % +/- 4 points}, {@code 5
 * kg +/- 6 %}.
 */
public final class QuantityParser {
  private static final String NUMBER = "[-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?";
  private static final Pattern MEASURE = Pattern.compile("(" + NUMBER + ")(.*)", Pattern.DOTALL);
  private static final Pattern SPREAD = Pattern.compile("\\+/-|\u00b1");

  private QuantityParser() {}

  /**
   * Reads a value with its unit and, if it has one, its spread.
   *
   * @param text what was written
   * @param dimension what it must measure
   * @return the value and spread in SI
   * @throws QuantityException if the text is no number, lacks a unit or has a wrong one
   */
  public static Estimate parse(String text, Dimension dimension) throws QuantityException {
    String[] parts = SPREAD.split(plain(text), -1);
    if (parts.length > 2) {
      throw new QuantityException("has more than one +/-");
    }
    double value = measure(parts[0], dimension);
    double spread = parts.length == 2 ? spread(parts[1], value, dimension) : 0;
    return new Estimate(value, spread);
  }

  /**
   * Returns the unit that a value is written in, so that an answer can use the same.
   *
   * @param text what was written
   * @param dimension what it must measure
   * @return the unit, or empty if there is none or it does not fit
   */
  public static Optional<Unit> unitOf(String text, Dimension dimension) {
    Matcher m = MEASURE.matcher(SPREAD.split(plain(text), 2)[0].strip());
    return m.matches() ? dimension.unit(m.group(2)) : Optional.empty();
  }

  /** Replaces what looks like a space or a minus and is typeset as another character. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2212', '-');
  }

  private static double measure(String text, Dimension dimension) throws QuantityException {
    Matcher m = MEASURE.matcher(text.strip());
    if (!m.matches()) {
      throw new QuantityException(
          (dimension.isPlainNumber() ? "is not a number" : "is not a number with a unit")
              + "; write one like "
              + example(dimension));
    }
    String symbol = m.group(2).strip();
    Optional<Unit> unit = dimension.unit(symbol);
    if (unit.isEmpty()) {
      throw new QuantityException(unitMessage(symbol, dimension));
    }
    double si = unit.get().toSi(Double.parseDouble(m.group(1)));
    if (!Double.isFinite(si)) {
      throw new QuantityException("is too large a number");
    }
    return si;
  }

  private static double spread(String text, double value, Dimension dimension)
      throws QuantityException {
    Matcher m = MEASURE.matcher(text.strip());
    if (!m.matches()) {
      throw new QuantityException("has no number after the +/-");
    }
    double number = Double.parseDouble(m.group(1));
    if (!(number >= 0)) {
      throw new QuantityException("has a negative spread");
    }
    double si = number * spreadScale(m.group(2).strip(), Math.abs(value), dimension);
    if (!Double.isFinite(si)) {
      throw new QuantityException("is too large a number");
    }
    return si;
  }

  /** Returns SI units per unit of the spread. */
  private static double spreadScale(String symbol, double size, Dimension dimension)
      throws QuantityException {
    if (dimension == Dimension.FRACTION && (symbol.equals("points") || symbol.equals("point"))) {
      return 0.01;
    }
    if (symbol.equals("%")) {
      if (dimension == Dimension.TEMPERATURE) {
        throw new QuantityException("has a spread in per cent of a temperature; write +/- 2 K");
      }
      return size / 100;
    }
    Dimension of = dimension.ofSpread();
    Optional<Unit> unit = of.unit(symbol);
    if (unit.isPresent()) {
      return unit.get().scale();
    }
    String allowed = "% (of the value)";
    if (dimension == Dimension.FRACTION) {
      allowed = "points or " + allowed;
    } else if (dimension == Dimension.TEMPERATURE) {
      allowed = of.allowed();
    } else if (!dimension.isPlainNumber()) {
      allowed = allowed + ", " + of.allowed();
    }
    String found = symbol.isEmpty() ? "without a unit" : "in `" + symbol + "`";
    throw new QuantityException("has a spread " + found + "; allowed: " + allowed);
  }

  private static String unitMessage(String symbol, Dimension dimension) {
    if (symbol.matches(",\\d(?s).*")) {
      return "has a comma in the number; write a point, and no comma between thousands";
    }
    if (symbol.matches("([-\\s]*\\d+\\s*)?/\\s*\\d(?s).*")) {
      return "has a fraction; write a decimal number such as 0.75";
    }
    if (dimension == Dimension.TIME && symbol.matches(":\\d(?s).*")) {
      return "has a colon; write seconds, or minutes with a decimal point such as 2.5 min";
    }
    if (dimension.isPlainNumber()) {
      return "must be a plain number; take the unit `" + symbol + "` away";
    }
    if (symbol.isEmpty()) {
      return "needs a unit: " + dimension.allowed();
    }
    String found = "has the unit `" + symbol + "`, ";
    if (dimension == Dimension.GAUGE_PRESSURE && symbol.equalsIgnoreCase("psia")) {
      return found
          + "which counts from vacuum; this is gauge pressure: take the barometer (about 14.7 psi)"
          + " away and write psi or psig";
    }
    if (dimension == Dimension.ABSOLUTE_PRESSURE && symbol.equalsIgnoreCase("psig")) {
      return found
          + "which counts from the barometer; this is absolute pressure: add the barometer (about"
          + " 14.7 psi) and write psi or psia";
    }
    return found + "but " + dimension.article() + " takes " + dimension.allowed();
  }

  private static String example(Dimension dimension) {
    return dimension.isPlainNumber()
        ? "2.35"
        : "12 " + dimension.units().get(1 % dimension.units().size()).symbol();
  }
}
