package soakloop.log;

/**
 * Something about a log's rows that a reader should know, and what was done about it.
 *
 * @param kind of what kind
 * @param firstRow row of the file that it begins in, counted from 1 as an editor shows it
 * @param lastRow row that it ends in, or the last that it was seen in
 * @param text in words, with what was done
 */
public record Remark(Kind kind, long firstRow, long lastRow, String text) {
  /** Kinds of remarks. */
  public enum Kind {
    /** How the file is written: encoding, decimal sign, layout. */
    FORMAT,
    /** Rows that were left out. */
    ROWS,
    /** Cells that hold no number or none that can be. */
    CELLS,
    /** What time means here. */
    TIME,
    /** Time begins again: another run follows in the same file. */
    TIME_RESTARTS,
    /** Rows with the time of the row before. */
    TIME_REPEATS,
    /** Time goes back. */
    TIME_FALLS,
    /** Time without rows. */
    TIME_GAP,
    /** What a column may be, and how to settle it. */
    COLUMNS,
    /** What gauge and absolute pressures are reckoned by. */
    BAROMETER
  }

  /**
   * Returns the same as a remark of one file among several: its text says which.
   *
   * @param file the file's name; rows are that file's
   */
  public Remark of(String file) {
    return new Remark(kind, firstRow, lastRow, file + ": " + text);
  }
}
