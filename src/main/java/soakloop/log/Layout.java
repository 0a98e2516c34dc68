package soakloop.log;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where things stand in a file.
 *
 * @param headers its columns
 * @param headerLine line of the names, counted from 1
 * @param firstLine line that the values begin at
 * @param sample rows of values from the file's beginning
 * @param notes what stands before the values and is neither names nor units
 */
record Layout(
    List<Header> headers, long headerLine, long firstLine, List<Row> sample, List<String> notes) {
  private static final int SAMPLED = 2000;

  /**
   * A row.
   *
   * @param line line it starts on, counted from 1 with comments and blank lines
   * @param cells without spaces around
   * @param comment whether it is a comment
   */
  record Row(long line, List<String> cells, boolean comment) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /**
   * Finds the layout.
   *
   * @param text the file's beginning
   * @param dialect how it writes cells
   * @param wanted headers that the scenario names
   */
  static Layout of(LogText text, Dialect dialect, Set<String> wanted, Problems problems)
      throws LogException {
    List<Row> rows = rows(text, dialect, problems);
    if (rows.stream().allMatch(Row::comment)) {
      Optional<Row> named = LayoutFinder.commentHeader(rows, dialect, List.of());
      if (named.isEmpty()) {
        throw problems.only("holds comments only; its first row must name the columns");
      }
    }
    return new LayoutFinder(rows, dialect, wanted).find(problems);
  }

  private static List<Row> rows(LogText text, Dialect dialect, Problems problems)
      throws LogException {
    List<Row> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = dialect.reader().ofCsvRecord(text.head())) {
      for (CsvRecord csv : reader) {
        Row row =
            new Row(
                csv.getStartingLineNumber(),
                csv.getFields().stream().map(String::strip).toList(),
                csv.isComment());
        if (!row.isBlank()) {
          rows.add(row);
        }
        if (rows.size() == SAMPLED) {
          break;
        }
      }
    } catch (CsvParseException | IOException e) {
      if (rows.size() < SAMPLED / 10) {
        long line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
        throw problems.only(brokenQuote(line));
      }
    }
    return rows;
  }

  static String brokenQuote(long line) {
    return "has a broken quoted cell in row "
        + line
        + " or after; allowed: a pair of quotes around a cell, a quote within it doubled";
  }

  /** The same with other columns. */
  Layout with(List<Header> others) {
    return new Layout(others, headerLine, firstLine, sample, notes);
  }

  /** The columns' names, for messages. */
  String list() {
    return String.join(
        ", ",
        headers.stream().filter(h -> !h.text().isEmpty()).map(h -> "`" + h.text() + "`").toList());
  }
}
