package soakloop.validation;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Rounds results of an integration to fewer digits than its steps decide, so that the table reads
 * the same on every machine.
 */
final class Rounded {
  private Rounded() {}

  static double to(int decimals, double value) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
  }
}
