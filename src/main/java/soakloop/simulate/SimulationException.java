package soakloop.simulate;

/** A run that could not start or finish; the message says why in plain words. */
public final class SimulationException extends Exception {
  private final boolean inputWrong;

  private SimulationException(String message, boolean inputWrong) {
    super(message);
    this.inputWrong = inputWrong;
  }

  /**
   * A run that cannot start because what it was given cannot be.
   *
   * @param message what and why
   */
  public static SimulationException input(String message) {
    return new SimulationException(message, true);
  }

  /**
   * A run that broke off.
   *
   * @param message where and why
   */
  public static SimulationException unfinished(String message) {
    return new SimulationException(message, false);
  }

  /** Returns whether the input, not the run, is at fault. */
  public boolean isInputWrong() {
    return inputWrong;
  }
}
