package soakloop.quantity;

/** Checks for constructors; each fails on NaN too. */
public final class Require {
  private Require() {}

  /**
   * Returns a value above zero.
   *
   * @param what the value's name for the message
   * @param value the value
   * @throws IllegalArgumentException if it is not finite and above zero
   */
  public static double positive(String what, double value) {
    return check(value > 0 && value < Double.POSITIVE_INFINITY, what, value, "above zero");
  }

  /**
   * Returns a value of zero or more.
   *
   * @param what the value's name for the message
   * @param value the value
   * @throws IllegalArgumentException if it is not finite and zero or more
   */
  public static double notNegative(String what, double value) {
    return check(value >= 0 && value < Double.POSITIVE_INFINITY, what, value, "zero or more");
  }

  /**
   * Returns a finite value.
   *
   * @param what the value's name for the message
   * @param value the value
   * @throws IllegalArgumentException if it is not finite
   */
  public static double finite(String what, double value) {
    return check(Double.isFinite(value), what, value, "a finite number");
  }

  /**
   * Returns a value within bounds, both allowed.
   *
   * @param what the value's name for the message
   * @param value the value
   * @param low lower bound
   * @param high upper bound
   * @throws IllegalArgumentException if it is outside
   */
  public static double within(String what, double value, double low, double high) {
    // The words are put together only where they are needed: this stands in hot paths too.
    return value >= low && value <= high
        ? value
        : check(false, what, value, "from " + low + " to " + high);
  }

  private static double check(boolean ok, String what, double value, String allowed) {
    if (!ok) {
      throw new IllegalArgumentException(what + " must be " + allowed + ", not " + value);
    }
    return value;
  }
}
