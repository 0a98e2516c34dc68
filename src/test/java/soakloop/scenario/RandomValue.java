package soakloop.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.Unit;

/**
 * Random values for keys of the table, as a person may write them: in any unit, with or without a
 * spread, from the whole range or from near what is usual, and now and then just at an end.
 */
final class RandomValue {
  /** Share of values that are an end of the range. */
  private static final double ENDS = 0.1;

  private static final double COUNT_ENDS = 0.03;

  private static final double SPREADS = 0.15;

  /** A range that spans more than this is drawn over its logarithm. */
  private static final double DECADES = 30;

  private static final MathContext DIGITS = new MathContext(13);

  private final Draw draw;

  /** Share of the range around the usual value that values come from, 0 to 1. */
  private final double reach;

  /** Share of values that are an end of their range. */
  private final double ends;

  RandomValue(Draw draw, double reach) {
    this(draw, reach, ENDS);
  }

  private RandomValue(Draw draw, double reach, double ends) {
    this.draw = draw;
    this.reach = reach;
    this.ends = ends;
  }

  /** Returns values that stay away from the ends of their ranges. */
  static RandomValue usual(Draw draw, double reach) {
    return new RandomValue(draw, reach, 0);
  }

  /** Returns the same with more ends, for keys that seldom come up. */
  RandomValue oftenAtEnds() {
    return new RandomValue(draw, reach, 4 * ends);
  }

  static double low(KeySpec spec) {
    return spec.low().orElseThrow().value();
  }

  static double high(KeySpec spec) {
    return spec.high().orElseThrow().value();
  }

  /** Returns a value of any kind but sections, lists and curves. */
  String of(KeySpec spec) {
    return switch (spec.takes()) {
      case TEXT -> draw.any(List.of("Invented", "\"an invented, odd: one\"", "'12'", "Erfunden"));
      case CHOICE -> draw.any(spec.choices());
      case SWITCH -> draw.any(List.of("on", "off"));
      case COUNT -> String.valueOf(count(spec, (int) high(spec)));
      case QUANTITY_OR_CHOICE ->
          draw.chance(0.5) ? draw.any(spec.choices()) : in(spec, low(spec), high(spec));
      case QUANTITY -> in(spec, low(spec), high(spec));
      default -> throw new AssertionError(spec.key());
    };
  }

  /** Returns a count up to a number; large ones, which take long, are seldom. */
  int count(KeySpec spec, int most) {
    int low = (int) low(spec);
    int high = Math.min(most, (int) high(spec));
    if (draw.chance(COUNT_ENDS)) {
      return draw.chance(0.5) ? low : high;
    }
    double reached = 1 + reach * (high - low);
    return low + (int) Math.floor(draw.across(1, 1 + reached)) - 1;
  }

  /** Returns a quantity from a part of the key's range, SI. */
  String in(KeySpec spec, double low, double high) {
    return written(spec, number(spec, low, high));
  }

  /** Returns a number from a part of the key's range, SI. */
  double number(KeySpec spec, double low, double high) {
    if (draw.chance(ends)) {
      return draw.chance(0.5) ? low : high;
    }
    boolean decades = low > 0 && high / low > DECADES;
    double from = decades ? Math.log(low) : low;
    double to = decades ? Math.log(high) : high;
    double middle = (from + to) / 2;
    double usual = spec.defaultEstimate().map(Estimate::value).orElse(Double.NaN);
    if (usual >= low && usual <= high) {
      middle = decades ? Math.log(usual) : usual;
    }
    double drawn = draw.between(middle - reach * (middle - from), middle + reach * (to - middle));
    double number = decades ? Math.exp(drawn) : drawn;
    return Math.max(low, Math.min(high, number));
  }

  /** Returns a number of the key as it may be written, SI to any unit, perhaps with a spread. */
  String written(KeySpec spec, double si) {
    Dimension dimension = spec.dimension().orElseThrow();
    String value = bare(dimension, si);
    return draw.chance(SPREADS) ? value + " +/- " + spread(dimension) : value;
  }

  private String bare(Dimension dimension, double si) {
    Unit unit = draw.any(dimension.units().stream().filter(RandomValue::isFit).toList());
    if (dimension == Dimension.FRACTION) {
      unit = dimension.require("%");
    }
    String number = new BigDecimal(unit.fromSi(si)).round(DIGITS).toPlainString();
    return (number + " " + unit.symbol()).strip();
  }

  /** Shares are written in per cent only. */
  private static boolean isFit(Unit unit) {
    return !unit.symbol().isEmpty() || unit.equals(Dimension.NUMBER.si());
  }

  private String spread(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> bare(Dimension.TEMPERATURE_DIFFERENCE, draw.between(0, 10));
      case FRACTION -> Math.rint(draw.between(0, 10)) + " points";
      default -> Math.rint(draw.between(0, 60)) + " %";
    };
  }

  /** Returns a curve's points; places rise, values are of the key's range. */
  String points(KeySpec spec, double[] places, double[] values) {
    return IntStream.range(0, places.length)
        .mapToObj(
            i ->
                "["
                    + bare(spec.over().orElseThrow(), places[i])
                    + ", "
                    + written(spec, values[i])
                    + "]")
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** Returns one value, or points between two places. */
  String curve(KeySpec spec, double from, double to) {
    if (draw.chance(0.3)) {
      return in(spec, low(spec), high(spec));
    }
    int size = draw.count(1, 5);
    double[] places = rising(size, from, to);
    double[] values =
        IntStream.range(0, size).mapToDouble(i -> number(spec, low(spec), high(spec))).toArray();
    return points(spec, places, values);
  }

  /** Returns so many rising numbers between two. */
  double[] rising(int size, double from, double to) {
    double step = (to - from) / size;
    return IntStream.range(0, size)
        .mapToDouble(i -> from + step * (i + draw.between(0.05, 0.95)))
        .toArray();
  }
}
