package soakloop.simulate;

import java.util.BitSet;

/** Hands out places in the state vector; the only class that knows how it is laid out. */
final class StateLayout {
  private final BitSet coolant = new BitSet();
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

  /**
   * Reserves a block for coolant, as theta of {@link EnthalpyScale}.
   *
   * @param length number of states
   * @return index of the first
   */
  int reserveCoolant(int length) {
    coolant.set(size, size + length);
    return reserve(length);
  }

  /** Returns whether a state is coolant. */
  boolean isCoolant(int state) {
    return coolant.get(state);
  }

  int size() {
    return size;
  }
}
