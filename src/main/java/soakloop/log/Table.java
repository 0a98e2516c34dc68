package soakloop.log;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.List;

/**
 * The cells of a CSV file.
 *
 * @param separator what parts its cells: comma, semicolon or tab
 * @param header its first row
 * @param rows the others without blank ones
 * @param notes its comment lines without the mark
 */
record Table(char separator, Row header, List<Row> rows, List<String> notes) {
  private static final char COMMENT = '#';
  private static final char QUOTE = '"';

  /**
   * A row.
   *
   * @param line line it starts on, counted from 1 with comments and blank lines
   * @param cells without spaces around
   */
  record Row(long line, List<String> cells) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /** Parts a text into cells. */
  static Table of(String text, Problems problems) throws LogException {
    char separator = separator(text);
    List<String> notes = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .quoteCharacter(QUOTE)
            .commentStrategy(CommentStrategy.READ)
            .commentCharacter(COMMENT)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .allowUnclosedQuote(false)
            .trimWhitespacesAroundQuotes(separator != '\t')
            .ofCsvRecord(text)) {
      for (CsvRecord csv : reader) {
        if (csv.isComment()) {
          notes.add(csv.getField(0).strip());
          continue;
        }
        Row row =
            new Row(
                csv.getStartingLineNumber(), csv.getFields().stream().map(String::strip).toList());
        if (!row.isBlank()) {
          rows.add(row);
        }
      }
    } catch (CsvParseException | java.io.IOException e) {
      long line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
      throw problems.only(
          "has a broken quoted cell in row "
              + line
              + " or after; allowed: a pair of quotes around a cell, a quote within it doubled");
    }
    if (rows.isEmpty()) {
      throw problems.only("holds comments only; its first row must name the columns");
    }
    return new Table(
        separator, rows.get(0), List.copyOf(rows.subList(1, rows.size())), List.copyOf(notes));
  }

  /**
   * Finds what parts the cells by the first line that is neither blank nor a comment: a tab if it
   * has one outside quotes, else a semicolon, else a comma.
   */
  private static char separator(String text) {
    String line =
        text.lines()
            .filter(l -> !l.isBlank() && l.charAt(0) != COMMENT)
            .findFirst()
            .orElse("")
            .replaceAll("\"[^\"]*\"", "");
    if (line.indexOf('\t') >= 0) {
      return '\t';
    }
    return line.indexOf(';') >= 0 ? ';' : ',';
  }

  /** Returns the separator's name. */
  String separatorName() {
    return switch (separator) {
      case '\t' -> "tab";
      case ';' -> "semicolon";
      default -> "comma";
    };
  }
}
