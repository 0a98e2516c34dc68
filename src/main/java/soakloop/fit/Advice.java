package soakloop.fit;

/**
 * What one more sensor or one more test would be worth.
 *
 * @param what in words
 * @param isTest whether it is a test with the sensors there are; else a sensor that had been there
 * @param now standard deviation of the wanted quantity from what is not known of the keys, SI
 * @param then the same with it, as expected
 */
public record Advice(String what, boolean isTest, double now, double then) {
  /** Returns what share of the standard deviation it would take away [-]. */
  public double gain() {
    return now > 0 ? 1 - then / now : 0;
  }
}
