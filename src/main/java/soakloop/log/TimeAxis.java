package soakloop.log;

import java.util.List;
import java.util.Optional;

/**
 * Makes strictly rising times of a file's. Rows without a time or with one that goes back are left
 * out; rows that share a rounded stamp are spread evenly up to the next; where time begins again
 * the second run is put behind the first.
 *
 * @param time s, strictly rising
 * @param rows the file's row (index from 0) of each, empty if all rows are there in order
 * @param remarks what was wrong and what was done
 */
record TimeAxis(Series time, Optional<Series> rows, List<Remark> remarks) {
  /**
   * Makes the axis.
   *
   * @param raw times as the file has them, s; NaN where a row has none
   * @param lines the file's line of each row
   */
  static TimeAxis of(Series raw, Series lines) {
    return new TimeAxisMaker(raw, lines).make();
  }

  /**
   * Makes even times.
   *
   * @param rate rows a second
   */
  static TimeAxis even(int rows, double rate) {
    PackedColumn.Builder time = new PackedColumn.Builder();
    for (int i = 0; i < rows; i++) {
      time.add(i / rate);
    }
    return new TimeAxis(time.build(), Optional.empty(), List.of());
  }

  /** Returns the file's row (index from 0) of a row of the axis. */
  int row(int i) {
    return rows.isPresent() ? (int) rows.get().at(i) : i;
  }
}
