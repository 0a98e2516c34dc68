package soakloop.log;

import soakloop.quantity.Unit;

/**
 * A column in SI: rows in the log's order, nothing where a value cannot be.
 *
 * @param raw in the file's unit, by the file's rows
 * @param unit that unit
 * @param range outside it there is no value
 * @param axis which rows of the file the log has
 */
record Measured(Series raw, Unit unit, PlausibleRange range, TimeAxis axis) implements Series {
  @Override
  public int size() {
    return axis.time().size();
  }

  @Override
  public double at(int row) {
    double si = unit.toSi(raw.at(axis.row(row)));
    return range.contains(si) ? si : Double.NaN;
  }

  @Override
  public double lowest() {
    return unit.toSi(raw.lowest());
  }
}
