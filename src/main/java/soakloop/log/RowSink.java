package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes rows as they are parsed and hands each cell to its column's sink; cells of columns that
 * nobody reads cost nothing.
 */
final class RowSink extends QuotedText.Rows {
  private static final int MOST_NOTES = 100;

  private final long firstLine;
  private final int timeColumn;
  private final TimeSink time;
  private final @Nullable ColumnSink[] sinks;
  private final PackedColumn.Builder lines = new PackedColumn.Builder();
  private final List<String> notes = new ArrayList<>();
  private final int width;
  private long line;
  private boolean active;
  private boolean content;
  private boolean surplus;
  private boolean timed;
  private boolean numbers;
  private boolean texts;
  private int next;
  private long longRows;
  private long shortRows;
  private long firstLong;
  private long lastLong;
  private int cellsOfFirstLong;

  /**
   * Makes it.
   *
   * @param firstLine line that the values begin at
   * @param timeColumn index of the time column, -1 if there is none
   * @param sinks by column; nothing where it is not read
   */
  RowSink(long firstLine, int timeColumn, TimeSink time, @Nullable ColumnSink[] sinks) {
    this.firstLine = firstLine;
    this.timeColumn = timeColumn;
    this.time = time;
    this.sinks = sinks;
    this.width = sinks.length;
  }

  @Override
  protected void handleBegin(long startingLineNumber) {
    line = startingLineNumber;
    active = line >= firstLine;
    content = false;
    surplus = false;
    timed = false;
    numbers = false;
    texts = false;
    next = 0;
  }

  @Override
  protected void handleField(int index, char[] text, int offset, int length, boolean quoted) {
    if (quoted) {
      quoted(text, offset, length);
    }
    if (!active) {
      return;
    }
    if (index >= width) {
      surplus |= !isBlank(text, offset, length);
      return;
    }
    next = index + 1;
    if (index == timeColumn) {
      time.cell(text, offset, length);
      timed = true;
      content |= !isBlank(text, offset, length);
      return;
    }
    ColumnSink sink = sinks[index];
    if (sink != null) {
      ColumnSink.Cell cell = sink.cell(text, offset, length, line);
      numbers |= cell == ColumnSink.Cell.NUMBER;
      texts |= cell == ColumnSink.Cell.TEXT;
    }
    if (!content && length > 0) {
      content = !isBlank(text, offset, length);
    }
  }

  private static boolean isBlank(char[] text, int offset, int length) {
    for (int i = offset; i < offset + length; i++) {
      if (text[i] > ' ') {
        return false;
      }
    }
    return true;
  }

  @Override
  protected void handleComment(char[] text, int offset, int length) {
    active = false;
    if (notes.size() < MOST_NOTES) {
      notes.add(new String(text, offset, length).strip());
    }
  }

  @Override
  protected void handleEmpty() {
    active = false;
  }

  @Override
  protected Boolean buildRecord() {
    if (!active) {
      return false;
    }
    boolean cut = next < width;
    for (int i = next; i < width; i++) {
      ColumnSink sink = sinks[i];
      if (sink != null) {
        sink.missing();
      }
    }
    if (!timed) {
      time.missing();
    }
    // Without times a row counts for its place: only a blank line and a header again are no rows.
    boolean counted = timeColumn < 0 && next > 1;
    boolean headerAgain = timeColumn < 0 && texts && !numbers;
    if ((!content && !counted) || surplus || headerAgain) {
      for (ColumnSink sink : sinks) {
        if (sink != null) {
          sink.dropLast();
        }
      }
      time.dropLast();
      if (surplus) {
        noteLong();
      }
      return false;
    }
    shortRows += cut ? 1 : 0;
    lines.add(line, 0);
    return true;
  }

  private void noteLong() {
    if (longRows++ == 0) {
      firstLong = line;
      cellsOfFirstLong = getFieldCount();
    }
    lastLong = line;
  }

  /** Returns the time column. */
  TimeSink time() {
    return time;
  }

  /** Returns a column; nothing where it is not read. */
  @Nullable ColumnSink sink(int column) {
    return sinks[column];
  }

  /** Returns the line of each row. */
  Series lines() {
    return lines.build();
  }

  /** Returns the comment lines. */
  List<String> notes() {
    return notes;
  }

  /** Returns what was found about the rows' lengths; adds a problem if most rows are too long. */
  List<Remark> remarks(Dialect dialect, Problems problems) {
    List<Remark> remarks = new ArrayList<>();
    if (longRows > lines.size()) {
      String hint =
          dialect.separator() == ','
              ? "; a decimal comma or a comma in a text without quotes makes such rows"
              : "";
      problems.addRow(
          firstLong,
          "has "
              + cellsOfFirstLong
              + (cellsOfFirstLong == 1 ? " cell" : " cells")
              + ", but the header has "
              + width
              + " (parted by "
              + dialect.separatorName()
              + ")"
              + hint);
    } else if (longRows > 0) {
      remarks.add(
          new Remark(
              Remark.Kind.ROWS,
              firstLong,
              lastLong,
              (longRows == 1
                      ? "row " + firstLong + " has"
                      : longRows + " rows, the first row " + firstLong + ", have")
                  + " more cells than the header ("
                  + width
                  + "); left out"));
    }
    if (shortRows > 0 && shortRows < lines.size()) {
      remarks.add(
          new Remark(
              Remark.Kind.ROWS,
              0,
              0,
              shortRows
                  + (shortRows == 1 ? " row has" : " rows have")
                  + " fewer cells than the header; the cells that lack have no value"));
    }
    return remarks;
  }
}
