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
}
