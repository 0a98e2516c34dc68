package soakloop.log;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's header, taken apart.
 *
 * @param text as the file has it, without spaces around
 * @param name without the unit
 * @param unit as written, if it says one
 * @param meaning what the name says, if it is listed
 */
record Header(
    String text, String name, Optional<String> unit, Optional<ColumnNames.Meaning> meaning) {
  private static final Pattern BRACKETED = Pattern.compile("(.+?)\\s*[\\[(]([^\\[\\]()]*)[\\])]");
  private static final Pattern AFTER_COMMA = Pattern.compile("(.+?)\\s*,\\s*([^,]+)");
  private static final Pattern LAST_WORD = Pattern.compile("(.+?)[\\s_]+([^\\s_]+)");

  /**
   * Takes a header apart. The unit stands in brackets or parentheses or after a comma; a last word
   * counts as the unit only where the name without it is listed and with it is not.
   */
  static Header of(String cell) {
    String text = cell.strip().replace("\u00c2\u00b0", "\u00b0");
    for (Pattern pattern : new Pattern[] {BRACKETED, AFTER_COMMA}) {
      Matcher m = pattern.matcher(text);
      if (m.matches()) {
        return new Header(
            text, m.group(1), Optional.of(m.group(2).strip()), ColumnNames.find(m.group(1)));
      }
    }
    Optional<ColumnNames.Meaning> whole = ColumnNames.find(text);
    Matcher m = LAST_WORD.matcher(text);
    if (whole.isEmpty() && m.matches() && LogUnits.known(m.group(2))) {
      Optional<ColumnNames.Meaning> shorter = ColumnNames.find(m.group(1));
      if (shorter.isPresent()) {
        return new Header(text, m.group(1), Optional.of(m.group(2)), shorter);
      }
    }
    return new Header(text, text, Optional.empty(), whole);
  }

  /**
   * Takes a header apart whose unit stands in a row of its own.
   *
   * @param cell the name
   * @param unit the unit, or nothing
   */
  static Header of(String cell, String unit) {
    Header header = of(cell);
    String said = LogUnits.clean(unit);
    if (CellStyle.isMissing(said)) {
      return header;
    }
    return new Header(header.text(), header.name(), Optional.of(said), header.meaning());
  }

  /** Returns whether the header says that a pressure counts from vacuum. */
  boolean isAbsolutePressure() {
    return says(Signal.MANIFOLD_PRESSURE) || unit.filter(LogUnits::isAbsolutePressure).isPresent();
  }

  /** Returns whether the name alone says this signal. */
  boolean says(Signal signal) {
    return known().filter(k -> k.signal() == signal).isPresent();
  }

  /** Returns what the name alone says, if that is settled. */
  Optional<ColumnNames.Known> known() {
    return meaning.filter(ColumnNames.Known.class::isInstance).map(ColumnNames.Known.class::cast);
  }
}
