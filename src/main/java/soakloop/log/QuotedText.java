package soakloop.log;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Parses a text; once more with its quotes mended if they are broken. */
final class QuotedText {
  private static final String ALLOWED =
      "; allowed: a pair of quotes around a cell, a quote within it doubled";

  /** Takes the rows of one pass. */
  abstract static class Rows extends AbstractBaseCsvCallbackHandler<Boolean> {
    private boolean swallowed;

    /** Returns whether no more rows are wanted. */
    boolean full() {
      return false;
    }

    /** Returns whether a cell may have swallowed rows. */
    final boolean swallowed() {
      return swallowed;
    }

    /** Looks at a quoted cell: one with line breaks may have swallowed rows. */
    final void quoted(char[] text, int offset, int length) {
      for (int i = offset; i < offset + length && !swallowed; i++) {
        swallowed = text[i] == '\n' || text[i] == '\r';
      }
    }
  }

  /** A text that can be read from its beginning more than once. */
  interface Text {
    Reader open() throws IOException;
  }

  /**
   * What came of it.
   *
   * @param rows that took the rows
   * @param remark on quotes that were taken away, if any were
   */
  record Parsed<R>(R rows, Optional<Remark> remark) {}

  private QuotedText() {}

  /**
   * Parses a text.
   *
   * @param passes makes what takes the rows of a pass
   * @param headers of its columns, for the remark; empty if they are not known yet
   * @throws LogException if most quotes are broken
   */
  static <R extends Rows> Parsed<R> parse(
      Text text, Dialect dialect, Supplier<R> passes, List<Header> headers, Problems problems)
      throws LogException {
    R rows = passes.get();
    try {
      pass(text.open(), dialect, rows);
      if (!rows.swallowed()) {
        return new Parsed<>(rows, Optional.empty());
      }
    } catch (CsvParseException e) {
      // Mended below.
    } catch (IOException | UncheckedIOException e) {
      throw problems.only("cannot be read: " + e.getMessage());
    }
    R again = passes.get();
    try (QuoteMender mender = new QuoteMender(text.open(), dialect)) {
      pass(mender, dialect, again);
      if (mender.isHopeless()) {
        throw problems.only(hopeless(mender));
      }
      return new Parsed<>(again, remark(mender, headers));
    } catch (CsvParseException e) {
      throw problems.only("has a quoted cell that is too long" + ALLOWED);
    } catch (IOException | UncheckedIOException e) {
      throw problems.only("cannot be read: " + e.getMessage());
    }
  }

  private static void pass(Reader in, Dialect dialect, Rows rows) throws IOException {
    try (CsvReader<Boolean> reader = dialect.reader().build(rows, in);
        CloseableIterator<Boolean> all = reader.iterator()) {
      while (!rows.full() && all.hasNext()) {
        all.next();
      }
    }
  }

  private static String hopeless(QuoteMender mender) {
    return "has quotes throughout that open a cell and never close it, the first in row "
        + mender.mended().get(0).row()
        + ALLOWED;
  }

  private static Optional<Remark> remark(QuoteMender mender, List<Header> headers) {
    if (mender.count() == 0) {
      return Optional.empty();
    }
    List<String> where = new ArrayList<>();
    for (QuoteMender.Mended m : mender.mended()) {
      boolean named = m.cell() < headers.size() && !headers.get(m.cell()).text().isEmpty();
      where.add(
          "row "
              + m.row()
              + (named
                  ? ", column `" + headers.get(m.cell()).text() + "`"
                  : ", cell " + (m.cell() + 1)));
    }
    long more = mender.count() - where.size();
    String quotes = mender.count() == 1 ? "a quote opens" : "quotes open";
    String text =
        String.join("; ", where)
            + (more > 0 ? "; and " + more + " more" : "")
            + ": "
            + quotes
            + " a cell and never "
            + (mender.count() == 1 ? "closes it; it is" : "close it; they are")
            + " left out and the row is read without";
    long first = mender.mended().get(0).row();
    long last = mender.mended().get(mender.mended().size() - 1).row();
    return Optional.of(new Remark(Remark.Kind.CELLS, first, last, text));
  }
}
