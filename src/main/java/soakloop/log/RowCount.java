package soakloop.log;

import java.util.Optional;

/** Counts rows that are left out for one reason. */
final class RowCount {
  private long count;
  private long first;
  private long last;

  /** Counts a row of the file. */
  void add(long line) {
    first = count++ == 0 ? line : first;
    last = line;
  }

  /**
   * Says which rows they are, if there are any.
   *
   * @param one how a sentence on one row goes on
   * @param many how one on several does
   */
  Optional<Remark> remark(Remark.Kind kind, String one, String many) {
    if (count == 0) {
      return Optional.empty();
    }
    String text =
        count == 1
            ? "row " + first + " " + one
            : count + " rows, the first row " + first + ", " + many;
    return Optional.of(new Remark(kind, first, last, text + "; left out"));
  }
}
