package soakloop.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.quantity.UnitSystem;

/** Shows a default in other units than the table's. */
final class AssumedShown {
  private static final MathContext THREE = new MathContext(3);

  private AssumedShown() {}

  /** Returns the same default in US units; in metric ones the table's own words stay. */
  static Assumed in(UnitSystem units, Assumed assumed, List<Stated> values) {
    if (units == UnitSystem.METRIC) {
      return assumed;
    }
    return values.stream()
        .filter(v -> v.key().equals(assumed.key()))
        .findFirst()
        .map(v -> converted(units, assumed, v))
        .orElse(assumed);
  }

  private static Assumed converted(UnitSystem units, Assumed assumed, Stated value) {
    Dimension dimension = value.dimension();
    Unit unit = units.unit(dimension);
    if (dimension.isPlainNumber()
        || dimension == Dimension.FRACTION
        || dimension == Dimension.POWER
        || unit.equals(dimension.si())
        || unit.symbol().equals(UnitSystem.METRIC.unit(dimension).symbol())) {
      return assumed;
    }
    boolean relative = assumed.spread().isEmpty() || assumed.spread().endsWith("%");
    Unit difference = units.unit(dimension.ofSpread());
    String spread =
        relative
            ? assumed.spread()
            : "+/- "
                + rounded(value.estimate().spread() / difference.scale())
                + " "
                + difference.symbol();
    return new Assumed(
        assumed.key(),
        rounded(unit.fromSi(value.estimate().value())) + " " + unit.symbol(),
        spread,
        assumed.reason());
  }

  private static String rounded(double value) {
    return new BigDecimal(value).round(THREE).stripTrailingZeros().toPlainString();
  }
}
