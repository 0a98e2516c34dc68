package soakloop.simulate;

/** Hands out places in the state vector; the only class that knows how it is laid out. */
final class StateLayout {
  private int size;

  /**
   * Reserves a block.
   *
   * @param length number of states
   * @return index of the first
   */
  int reserve(int length) {
    int first = size;
    size += length;
    return first;
  }

  int size() {
    return size;
  }
}
