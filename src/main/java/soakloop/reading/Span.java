package soakloop.reading;

import soakloop.log.Log;

/**
 * A stretch of a log; {@link Log#fileRow} tells the file's rows of its indices.
 *
 * @param firstRow index of its first row, from 0
 * @param lastRow index of its last row
 * @param from time of its first row, s
 * @param to time of its last row, s
 */
public record Span(int firstRow, int lastRow, double from, double to) {
  /** The rows from one time to another; the nearest row if none lies between. */
  static Span of(Log log, double from, double to) {
    int first = row(log, from);
    int last = row(log, to);
    if (last == log.size() || log.time(last) > to) {
      last--;
    }
    first = Math.min(first, log.size() - 1);
    last = Math.max(first, last);
    return new Span(first, last, log.time(first), log.time(last));
  }

  /** All rows of a log. */
  static Span all(Log log) {
    return new Span(0, log.size() - 1, log.time(0), log.endTime());
  }

  /** Index of the first row at a time or after it. */
  private static int row(Log log, double time) {
    int low = 0;
    int high = log.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (log.time(middle) < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
