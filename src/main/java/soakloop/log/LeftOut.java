package soakloop.log;

import java.util.Optional;

/** Counts values that cannot be. */
final class LeftOut {
  private LeftOut() {}

  /** Says which values of a column were left out because no sensor of its kind can read them. */
  static Optional<Remark> of(Measured column, String header, Series lines) {
    if (column.raw() instanceof PackedColumn packed
        && column.range().contains(column.unit().toSi(packed.lowest()))
        && column.range().contains(column.unit().toSi(packed.highest()))) {
      return Optional.empty();
    }
    int count = 0;
    int first = 0;
    int last = 0;
    double example = 0;
    for (int i = 0; i < column.size(); i++) {
      double si = column.unit().toSi(column.raw().at(column.axis().row(i)));
      if (!Double.isNaN(si) && !column.range().contains(si)) {
        if (count++ == 0) {
          first = i;
          example = si;
        }
        last = i;
      }
    }
    if (count == 0) {
      return Optional.empty();
    }
    long from = (long) lines.at(column.axis().row(first));
    long to = (long) lines.at(column.axis().row(last));
    String what =
        (count == 1 ? "row " + from + ", " : "")
            + "column `"
            + header
            + "`: "
            + (count == 1
                ? ""
                : count + " values from row " + from + " to row " + to + ", the first ")
            + column.unit().format(example, 1)
            + " "
            + column.unit().symbol()
            + (count == 1 ? " is " : ", are ")
            + column.range().outside(example, column.unit())
            + " Left out";
    return Optional.of(new Remark(Remark.Kind.CELLS, from, to, what));
  }
}
