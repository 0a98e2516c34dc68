package soakloop.log;

import java.util.Locale;
import java.util.regex.Pattern;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/** Reads one column's cells into SI values. */
final class CellReader {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?[\\d.]*\\d,\\d[\\d,.]*.*");
  private static final Pattern NUMBER_WITH_UNIT =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)\\s*[^\\d\\s.:,-].*");
  private static final Pattern CLOCK = Pattern.compile(".*\\d:\\d\\d.*");

  private final String header;
  private final Signal signal;
  private final Unit unit;
  private final Problems problems;
  private final PlausibleRange range;

  CellReader(String header, Signal signal, Unit unit, Problems problems) {
    this.header = header;
    this.signal = signal;
    this.unit = unit;
    this.problems = problems;
    this.range = PlausibleRange.of(signal.dimension());
  }

  /** Returns whether a cell says that there is no value. */
  static boolean isMissing(String cell) {
    return cell.isEmpty() || cell.equalsIgnoreCase("NaN") || cell.equalsIgnoreCase("N/A");
  }

  /** Returns whether a cell is a plain number. */
  static boolean isNumber(String cell) {
    return isPlain(cell) || NUMBER.matcher(cell).matches();
  }

  /** The common case, without the cost of a pattern: digits with a point among them at the most. */
  private static boolean isPlain(String cell) {
    int digits = 0;
    boolean point = false;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == '.' && !point && digits > 0) {
        point = true;
      } else if (c != '-' || i > 0) {
        return false;
      }
    }
    return digits > 0;
  }

  /** Returns the value, SI; NaN where there is none, or none that can be: that is a problem. */
  double read(long row, String cell) {
    if (isMissing(cell)) {
      if (signal == Signal.TIME) {
        problems.addCell(row, header, "has no time; every row needs one");
      }
      return Double.NaN;
    }
    if (!isNumber(cell)) {
      problems.addCell(row, header, "`" + cell + "` " + whyNot(cell));
      return Double.NaN;
    }
    double si = unit.toSi(Double.parseDouble(cell));
    if (!range.contains(si)) {
      problems.addCell(
          row, header, "`" + cell + "` " + unit.symbol() + " is " + range.outside(si, unit));
      return Double.NaN;
    }
    return si;
  }

  private String whyNot(String cell) {
    if (CLOCK.matcher(cell).matches()) {
      return "is a clock time; export time as seconds from the start of the log";
    }
    if (COMMA_NUMBER.matcher(cell).matches()) {
      return "has a comma in the number; export numbers with a decimal point and no other marks";
    }
    if (NUMBER_WITH_UNIT.matcher(cell).matches()) {
      return "has more than a number; export plain numbers, with the unit in the header";
    }
    return "is not a number; allowed: a number such as 41.5, and where there is no value an empty"
        + " cell, NaN or N/A";
  }

  /** Values that a log can hold: outside them the unit is wrong or the sensor broken. */
  private record PlausibleRange(double low, double high, Unit shown) {
    /** Bounds by common practice, no source. */
    static PlausibleRange of(Dimension dimension) {
      return switch (dimension) {
        case TEMPERATURE -> in(dimension, "degC", -60, 400);
        case ROTATION -> in(dimension, "rpm", 0, 30_000);
        case SPEED -> in(dimension, "km/h", -30, 600);
        case GAUGE_PRESSURE -> in(dimension, "kPa", -105, 600);
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

    String outside(double si, Unit unit) {
      String range =
          String.format(
              Locale.ROOT,
              "outside %.0f to %.0f %s",
              shown.fromSi(low),
              shown.fromSi(high),
              shown.symbol());
      String value = unit.equals(shown) ? "" : shown.format(si, 1) + " " + shown.symbol() + ", ";
      return value + range + "; is the unit wrong?";
    }
  }
}
