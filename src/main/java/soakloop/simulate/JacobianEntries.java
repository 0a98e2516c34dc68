package soakloop.simulate;

/**
 * Takes the entries of a Jacobian.
 *
 * <p>Whoever gives them gives the same places in the same order every time, zeros too, so that
 * finding an entry's place costs nothing. Entries given twice add up.
 */
interface JacobianEntries {
  /**
   * Takes an entry.
   *
   * @param row state whose derivative changes
   * @param column state that it changes with
   * @param value change of the derivative per change of the state
   */
  void add(int row, int column, double value);
}
