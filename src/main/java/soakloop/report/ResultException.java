package soakloop.report;

import java.io.IOException;

/** Results that could not be written; what was there before is as it was. */
public final class ResultException extends Exception {
  private final boolean inputWrong;

  /**
   * Makes the exception of a place that results cannot go to as asked.
   *
   * @param message what is wrong and what to do about it
   */
  public ResultException(String message) {
    super(message);
    this.inputWrong = true;
  }

  /**
   * Makes the exception of something that cannot be used as it was found.
   *
   * @param message what is wrong and what to do about it
   * @param cause what was met
   */
  public ResultException(String message, Throwable cause) {
    this(message, cause, true);
  }

  private ResultException(String message, Throwable cause, boolean inputWrong) {
    super(message, cause);
    this.inputWrong = inputWrong;
  }

  /**
   * Makes the exception of a writing that failed, by a full disk for instance.
   *
   * @param message what is wrong
   * @param cause what was met
   */
  static ResultException unwritten(String message, IOException cause) {
    return new ResultException(message, cause, false);
  }

  /** Returns whether what was asked for is wrong; else the writing failed. */
  public boolean isInputWrong() {
    return inputWrong;
  }
}
