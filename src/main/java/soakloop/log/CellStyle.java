package soakloop.log;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a file writes its cells: the decimal sign, and by that what may stand between thousands.
 *
 * @param decimal point or comma
 */
record CellStyle(char decimal) {
  /** Plain English numbers. */
  static final CellStyle POINT = new CellStyle('.');

  /** Numbers with a decimal comma. */
  static final CellStyle COMMA = new CellStyle(',');

  private static final Set<String> MISSING =
      Set.of(
          "", "nan", "n/a", "na", "n.a.", "#n/a", "null", "none", "nil", "-", "--", "---", "----",
          "?", "*", "no data", "invalid", "error", "err", "1.#qnan", "-1.#ind", "#div/0!",
          "#value!");
  private static final Set<String> ON =
      Set.of("on", "true", "yes", "high", "active", "enabled", "running", "run", "open", "1");
  private static final Set<String> OFF =
      Set.of("off", "false", "no", "low", "inactive", "disabled", "stopped", "stop", "closed", "0");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");
  private static final Pattern STARTS =
      Pattern.compile("([+-]?(?:\\d[\\d.,'\\u00a0\\u202f]*|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?)(.*)");
  private static final Pattern POINT_GROUPS =
      Pattern.compile("[+-]?[1-9]\\d{0,2}([,'\\u00a0\\u202f ]\\d{3})+(\\.\\d*)?");
  private static final Pattern COMMA_GROUPS =
      Pattern.compile("[+-]?[1-9]\\d{0,2}([.'\\u00a0\\u202f ]\\d{3})+(,\\d*)?");

  /**
   * A number and what follows it.
   *
   * @param value the number
   * @param suffix the rest without spaces around, such as a unit
   */
  record Measure(double value, String suffix) {}

  /** Returns whether a cell, without spaces around, says that there is no value. */
  static boolean isMissing(String cell) {
    return cell.length() <= 8 && MISSING.contains(cell.toLowerCase(Locale.ROOT));
  }

  /** Returns whether a cell is a number and nothing else. */
  boolean isNumber(String cell) {
    return number(cell).isPresent();
  }

  /** Whether a cell is digits with one decimal sign among them at most: the common case. */
  private boolean isPlain(String cell) {
    int signs = 0;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == decimal && i > 0) {
        signs++;
      } else if ((c < '0' || c > '9') && (c != '-' || i > 0)) {
        return false;
      }
    }
    return signs < 2 && !cell.isEmpty() && Character.isDigit(cell.charAt(cell.length() - 1));
  }

  /** Reads a cell that is a number and nothing else. */
  Optional<Double> number(String cell) {
    if (isPlain(cell)) {
      return Optional.of(Double.parseDouble(cell.replace(decimal, '.')));
    }
    if (cell.isEmpty() || (Character.isLetter(cell.charAt(0)) && cell.charAt(0) != 'e')) {
      return Optional.empty();
    }
    String plain = cell.replace('\u2212', '-');
    Pattern groups = decimal == '.' ? POINT_GROUPS : COMMA_GROUPS;
    if (groups.matcher(plain).matches()) {
      plain = plain.replaceAll("[" + (decimal == '.' ? "," : ".") + "'\\u00a0\\u202f ]", "");
    }
    if (decimal == ',') {
      if (plain.indexOf('.') >= 0 && plain.indexOf(',') >= 0) {
        return Optional.empty();
      }
      plain = plain.replace(',', '.');
    }
    return NUMBER.matcher(plain).matches()
        ? Optional.of(Double.parseDouble(plain))
        : Optional.empty();
  }

  /** Reads a cell that begins with a number and goes on with a unit or nothing. */
  Optional<Measure> measure(String cell) {
    Optional<Double> plain = number(cell);
    if (plain.isPresent()) {
      return plain.map(v -> new Measure(v, ""));
    }
    Matcher m = STARTS.matcher(cell.replace('\u2212', '-'));
    if (!m.matches()
        || m.group(2).isBlank()
        || ".,:-/0123456789".indexOf(m.group(2).charAt(0)) >= 0) {
      return Optional.empty();
    }
    return number(m.group(1)).map(v -> new Measure(v, LogUnits.clean(m.group(2))));
  }

  /** Reads a state: 1 for on, 0 for off. */
  static Optional<Double> state(String cell) {
    String plain = cell.toLowerCase(Locale.ROOT);
    if (ON.contains(plain)) {
      return Optional.of(1.0);
    }
    return OFF.contains(plain) ? Optional.of(0.0) : Optional.empty();
  }
}
