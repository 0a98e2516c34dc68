package soakloop.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.reading.Updates;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * A quantity over session time, straight between its points and level beyond its ends. Two points
 * at one time are a jump, as charge air makes where a pull begins.
 */
final class Polyline {
  private final double[] time;
  private final double[] value;

  private Polyline(double[] time, double[] value) {
    this.time = time;
    this.value = value;
  }

  /** A channel of a trace. */
  static Polyline of(Trace trace, Channel channel) {
    return new Polyline(trace.times(), trace.values(channel));
  }

  /** A signal of a log in session time, through its true updates; empty if it has none. */
  static Optional<Polyline> of(Scenario.Logged logged, Signal signal) {
    Updates updates = logged.reading().usable(signal);
    double[] time = Arrays.stream(updates.times()).map(t -> t - logged.startsAt()).toArray();
    return updates.isEmpty() ? Optional.empty() : Optional.of(new Polyline(time, updates.values()));
  }

  double startTime() {
    return time[0];
  }

  double endTime() {
    return time[time.length - 1];
  }

  double first() {
    return value[0];
  }

  double last() {
    return value[value.length - 1];
  }

  /** The times of its points. */
  List<Double> times() {
    return Arrays.stream(time).boxed().toList();
  }

  /** The values of its points. */
  List<Double> values() {
    return Arrays.stream(value).boxed().toList();
  }

  /** The number of points from one time to another, both counted. */
  int points(double from, double to) {
    return (int) Arrays.stream(time).filter(t -> t >= from && t <= to).count();
  }

  /** The median time between points, s; 0 for a single one. */
  double spacing() {
    double[] steps = new double[time.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = time[i + 1] - time[i];
    }
    Arrays.sort(steps);
    return steps.length == 0 ? 0 : steps[steps.length / 2];
  }

  /**
   * The part from one time to another, not before it. Of a jump at either end only the side within
   * is kept.
   */
  Polyline between(double from, double to) {
    if (!(to > from)) {
      return new Polyline(new double[] {from}, new double[] {after(from)});
    }
    int low = firstAfter(from);
    int high = Math.max(low, firstFrom(to));
    int inside = high - low;
    double[] t = new double[inside + 2];
    double[] v = new double[inside + 2];
    System.arraycopy(time, low, t, 1, inside);
    System.arraycopy(value, low, v, 1, inside);
    t[0] = from;
    v[0] = after(from);
    t[inside + 1] = to;
    v[inside + 1] = before(to);
    return new Polyline(t, v);
  }

  /** The highest value; NaN if there is any. */
  double highest() {
    double highest = Double.NEGATIVE_INFINITY;
    for (double v : value) {
      highest = Math.max(highest, v);
    }
    return highest;
  }

  /** The area under it, value times s. */
  double integral() {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += (time[i] - time[i - 1]) * (value[i] + value[i - 1]) / 2;
    }
    return sum;
  }

  /** How long it is above a level, s. */
  double timeAbove(double level) {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      double step = time[i] - time[i - 1];
      double low = Math.min(value[i - 1], value[i]);
      double high = Math.max(value[i - 1], value[i]);
      if (low >= level) {
        sum += high > level ? step : 0;
      } else if (high > level) {
        sum += step * (high - level) / (high - low);
      }
    }
    return sum;
  }

  /** When it first rises from below a level to it; empty if it never does. */
  OptionalDouble risesTo(double level) {
    for (int i = 1; i < time.length; i++) {
      if (value[i - 1] < level && value[i] >= level) {
        double share = (level - value[i - 1]) / (value[i] - value[i - 1]);
        return OptionalDouble.of(time[i - 1] + share * (time[i] - time[i - 1]));
      }
    }
    return OptionalDouble.empty();
  }

  /** The value at a time, of a jump the later one. */
  private double after(double at) {
    int i = firstAfter(at) - 1;
    if (i < 0) {
      return value[0];
    }
    return time[i] == at || i == time.length - 1 ? value[i] : straight(i, at);
  }

  /** The value at a time, of a jump the earlier one. */
  private double before(double at) {
    int i = firstFrom(at);
    if (i == time.length) {
      return value[i - 1];
    }
    return time[i] == at || i == 0 ? value[i] : straight(i - 1, at);
  }

  /** The index of the first point later than a time. */
  private int firstAfter(double at) {
    int low = 0;
    int high = time.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (time[middle] <= at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The index of the first point at a time or later. */
  private int firstFrom(double at) {
    int low = 0;
    int high = time.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (time[middle] < at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double straight(int i, double at) {
    double share = (at - time[i]) / (time[i + 1] - time[i]);
    return value[i] + share * (value[i + 1] - value[i]);
  }
}
