package soakloop.study;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * A scenario's key with the values it is to take.
 *
 * @param text as it was asked for, such as {@code reservoir.volume=3 L..12 L/10}
 * @param key dotted path
 * @param means what the key is, in words
 * @param dimension what it measures
 * @param unit what the values are in
 * @param whole whether only whole numbers make sense
 * @param values at least two, rising, in the unit
 * @param own the scenario's own value in the unit, where it has one
 */
public record KeyRange(
    String text,
    String key,
    String means,
    Dimension dimension,
    Unit unit,
    boolean whole,
    List<Double> values,
    OptionalDouble own) {
  /**
   * Copies the values.
   *
   * @throws IllegalArgumentException if there are fewer than two or they do not rise
   */
  public KeyRange {
    values = List.copyOf(values);
    boolean rising = values.size() > 1;
    for (int i = 1; i < values.size(); i++) {
      rising &= values.get(i) > values.get(i - 1);
    }
    if (!rising) {
      throw new IllegalArgumentException("not two or more rising values: " + values);
    }
  }

  /** Returns the number of values. */
  public int size() {
    return values.size();
  }

  /** Returns the smallest value, in the unit. */
  public double first() {
    return values.get(0);
  }

  /** Returns the largest value, in the unit. */
  public double last() {
    return values.get(values.size() - 1);
  }

  /** Returns whether the scenario's own value lies within the range. */
  public boolean coversOwn() {
    return own.isPresent() && own.getAsDouble() >= first() && own.getAsDouble() <= last();
  }

  /**
   * Returns a value as a scenario writes it.
   *
   * @param value in the unit
   */
  String written(double value) {
    String number =
        value == Math.rint(value) && Math.abs(value) < 1e15
            ? String.valueOf((long) value)
            : BigDecimal.valueOf(value).toPlainString();
    return (number + " " + unit.symbol()).strip();
  }
}
