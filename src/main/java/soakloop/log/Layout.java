package soakloop.log;

import java.io.StringReader;
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
   * @param cells without spaces around; of a comment its text
   * @param comment whether it is a comment
   */
  record Row(long line, List<String> cells, boolean comment) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
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
    return QuotedText.parse(
            () -> new StringReader(text.head()), dialect, HeadRows::new, List.of(), problems)
        .rows()
        .rows;
  }

  /** Takes the first rows that are not blank. */
  private static final class HeadRows extends QuotedText.Rows {
    private final List<Row> rows = new ArrayList<>();
    private final List<String> cells = new ArrayList<>();
    private long line;
    private boolean comment;

    @Override
    protected void handleBegin(long startingLineNumber) {
      line = startingLineNumber;
      cells.clear();
      comment = false;
    }

    @Override
    protected void handleField(int index, char[] text, int offset, int length, boolean quoted) {
      if (quoted) {
        quoted(text, offset, length);
      }
      cells.add(new String(text, offset, length).strip());
    }

    @Override
    protected void handleComment(char[] text, int offset, int length) {
      // A tab at either end parts a cell without a name.
      cells.add(new String(text, offset, length).replaceAll("^ +| +$", ""));
      comment = true;
    }

    @Override
    protected Boolean buildRecord() {
      Row row = new Row(line, List.copyOf(cells), comment);
      if (!row.isBlank()) {
        rows.add(row);
      }
      return true;
    }

    @Override
    boolean full() {
      return rows.size() == SAMPLED;
    }
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
