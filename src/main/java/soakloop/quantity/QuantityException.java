package soakloop.quantity;

/** A text that is not the quantity it should be; the message says what is allowed. */
public final class QuantityException extends Exception {
  /**
   * Makes the exception.
   *
   * @param message what is wrong and what is allowed
   */
  public QuantityException(String message) {
    super(message);
  }
}
