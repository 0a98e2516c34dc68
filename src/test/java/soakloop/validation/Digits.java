package soakloop.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Decimal text of doubles by exact rounding, so that every Java release writes the same. */
final class Digits {
  private static final int MIN_PLAIN_EXPONENT = -4;
  private static final int MAX_PLAIN_EXPONENT = 9;

  private Digits() {}

  /** The value rounded to significant digits, trailing zeros dropped. */
  static String of(double value, int digits) {
    if (!Double.isFinite(value)) {
      return "-";
    }
    BigDecimal rounded =
        new BigDecimal(value)
            .round(new MathContext(digits, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    if (rounded.signum() == 0) {
      return "0";
    }
    int exponent = rounded.precision() - rounded.scale() - 1;
    if (exponent >= MIN_PLAIN_EXPONENT && exponent <= MAX_PLAIN_EXPONENT) {
      return rounded.toPlainString();
    }
    return rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
  }
}
