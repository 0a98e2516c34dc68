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
  private static final Pattern MEASURE = Pattern.compile("\\s*(" + NUMBER + ")\\s*(.*?)\\s*");
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
    String[] parts = SPREAD.split(text, -1);
    if (parts.length > 2) {
      throw new QuantityException("has more than one +/-");
    }
    double value = measure(parts[0], dimension);
    double spread = parts.length == 2 ? spread(parts[1], value, dimension) : 0;
    return new Estimate(value, spread);
  }

  private static double measure(String text, Dimension dimension) throws QuantityException {
    Matcher m = MEASURE.matcher(text);
    if (!m.matches()) {
      throw new QuantityException(
          "is not a number with a unit; write one like " + example(dimension));
    }
    String symbol = m.group(2);
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
    Matcher m = MEASURE.matcher(text);
    if (!m.matches()) {
      throw new QuantityException("has no number after the +/-");
    }
    double number = Double.parseDouble(m.group(1));
    if (!(number >= 0) || !Double.isFinite(number)) {
      throw new QuantityException("has a negative spread");
    }
    String symbol = m.group(2);
    if ((symbol.equals("points") || symbol.equals("point")) && dimension == Dimension.FRACTION) {
      return number / 100;
    }
    if (symbol.equals("%")) {
      if (dimension == Dimension.TEMPERATURE) {
        throw new QuantityException("has a spread in per cent of a temperature; write +/- 2 K");
      }
      return Math.abs(value) * number / 100;
    }
    Dimension of = dimension.ofSpread();
    Optional<Unit> unit = of.unit(symbol);
    if (unit.isEmpty()) {
      String more =
          dimension == Dimension.FRACTION ? "points or % (of the value)" : "% or " + of.allowed();
      throw new QuantityException("has a spread in `" + symbol + "`; allowed: " + more);
    }
    return number * unit.get().scale();
  }

  private static String unitMessage(String symbol, Dimension dimension) {
    if (dimension.isPlainNumber()) {
      return "is a plain number here; take the unit `" + symbol + "` away";
    }
    if (symbol.isEmpty()) {
      return "needs a unit: " + dimension.allowed();
    }
    if (symbol.startsWith(",")) {
      return "has a comma in the number; write a point";
    }
    return "has the unit `"
        + symbol
        + "`, but a "
        + dimension.label()
        + " takes "
        + dimension.allowed();
  }

  private static String example(Dimension dimension) {
    return dimension.isPlainNumber()
        ? "2.35"
        : "12 " + dimension.units().get(1 % dimension.units().size()).symbol();
  }
}
