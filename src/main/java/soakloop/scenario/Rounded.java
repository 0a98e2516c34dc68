package soakloop.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityParser;
import soakloop.quantity.Unit;
import soakloop.quantity.UnitSystem;

/** Writes values with their spreads as far as they are known: two digits of the spread. */
final class Rounded {
  private static final int MOST_DECIMALS = 18;

  private final UnitSystem units;
  private final int more;

  /**
   * Makes it.
   *
   * @param units of the shop
   * @param more digits beyond what is known, for values that rounding would bring too close
   *     together
   */
  Rounded(UnitSystem units, int more) {
    this.units = units;
    this.more = more;
  }

  /**
   * Writes a value.
   *
   * @param found value and spread, SI
   * @param dimension what it measures
   * @param before as the scenario has it, whose unit is kept; empty if it does not
   * @param spec its range and usual unit, if it is a key
   */
  String of(Estimate found, Dimension dimension, String before, Optional<KeySpec> spec) {
    Unit unit =
        QuantityParser.unitOf(before, dimension)
            .orElseGet(() -> usual(dimension, spec.flatMap(KeySpec::defaultText).orElse("")));
    double spread = found.spread() / unit.scale();
    int decimals = 1 - (int) Math.floor(Math.log10(spread)) + more;
    BigDecimal value = rounded(unit.fromSi(found.value()), decimals);
    while (decimals < MOST_DECIMALS
        && spec.isPresent()
        && Ranges.outside(unit.toSi(value.doubleValue()), spec.get())) {
      value = rounded(unit.fromSi(found.value()), ++decimals);
    }
    BigDecimal around = rounded(spread, 1 - (int) Math.floor(Math.log10(spread)) + more);
    return (value.toPlainString() + " " + unit.symbol()).strip()
        + " +/- "
        + (around.toPlainString() + " " + ofSpread(unit, dimension)).strip();
  }

  private static BigDecimal rounded(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
  }

  private static String ofSpread(Unit unit, Dimension dimension) {
    return switch (dimension) {
      case FRACTION -> "points";
      case TEMPERATURE -> unit.symbol().equals("degF") ? "degF" : "K";
      default -> unit.symbol();
    };
  }

  /** Returns the shop's unit, or what the key table writes where the shop has none of its own. */
  private Unit usual(Dimension dimension, String defaultText) {
    Unit shop = units.unit(dimension);
    return shop.equals(dimension.si())
        ? QuantityParser.unitOf(defaultText, dimension).orElse(Ranges.unit(dimension))
        : shop;
  }
}
