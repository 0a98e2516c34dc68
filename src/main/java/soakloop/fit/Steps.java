package soakloop.fit;

/** Is told how far long work has come. */
public interface Steps {
  /** Tells nobody. */
  Steps SILENT = (step, of, doing) -> {};

  /**
   * Begins a step.
   *
   * @param step counted from 0
   * @param of how many there are
   * @param doing what it does, in words
   */
  void begin(int step, int of, String doing);
}
