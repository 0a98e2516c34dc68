package soakloop.quantity;

import java.util.function.Consumer;

/**
 * The range of one argument over which a published equation was made.
 *
 * <p>Outside it the equation is still computed; whoever shows the result says so.
 *
 * @param equation name of the equation, for the message
 * @param argument name of its argument, with the unit
 * @param low lowest value of the range
 * @param high highest value of the range
 */
public record PublishedRange(String equation, String argument, double low, double high) {
  /** Checks that the range is one. */
  public PublishedRange {
    if (!(low <= high)) {
      throw new IllegalArgumentException("no range: " + low + " to " + high);
    }
  }

  /**
   * Tells a listener if a value lies outside.
   *
   * @param value the argument's value
   * @param listener told at most once
   */
  public void check(double value, Consumer<? super OutsideRange> listener) {
    if (!(value >= low && value <= high)) {
      listener.accept(new OutsideRange(this, value));
    }
  }
}
