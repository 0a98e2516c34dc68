package soakloop.log;

/**
 * Those of a file's rows that the log has.
 *
 * @param all by the file's rows
 * @param axis which of them the log has
 */
record PickedRows(Series all, TimeAxis axis) implements Series {
  @Override
  public int size() {
    return axis.time().size();
  }

  @Override
  public double at(int row) {
    return all.at(axis.row(row));
  }
}
