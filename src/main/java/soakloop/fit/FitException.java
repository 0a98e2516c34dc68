package soakloop.fit;

/** Nothing can be fitted as asked; says what is missing. */
public final class FitException extends Exception {
  /**
   * Makes the exception.
   *
   * @param message what is missing and what to do about it
   */
  public FitException(String message) {
    super(message);
  }
}
