package soakloop.log;

import java.util.Optional;

/** Takes one column's cells as numbers, in the file's own unit. */
final class ColumnSink {
  /** What a cell can be. */
  enum Cell {
    NUMBER,
    MISSING,
    TEXT
  }

  private final CellStyle style;
  private final char[] suffix;
  private final boolean states;
  private final NumberScanner scanner = new NumberScanner();
  private final PackedColumn.Builder values = new PackedColumn.Builder();
  private long texts;
  private long firstTextRow;
  private long lastTextRow;
  private String firstText = "";

  /**
   * Makes a sink.
   *
   * @param style of the file's numbers
   * @param suffix unit that follows the numbers in the cells, empty if none does
   * @param states whether words such as on and off are values
   */
  ColumnSink(CellStyle style, String suffix, boolean states) {
    this.style = style;
    this.suffix = suffix.toCharArray();
    this.states = states;
  }

  /** Takes the next row's cell; returns what it is. */
  Cell cell(char[] text, int offset, int length, long line) {
    int from = offset;
    int to = offset + length;
    while (from < to && text[from] <= ' ') {
      from++;
    }
    while (from < to && text[to - 1] <= ' ') {
      to--;
    }
    if (from == to) {
      values.addMissing();
      return Cell.MISSING;
    }
    int end = scanner.end(text, from, to, style.decimal());
    if (end > from && (end == to || isSuffix(text, end, to))) {
      values.add(scanner.mantissa, scanner.decimals);
      return Cell.NUMBER;
    }
    return odd(new String(text, from, to - from).strip(), line);
  }

  /** Takes a row that has no such cell. */
  void missing() {
    values.addMissing();
  }

  /** Takes the last row back. */
  void dropLast() {
    values.dropLast();
  }

  private boolean isSuffix(char[] text, int from, int to) {
    int at = from;
    while (at < to && text[at] == ' ') {
      at++;
    }
    if (suffix.length == 0 || to - at != suffix.length) {
      return false;
    }
    for (char c : suffix) {
      if (text[at++] != c) {
        return false;
      }
    }
    return true;
  }

  private Cell odd(String cell, long line) {
    if (CellStyle.isMissing(cell)) {
      values.addMissing();
      return Cell.MISSING;
    }
    Optional<Double> number = style.number(cell);
    if (number.isEmpty() && suffix.length > 0) {
      String unit = LogUnits.clean(new String(suffix));
      number =
          style.measure(cell).filter(m -> m.suffix().equals(unit)).map(CellStyle.Measure::value);
    }
    if (number.isEmpty() && states) {
      number = CellStyle.state(cell);
    }
    if (number.isPresent()) {
      values.add(number.get());
      return Cell.NUMBER;
    }
    if (texts++ == 0) {
      firstText = cell.length() > 40 ? cell.substring(0, 40) + "..." : cell;
      firstTextRow = line;
    }
    lastTextRow = line;
    values.addMissing();
    return Cell.TEXT;
  }

  /** Ends the column. */
  Series series() {
    return values.build();
  }

  /** Returns what became of cells that hold no number, if there were any. */
  Optional<Remark> remark(String header) {
    if (texts == 0) {
      return Optional.empty();
    }
    String what =
        texts == 1
            ? "row " + firstTextRow + ", column `" + header + "`: `" + firstText + "`"
            : "column `"
                + header
                + "`: "
                + texts
                + " cells from row "
                + firstTextRow
                + " (`"
                + firstText
                + "`) to row "
                + lastTextRow;
    return Optional.of(
        new Remark(
            Remark.Kind.CELLS,
            firstTextRow,
            lastTextRow,
            what + (texts == 1 ? " is" : " are") + " no number; taken as having no value"));
  }
}
