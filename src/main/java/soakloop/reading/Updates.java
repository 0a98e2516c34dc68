package soakloop.reading;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import soakloop.log.Log;
import soakloop.log.Signal;

/** A signal's values at the times they were measured, without the rows that only repeat one. */
public final class Updates {
  private static final Updates NONE = new Updates(new double[0], new double[0]);

  private final double[] time;
  private final double[] value;

  /** Worked out at first use; minus infinity before. */
  private volatile double spacing = Double.NEGATIVE_INFINITY;

  private Updates(double[] time, double[] value) {
    this.time = time;
    this.value = value;
  }

  /**
   * Takes values at their times.
   *
   * @param time s, strictly rising
   * @param value SI, as many, none NaN
   * @throws IllegalArgumentException if the lengths differ, time does not rise or a value is NaN
   */
  public static Updates of(double[] time, double[] value) {
    if (time.length != value.length) {
      throw new IllegalArgumentException(time.length + " times but " + value.length + " values");
    }
    for (int i = 0; i < time.length; i++) {
      if (Double.isNaN(value[i]) || (i > 0 && !(time[i] > time[i - 1]))) {
        throw new IllegalArgumentException("time must rise and have values, at " + time[i] + " s");
      }
    }
    return new Updates(time.clone(), value.clone());
  }

  /**
   * Every row of a log that has the signal.
   *
   * @param times those of all rows, s; kept, not copied, where each row has the signal
   */
  static Updates ofRows(Log log, Signal signal, double[] times) {
    double[] time = times;
    double[] value = new double[times.length];
    int n = 0;
    for (int i = 0; i < times.length; i++) {
      double found = log.value(signal, i);
      if (Double.isNaN(found)) {
        time = time == times ? times.clone() : time;
      } else {
        if (time != times) {
          time[n] = times[i];
        }
        value[n++] = found;
      }
    }
    return n == times.length
        ? new Updates(times, value)
        : new Updates(Arrays.copyOf(time, n), Arrays.copyOf(value, n));
  }

  /** No values. */
  static Updates none() {
    return NONE;
  }

  /** Returns the number of updates. */
  public int size() {
    return time.length;
  }

  /** Returns whether there is none. */
  public boolean isEmpty() {
    return time.length == 0;
  }

  /**
   * Returns when an update was measured, s.
   *
   * @param i index from 0
   */
  public double time(int i) {
    return time[i];
  }

  /**
   * Returns what an update measured, SI.
   *
   * @param i index from 0
   */
  public double value(int i) {
    return value[i];
  }

  /** Returns a copy of the times, s. */
  public double[] times() {
    return time.clone();
  }

  /** Returns a copy of the values, SI. */
  public double[] values() {
    return value.clone();
  }

  /**
   * Returns the value at a time, straight between updates; NaN before the first and after the last.
   *
   * @param at s
   */
  public double at(double at) {
    int i = from(at);
    if (i == time.length) {
      return Double.NaN;
    }
    if (time[i] == at) {
      return value[i];
    }
    if (i == 0) {
      return Double.NaN;
    }
    double share = (at - time[i - 1]) / (time[i] - time[i - 1]);
    return value[i - 1] + share * (value[i] - value[i - 1]);
  }

  /** The value at a time, but level for up to {@code reach} s beyond the first and last update. */
  double near(double at, double reach) {
    if (isEmpty() || at < time[0] - reach || at > time[time.length - 1] + reach) {
      return Double.NaN;
    }
    return at(Math.max(time[0], Math.min(time[time.length - 1], at)));
  }

  /** Index of the first update at a time or after it; the size if there is none. */
  int from(double at) {
    int found = Arrays.binarySearch(time, at);
    return found >= 0 ? found : -found - 1;
  }

  /**
   * Returns the updates within a span, both ends counted.
   *
   * @param from s
   * @param to s
   */
  public Updates between(double from, double to) {
    int low = from(from);
    int high = low;
    while (high < time.length && time[high] <= to) {
      high++;
    }
    return part(low, high);
  }

  /** The updates from one index to before another. */
  Updates part(int from, int to) {
    return new Updates(Arrays.copyOfRange(time, from, to), Arrays.copyOfRange(value, from, to));
  }

  /** Those of the updates that are wanted. */
  Updates where(IntPredicate wanted) {
    int[] kept = IntStream.range(0, time.length).filter(wanted).toArray();
    return new Updates(
        Arrays.stream(kept).mapToDouble(i -> time[i]).toArray(),
        Arrays.stream(kept).mapToDouble(i -> value[i]).toArray());
  }

  /** The same at other values. */
  Updates scaled(double factor, double offset) {
    return new Updates(time, Arrays.stream(value).map(v -> v * factor + offset).toArray());
  }

  /** Returns the highest value; NaN if there is none. */
  public double highest() {
    return Arrays.stream(value).max().orElse(Double.NaN);
  }

  /** Returns the lowest value; NaN if there is none. */
  public double lowest() {
    return Arrays.stream(value).min().orElse(Double.NaN);
  }

  /** Returns the mean value; NaN if there is none. */
  public double mean() {
    return Arrays.stream(value).average().orElse(Double.NaN);
  }

  /** Returns the median time between updates, s; NaN for fewer than two. */
  public double spacing() {
    double known = spacing;
    if (known == Double.NEGATIVE_INFINITY) {
      double[] steps = new double[Math.max(0, time.length - 1)];
      Arrays.setAll(steps, i -> time[i + 1] - time[i]);
      known = Numbers.median(steps);
      spacing = known;
    }
    return known;
  }

  /**
   * Returns how long it is above a level, straight between updates, s.
   *
   * @param level SI
   */
  public double timeAbove(double level) {
    return timeAbove(level, Double.POSITIVE_INFINITY);
  }

  /** The same without what lies between updates further apart than {@code longest} s. */
  double timeAbove(double level, double longest) {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      double step = time[i] - time[i - 1];
      double low = Math.min(value[i - 1], value[i]);
      double high = Math.max(value[i - 1], value[i]);
      if (step > longest) {
        continue;
      }
      if (low >= level) {
        sum += high > level ? step : 0;
      } else if (high > level) {
        sum += step * (high - level) / (high - low);
      }
    }
    return sum;
  }
}
