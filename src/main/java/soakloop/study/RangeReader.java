package soakloop.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.quantity.Unit;
import soakloop.scenario.KeySpec;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;

/**
 * Reads what a key is to be varied over.
 *
 * <ul>
 *   <li>{@code reservoir.volume=3 L..12 L/10}: ten even values; nine if the count is left out, or
 *       every whole number of a key that counts.
 *   <li>{@code reservoir.volume=3 L,5 L,8 L}: these values.
 *   <li>{@code reservoir.volume=x0.5..x2/7}, or {@code 50 %..200 %/7} for a key that does not
 *       itself take per cent: multiples of the scenario's value. {@code
 *       blower.adiabatic-efficiency=50 %..70 %} are values.
 * </ul>
 */
final class RangeReader {
  private static final int USUAL_COUNT = 9;
  private static final int LARGEST_COUNT = 100_000;
  private static final MathContext CLEAN = new MathContext(12);
  private static final Pattern RANGE = Pattern.compile("(.+?)\\.\\.(.+?)(?:/\\s*(\\d+)\\s*)?");
  private static final String NUMBER = "\\s*((?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*";
  private static final Pattern TIMES = Pattern.compile("[xX\u00d7]" + NUMBER);
  private static final Pattern PER_CENT = Pattern.compile(NUMBER + "%");

  private final Scenario scenario;
  private final String text;
  private final String key;
  private final KeySpec spec;
  private final Dimension dimension;

  private RangeReader(Scenario scenario, String text, String key, KeySpec spec) {
    this.scenario = scenario;
    this.text = text;
    this.key = key;
    this.spec = spec;
    this.dimension = spec.dimension().orElse(Dimension.NUMBER);
  }

  /**
   * Reads a key and its range.
   *
   * @throws StudyException if the text is none, or the key cannot be varied so
   * @throws ScenarioException if the scenario's reader does not know the key
   */
  static KeyRange read(Scenario scenario, String text) throws StudyException, ScenarioException {
    int equals = text.indexOf('=');
    String key = (equals < 0 ? text : text.substring(0, equals)).strip();
    String range = equals < 0 ? "" : text.substring(equals + 1).strip();
    if (key.isEmpty() || range.isEmpty()) {
      throw new StudyException(
          "`" + text + "` is no key with a range; write reservoir.volume='3 L..12 L/10'");
    }
    Optional<KeySpec> spec = KeyLookup.spec(key);
    if (spec.isEmpty()) {
      Optional<String> near = scenario.nearestKey(key);
      if (near.isPresent()) {
        throw new StudyException(key + ": is not a key; did you mean `" + near.get() + "`?");
      }
      scenario.with(key, range.split("\\.\\.|,", 2)[0].strip());
      throw new StudyException(key + ": is not a key of a scenario");
    }
    return switch (spec.get().takes()) {
      case QUANTITY, QUANTITY_OR_CHOICE, COUNT, CURVE ->
          new RangeReader(scenario, text.strip(), key, spec.get()).read(range);
      case TEXT -> throw cannot(key, "a text");
      case LIST -> throw cannot(key, "a list");
      case SECTION -> throw cannot(key, "keys of its own");
      case CHOICE, SWITCH -> throw cannot(key, "a word");
    };
  }

  private static StudyException cannot(String key, String takes) {
    return new StudyException(
        key + ": takes " + takes + " and cannot be varied; only a key with a number can");
  }

  private KeyRange read(String range) throws StudyException {
    Matcher matcher = RANGE.matcher(range);
    List<String> written =
        matcher.matches()
            ? List.of(matcher.group(1).strip(), matcher.group(2).strip())
            : List.of(range.split(",", -1));
    List<OptionalDouble> factors = written.stream().map(this::factor).toList();
    boolean relative = factors.stream().anyMatch(OptionalDouble::isPresent);
    if (relative && factors.stream().anyMatch(OptionalDouble::isEmpty)) {
      throw problem("mixes values and multiples of the scenario's value");
    }
    OptionalDouble own = KeyLookup.own(scenario, key, spec);
    List<Double> si = new ArrayList<>();
    for (int i = 0; i < written.size(); i++) {
      si.add(
          relative
              ? ownForMultiples(own) * factors.get(i).orElseThrow()
              : value(written.get(i).strip()));
    }
    Unit unit =
        relative
            ? scenario.units().unit(dimension)
            : QuantityParser.unitOf(written.get(0).strip(), dimension).orElse(dimension.si());
    List<Double> values = new ArrayList<>(si.stream().map(v -> clean(unit.fromSi(v))).toList());
    if (matcher.matches()) {
      values = between(values.get(0), values.get(1), Optional.ofNullable(matcher.group(3)));
    }
    check(values);
    return new KeyRange(
        text,
        key,
        spec.means(),
        dimension,
        unit,
        whole(),
        values,
        own.isPresent() ? OptionalDouble.of(clean(unit.fromSi(own.getAsDouble()))) : own);
  }

  private boolean whole() {
    return spec.takes() == KeySpec.Takes.COUNT;
  }

  /** Returns what a multiple of the scenario's value multiplies by; empty for a value. */
  private OptionalDouble factor(String item) {
    Matcher times = TIMES.matcher(item.strip());
    if (times.matches()) {
      return OptionalDouble.of(Double.parseDouble(times.group(1)));
    }
    Matcher perCent = PER_CENT.matcher(item.strip());
    return dimension != Dimension.FRACTION && perCent.matches()
        ? OptionalDouble.of(Double.parseDouble(perCent.group(1)) / 100)
        : OptionalDouble.empty();
  }

  private double ownForMultiples(OptionalDouble own) throws StudyException {
    if (dimension == Dimension.TEMPERATURE) {
      throw problem("is a temperature, of which multiples mean nothing; write values with units");
    }
    if (spec.takes() == KeySpec.Takes.CURVE && own.isEmpty()) {
      throw problem("is a curve, which only level values can stand for; write values with units");
    }
    if (own.isEmpty()) {
      throw problem("has no value in this scenario to take multiples of; write values with units");
    }
    if (!(own.getAsDouble() > 0)) {
      throw problem("is zero or less in this scenario; write values with units, not multiples");
    }
    return own.getAsDouble();
  }

  private double value(String item) throws StudyException {
    try {
      Estimate estimate = QuantityParser.parse(item, dimension);
      if (estimate.spread() > 0) {
        throw problem("found `" + item + "`; a value to vary over takes no +/-");
      }
      return estimate.value();
    } catch (QuantityException e) {
      throw problem("found `" + item + "`, which " + e.getMessage());
    }
  }

  private List<Double> between(double first, double last, Optional<String> written)
      throws StudyException {
    if (!(last > first)) {
      throw problem("goes from large to small, or nowhere; write the smaller value first");
    }
    int count = count(first, last, written);
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double value = i == count - 1 ? last : clean(first + (last - first) * i / (count - 1));
      values.add(value);
    }
    return values;
  }

  private int count(double first, double last, Optional<String> written) throws StudyException {
    double count =
        written.isPresent()
            ? Double.parseDouble(written.get())
            : whole() ? Math.rint(last - first) + 1 : USUAL_COUNT;
    if (!(count >= 2)) {
      throw problem("needs two values at least after the /");
    }
    if (!(count <= LARGEST_COUNT)) {
      throw problem("asks for more than " + LARGEST_COUNT + " values");
    }
    return (int) count;
  }

  private void check(List<Double> values) throws StudyException {
    if (values.size() < 2) {
      throw problem("has one value only; write two or more, or a range like 3 L..12 L/10");
    }
    for (int i = 1; i < values.size(); i++) {
      if (!(values.get(i) > values.get(i - 1))) {
        throw problem("has values that do not rise; write the smaller ones first, each once");
      }
    }
    for (double value : values) {
      if (whole() && value != Math.rint(value)) {
        throw problem(
            "would be "
                + BigDecimal.valueOf(value).toPlainString()
                + ", but it counts in whole numbers; leave the count after the / out");
      }
    }
  }

  private StudyException problem(String message) {
    return new StudyException(key + ": " + message);
  }

  /** Takes away what arithmetic and units leave in the last digits. */
  private static double clean(double value) {
    return new BigDecimal(value).round(CLEAN).doubleValue();
  }
}
