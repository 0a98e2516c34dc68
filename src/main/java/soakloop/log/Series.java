package soakloop.log;

/** Values by row; NaN where there is none. Immutable. */
interface Series {
  /** Returns the number of rows. */
  int size();

  /**
   * Returns a row's value.
   *
   * @param row index from 0
   */
  double at(int row);

  /** Returns a bound that no value is below; minus infinity if none is known. */
  default double lowest() {
    return Double.NEGATIVE_INFINITY;
  }
}
