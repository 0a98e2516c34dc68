package soakloop.study;

/** A question that cannot be asked of a scenario; the message says why in plain words. */
public final class StudyException extends Exception {
  /**
   * Makes the exception.
   *
   * @param message what was asked and what is allowed
   */
  public StudyException(String message) {
    super(message);
  }
}
