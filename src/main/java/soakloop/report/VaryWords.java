package soakloop.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import soakloop.quantity.Dimension;
import soakloop.session.Phase;
import soakloop.study.KeyRange;
import soakloop.study.Measure;
import soakloop.study.VaryPlan;

/**
 * The words and numbers that a plan's keys and measures are shown by. Key values stay in the unit
 * they were asked in.
 *
 * @param plan whose
 * @param display how numbers are shown
 */
record VaryWords(VaryPlan plan, Display display) {
  /** Digits of a crossing, and of anything else that a key is shown by. */
  private static final int DIGITS = 3;

  private static final int GRID_DIGITS = 4;

  /** Longest meaning of a key that an axis has room for. */
  private static final int LONGEST = 40;

  /** Returns a key's unit, such as the degree sign and C. */
  String symbol(KeyRange range) {
    String symbol = range.unit().symbol();
    return display.plain() ? symbol : symbol.replace("deg", "\u00b0");
  }

  /** Returns a value of the grid without its unit. */
  String number(double value) {
    return rounded(value, GRID_DIGITS);
  }

  /** Returns a value found between those of the grid without its unit. */
  String found(double value) {
    return rounded(value, DIGITS);
  }

  private static String rounded(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Returns a value of the grid with its unit. */
  String value(KeyRange range, double value) {
    return with(range, number(value));
  }

  /** Returns a value found between those of the grid with its unit. */
  String foundValue(KeyRange range, double value) {
    return with(range, range.whole() ? number(value) : found(value));
  }

  private String with(KeyRange range, String number) {
    String symbol = symbol(range);
    return symbol.isEmpty() ? number : number + (display.plain() ? " " : "\u00a0") + symbol;
  }

  /** Returns the axis label of a key. */
  String axis(KeyRange range, boolean narrow) {
    String symbol = symbol(range);
    boolean brief = narrow || range.means().length() > LONGEST;
    return (brief ? range.key() : range.means() + ", " + range.key())
        + (symbol.isEmpty() ? "" : " [" + symbol + "]");
  }

  /** Returns a column's heading of a key. */
  String heading(KeyRange range) {
    String symbol = symbol(range);
    return range.key() + (symbol.isEmpty() ? "" : ", " + symbol);
  }

  /** Returns a column's heading with no more of a key than its last part. */
  String briefHeading(KeyRange range) {
    String key = heading(range);
    return key.substring(range.key().lastIndexOf('.') + 1);
  }

  /** Returns a measure's value in shown units, without rounding. */
  double shown(Measure measure, double si) {
    return display.units().unit(measure.dimension()).fromSi(si);
  }

  /** Returns a measure's value for a sentence. */
  String show(Measure measure, double si) {
    return show(measure, si, false);
  }

  /**
   * Returns a measure's value for a sentence, to a tenth where it is one of two that differ little.
   */
  String show(Measure measure, double si, boolean fine) {
    return measure.dimension() == Dimension.TIME
        ? Display.duration(si)
        : display.show(si, measure.dimension(), fine || isSmall(measure) ? 1 : 0);
  }

  /** Whether a tenth of its unit counts: pressures in psi, degrees of spark. */
  private static boolean isSmall(Measure measure) {
    return switch (measure.dimension()) {
      case GAUGE_PRESSURE, PRESSURE_DIFFERENCE, ANGLE -> true;
      default -> false;
    };
  }

  /** Returns how far a measure moves, without its unit: to a tenth of a degree if it is little. */
  String differenceNumber(Measure measure, double si) {
    Dimension dimension = difference(measure);
    double shown = display.units().unit(dimension).fromSi(si);
    return display.number(si, dimension, shown < 10 && dimension != Dimension.TIME ? 1 : 0);
  }

  /** Returns the unit that goes with it. */
  String differenceSymbol(Measure measure) {
    return display.symbol(difference(measure));
  }

  private static Dimension difference(Measure measure) {
    return measure.dimension().ofSpread();
  }

  /** Returns a limit: the scenario's in whole degrees, one of the question's own to a tenth. */
  String limit(Measure measure, double si) {
    OptionalDouble usual = measure.limit(plan.scenario());
    boolean own = usual.isEmpty() || usual.getAsDouble() != si;
    boolean whole = Math.abs(shown(measure, si) - Math.rint(shown(measure, si))) < 0.05;
    return show(measure, si, own && !whole);
  }

  /** Returns a measure's value for a table. */
  String cell(Measure measure, double si) {
    return display.number(si, measure.dimension(), 1);
  }

  /** Returns the units of the plan's measures for a note, such as "Temperatures in degF". */
  String units() {
    List<String> said = new ArrayList<>();
    plan.measures().stream()
        .map(Measure::dimension)
        .distinct()
        .forEach(
            d -> {
              String kind = kind(d) + " in " + display.symbol(d);
              if (!said.contains(kind)) {
                said.add(kind);
              }
            });
    return Display.sentenceStart(String.join(", ", said));
  }

  private static String kind(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> "temperatures";
      case TIME -> "times";
      case POWER -> "power";
      case ANGLE -> "spark";
      default -> "pressures";
    };
  }

  /** Returns a measure's unit in square brackets, after a space. */
  String unit(Measure measure) {
    return " [" + display.symbol(measure.dimension()) + "]";
  }

  /** Returns a measure's short name for an axis or a column. */
  String brief(Measure measure) {
    return switch (measure) {
      case PEAK_CHARGE -> "Charge peak";
      case END_CHARGE -> Display.sentenceStart(lastPull()) + " end";
      case COOLANT -> "Coolant in";
      case OVER_LIMIT -> "Time over limit";
      case BOOST -> "Boost";
      case BOOST_BEFORE_CORE -> "Boost before";
      case CORE_LOSS -> "Core loss";
      case BLOWER_POWER -> "Blower";
      case CRANK_POWER -> "Crank";
      case WHEEL_POWER -> "Wheels";
      case SPARK_OUT -> "Spark out";
    };
  }

  /** Returns a measure's name as a sentence begins with it. */
  String subject(Measure measure) {
    return switch (measure) {
      case PEAK_CHARGE -> "The sensor's peak over all " + counted().many();
      case END_CHARGE -> "The sensor at the end of " + lastPull();
      case COOLANT -> "Coolant into the core for " + lastPull();
      case OVER_LIMIT -> "Time over the charge limit";
      case BOOST -> "Boost after the core";
      case BOOST_BEFORE_CORE -> "Boost before the core";
      case CORE_LOSS -> "The core's pressure loss";
      case BLOWER_POWER -> "Blower power at the end of " + lastPull();
      case CRANK_POWER -> "Crank power at the end of " + lastPull();
      case WHEEL_POWER -> "Wheel power at the end of " + lastPull();
      case SPARK_OUT -> "Spark taken out at the end of " + lastPull();
    };
  }

  private String lowerSubject(Measure measure) {
    String subject = subject(measure);
    return Character.toLowerCase(subject.charAt(0)) + subject.substring(1);
  }

  /** Returns what the last pull is called, such as "pull 5". */
  String lastPull() {
    boolean numberVaries =
        plan.keys().stream().anyMatch(k -> k.key().matches("session\\..*(pulls|repeat)"));
    if (numberVaries) {
      return "the last " + counted().one();
    }
    return plan.scenario().session().phases().stream()
        .filter(p -> p.kind().isCounted())
        .map(Phase::name)
        .reduce((a, b) -> b)
        .orElse("the pull");
  }

  private Counted counted() {
    return Counted.of(plan.scenario().session().phases());
  }

  /** Says that a measure is not over its limit. */
  String under(Measure measure, double limit) {
    String value = limit(measure, limit);
    return switch (measure) {
      case PEAK_CHARGE -> "the charge sensor stays under " + value + " in all " + counted().many();
      case END_CHARGE -> lastPull() + " ends under " + value;
      case COOLANT -> "coolant enters the core under " + value + " as " + lastPull() + " starts";
      case OVER_LIMIT -> "the sensor is over the charge limit for no more than " + value;
      default -> lowerSubject(measure) + " stays under " + value;
    };
  }

  /** Says that a measure is over its limit. */
  String over(Measure measure, double limit) {
    String value = limit(measure, limit);
    return switch (measure) {
      case PEAK_CHARGE -> "the charge sensor passes " + value;
      case END_CHARGE -> lastPull() + " ends over " + value;
      case COOLANT -> "coolant enters the core over " + value + " as " + lastPull() + " starts";
      case OVER_LIMIT -> "the sensor is over the charge limit for more than " + value;
      default -> lowerSubject(measure) + " is over " + value;
    };
  }
}
