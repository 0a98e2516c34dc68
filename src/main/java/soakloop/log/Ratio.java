package soakloop.log;

/** One column over another, row by row. */
record Ratio(Series above, Series below) implements Series {
  @Override
  public int size() {
    return above.size();
  }

  @Override
  public double at(int row) {
    return above.at(row) / below.at(row);
  }
}
