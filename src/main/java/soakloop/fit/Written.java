package soakloop.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import soakloop.quantity.Dimension;

/** Writes SI values as a scenario takes them. */
final class Written {
  /** More digits than any value is known to, and few enough that a bound stays itself. */
  private static final MathContext DIGITS = new MathContext(12);

  private Written() {}

  static String of(double si, Dimension dimension) {
    BigDecimal value = new BigDecimal(si).round(DIGITS);
    return dimension == Dimension.FRACTION
        ? value.movePointRight(2).toPlainString() + " %"
        : (value.toPlainString() + " " + dimension.si().symbol()).strip();
  }
}
