package soakloop.quantity;

/**
 * A value with its spread: nine times in ten the true value lies within {@code value +/- spread}.
 *
 * @param value SI
 * @param spread half width of the 90 % interval, SI; 0 if the value is taken as known
 */
public record Estimate(double value, double spread) {
  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if the value is not finite or the spread is negative
   */
  public Estimate {
    if (!Double.isFinite(value) || !(spread >= 0) || spread == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("not an estimate: " + value + " +/- " + spread);
    }
  }

  /**
   * A value taken as known.
   *
   * @param value SI
   */
  public static Estimate exactly(double value) {
    return new Estimate(value, 0);
  }
}
