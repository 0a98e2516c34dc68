package soakloop.report;

import java.util.Locale;
import soakloop.fit.Band;
import soakloop.fit.FitResult;
import soakloop.fit.Quantity;
import soakloop.quantity.Dimension;

/**
 * How a fit's numbers are said.
 *
 * @param display how numbers are shown
 */
record FitWords(Display display) {
  /** Returns a value with half the width of its interval, rounded to what is known of it. */
  String known(Band band, Dimension dimension) {
    Dimension spread = dimension.ofSpread();
    double half = display.units().unit(spread).fromSi(band.half());
    int decimals = decimals(half);
    String symbol = display.symbol(dimension);
    String unit = symbol.isEmpty() ? "" : (display.plain() ? " " : "\u00a0") + symbol;
    String plus = display.plain() ? " +/- " : "\u00a0\u00b1\u00a0";
    return display.number(band.middle(), dimension, decimals)
        + plus
        + display.number(band.half(), spread, decimals)
        + unit;
  }

  /** Returns whether any fitted key moves a quantity, so that it was ever in question. */
  boolean isOpen(FitResult.Quantities known, Quantity quantity) {
    Band before = known.before().get(quantity);
    return before != null && before.half() > 0 && known.after().containsKey(quantity);
  }

  /** Returns what a quantity is called in a table or a chart. */
  String name(Quantity quantity) {
    return switch (quantity) {
      case NEXT_PEAK -> "Sensor's peak";
      case NEXT_END -> "Sensor at the counted end";
      case NEXT_COOLANT -> "Coolant into the core at the start";
      case CORE_SHARE -> "Core takes, of what there is";
      case CORE_DUTY ->
          "Core takes, air " + display.difference(Quantity.STATED_DIFFERENCE) + " above coolant";
      case LOOP_FLOW -> "Coolant flow";
    };
  }

  /** Returns an interval, rounded to what is known of it. */
  String interval(Band band, Dimension dimension) {
    int decimals = decimals(display.units().unit(dimension.ofSpread()).fromSi(band.half()));
    return display.number(band.low(), dimension, decimals)
        + " to "
        + display.show(band.high(), dimension, decimals);
  }

  /** Returns the digits after the point that leave two of a spread in SI. */
  static int digits(double half, Dimension dimension, Display display) {
    return decimals(display.units().unit(dimension).fromSi(half));
  }

  /** Returns the digits after the point that leave two of a spread. */
  private static int decimals(double half) {
    if (!(half > 0) || !Double.isFinite(half)) {
      return 1;
    }
    return (int) Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(half))));
  }

  /** Returns a share, such as what is left of a spread. */
  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
