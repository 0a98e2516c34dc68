package soakloop.quantity;

/**
 * An argument outside the range that a published equation was made for: the result is computed, but
 * nobody vouches for it.
 *
 * @param range the range
 * @param value the argument's value
 */
public record OutsideRange(PublishedRange range, double value) {
  /** Returns what lies outside what, in plain words. */
  public String message() {
    return String.format(
        java.util.Locale.ROOT,
        "%s: %s is %.4g, the equation was made for %.4g to %.4g",
        range.equation(),
        range.argument(),
        value,
        range.low(),
        range.high());
  }
}
