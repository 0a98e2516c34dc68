package soakloop.log;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Takes away quotes that open a cell and never close it, so that one of them costs a cell or a row
 * and not the file. A quoted cell may go over several lines, but not over one that is a row by
 * itself. Everything else passes as it is, and no line is added or lost.
 */
final class QuoteMender extends Reader {
  /** Lines that a quoted cell can have. */
  private static final int MOST_LINES = 50;

  /** Longer lines are no rows and pass as they are. */
  private static final int LONGEST = 1 << 17;

  private static final int SHOWN = 20;

  /** After so many in one line all that follow are taken away. */
  private static final int MOST_IN_LINE = 20;

  /** Share of rows with broken quotes from which on a file's quotes mean nothing. */
  private static final double TOO_MANY = 0.2;

  /**
   * A quote that was taken away.
   *
   * @param row line of the file, counted from 1
   * @param cell index from 0
   */
  record Mended(long row, int cell) {}

  private final LineSource source;
  private final QuotedLine.Style style;
  private final Deque<String> ahead = new ArrayDeque<>();
  private final List<Mended> mended = new ArrayList<>();
  private String line = "";
  private int at;
  private long row;
  private long count;
  private int width;
  private int whole;

  QuoteMender(Reader in, Dialect dialect) {
    this.source = new LineSource(in, LONGEST);
    this.style = new QuotedLine.Style(dialect.separator(), dialect.spacedQuotes());
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (at == line.length() && !next()) {
      return -1;
    }
    int n = Math.min(length, line.length() - at);
    line.getChars(at, at + n, buffer, offset);
    at += n;
    return n;
  }

  private boolean next() throws IOException {
    Optional<String> next = take();
    if (next.isEmpty()) {
      return false;
    }
    row++;
    at = 0;
    line = next.get();
    if (whole > 0) {
      whole--;
      return true;
    }
    if (line.isEmpty() || line.charAt(0) == Dialect.COMMENT || line.length() >= LONGEST) {
      return true;
    }
    mend();
    return true;
  }

  private void mend() throws IOException {
    int from = 0;
    for (int done = 0; ; done++) {
      QuotedLine parted = QuotedLine.of(line, from, style);
      if (parted.opened() < 0) {
        width = Math.max(width, parted.separators());
        return;
      }
      if (!parted.spoilt() && closes()) {
        return;
      }
      count++;
      if (mended.size() < SHOWN) {
        mended.add(new Mended(row, parted.cell()));
      }
      from = parted.opened();
      String rest = line.substring(from + 1);
      line = line.substring(0, from) + (done < MOST_IN_LINE ? rest : rest.replace("\"", ""));
    }
  }

  /** Whether the quote left open closes in a line that follows, before one that is a row. */
  private boolean closes() throws IOException {
    List<String> taken = new ArrayList<>();
    boolean closed = false;
    boolean broken = false;
    while (!closed && !broken && taken.size() < MOST_LINES) {
      Optional<String> more = peek(taken.size());
      if (more.isEmpty()) {
        break;
      }
      String text = more.get();
      taken.add(text);
      QuotedLine own = QuotedLine.of(text, 0, style);
      broken = own.beginsLikeARow() && own.separators() >= Math.max(1, width);
      QuotedLine.Rest rest = QuotedLine.rest(text, style);
      closed = rest == QuotedLine.Rest.CLOSES;
      broken |= rest == QuotedLine.Rest.SPOILT || text.length() >= LONGEST;
    }
    if (closed && !broken) {
      whole = taken.size();
      return true;
    }
    return false;
  }

  private Optional<String> take() throws IOException {
    return ahead.isEmpty() ? source.next() : Optional.of(ahead.removeFirst());
  }

  private Optional<String> peek(int index) throws IOException {
    while (ahead.size() <= index) {
      Optional<String> more = source.next();
      if (more.isEmpty()) {
        return more;
      }
      ahead.addLast(more.get());
    }
    return ahead.stream().skip(index).findFirst();
  }

  /** Returns whether so many quotes are broken that they mean nothing. */
  boolean isHopeless() {
    return count > 1 && count > TOO_MANY * row;
  }

  /** Returns how many quotes were taken away. */
  long count() {
    return count;
  }

  /** Returns the first quotes that were taken away. */
  List<Mended> mended() {
    return mended;
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
