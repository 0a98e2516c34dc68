package soakloop.scenario;

/**
 * A place in a scenario's text.
 *
 * @param line from 1
 * @param column from 1
 */
record Mark(int line, int column) {
  /** A place in what was not written: a default, or a value set by a study. */
  static final Mark NONE = new Mark(0, 0);
}
