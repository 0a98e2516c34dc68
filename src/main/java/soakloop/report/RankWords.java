package soakloop.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.quantity.UnitSystem;
import soakloop.study.Measure;
import soakloop.study.Moved;
import soakloop.study.UncertainKey;

/**
 * The words and numbers that a ranking is shown by.
 *
 * @param measure the result
 * @param display how numbers are shown
 */
record RankWords(Measure measure, Display display) {
  private static final MathContext DIGITS = new MathContext(3);

  /** Returns the unit that a key is shown in: what a workshop would say. */
  private Unit unit(Dimension dimension) {
    boolean metric = display.units() == UnitSystem.METRIC;
    return switch (dimension) {
      case POWER -> dimension.require("W");
      case VOLUME_PER_REVOLUTION -> dimension.require("L/rev");
      case DENSITY -> dimension.require("kg/L");
      case CONDUCTANCE ->
          metric ? dimension.require("W/K") : display.units().unit(Dimension.CONDUCTANCE);
      default -> display.units().unit(dimension);
    };
  }

  /** Returns a key's interval, such as 8 to 24 L/min. */
  String range(UncertainKey key) {
    Unit unit = unit(key.dimension());
    UncertainKey.Part part = key.parts().get(0);
    String symbol = display.plain() ? unit.symbol() : unit.symbol().replace("deg", "\u00b0");
    String range = (rounded(unit, part.low()) + " to " + rounded(unit, part.high())) + " " + symbol;
    int more = key.parts().size() - 1;
    return range.strip() + (more > 0 ? ", and " + more + " more points with it" : "");
  }

  private static String rounded(Unit unit, double si) {
    BigDecimal rounded = new BigDecimal(unit.fromSi(si)).round(DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Returns what both ends do, such as +3.1 / -1.2 K. */
  String changes(Moved moved) {
    return change(moved.low()) + " / " + change(moved.high()) + " " + symbol();
  }

  private String change(Moved.End end) {
    OptionalDouble change = end.change();
    return change.isPresent() ? display.signed(change.getAsDouble(), spread(), 1) : "no run";
  }

  /** Returns the size of a change without its unit. */
  String size(double si) {
    return display.number(si, spread(), 1);
  }

  /** Returns a change in shown units, without rounding. */
  double shown(double change) {
    return display.units().unit(spread()).fromSi(change);
  }

  /** Returns the unit of changes. */
  String symbol() {
    return display.symbol(spread());
  }

  /** Returns a result with its unit. */
  String result(double si) {
    return display.show(si, measure.dimension(), 1);
  }

  /** Returns what the result is, as it stands within a sentence. */
  String name() {
    return Character.toLowerCase(measure.label().charAt(0)) + measure.label().substring(1);
  }

  /** Returns a share in per cent. */
  String share(double share) {
    return Math.round(100 * share) + (display.plain() ? " %" : "\u00a0%");
  }

  private Dimension spread() {
    return measure.dimension().ofSpread();
  }
}
