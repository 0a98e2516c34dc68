package soakloop.log;

/** Numbers as they are. */
final class PlainSeries implements Series {
  private final double[] values;

  PlainSeries(double[] values) {
    this.values = values.clone();
  }

  @Override
  public int size() {
    return values.length;
  }

  @Override
  public double at(int row) {
    return values[row];
  }
}
