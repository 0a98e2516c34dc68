package soakloop.report;

/** Results that could not be written; what was there before is as it was. */
public final class ResultException extends Exception {
  /**
   * Makes the exception.
   *
   * @param message what is wrong and what to do about it
   */
  public ResultException(String message) {
    super(message);
  }

  /**
   * Makes the exception.
   *
   * @param message what is wrong and what to do about it
   * @param cause what was met
   */
  public ResultException(String message, Throwable cause) {
    super(message, cause);
  }
}
