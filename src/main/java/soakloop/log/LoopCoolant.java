package soakloop.log;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Tells by its course in pulls where in the loop a coolant temperature is taken. Coolant that has
 * just left the core carries the charge's heat while the pull lasts and is cold again soon after;
 * coolant on its way to the core, or in the reservoir, warms when that heat has come round and then
 * keeps it. Bounds are common practice, no source.
 *
 * @param signal where it is
 * @param reason in words
 */
record LoopCoolant(Signal signal, String reason) {
  /** Smallest rise that tells anything, K: whole degrees come in steps of 1 K. */
  private static final double RISES = 2;

  /** Share of the rise that is there at the pull's end: of one that comes with it, and after it. */
  private static final double WITH_THE_PULL = 0.6;

  private static final double AFTER_THE_PULL = 0.3;

  /** Share of the rise that is lost a quarter of a minute later: of one that falls, and keeps. */
  private static final double FALLS = 0.35;

  private static final double KEEPS = 0.2;

  /** How long after a pull coolant is watched, s, and how long at least. */
  private static final double WATCHED = 40;

  private static final double AT_LEAST = 18;

  private static final double STEADY = 3;
  private static final double SENSOR = 2;

  /** What one pull, or the middle of several, shows: K, shares of it. */
  private record Course(double rise, double there, double lost) {}

  /** Looks at a column's values, K; empty if they do not tell. */
  static Optional<LoopCoolant> of(Series time, Series values, Sweeps sweeps) {
    List<Course> seen = new java.util.ArrayList<>();
    for (int i = 0; i < sweeps.spans().size(); i++) {
      Sweeps.Span span = sweeps.spans().get(i);
      double end = time.at(span.last());
      boolean last = i + 1 == sweeps.spans().size();
      double next = last ? Double.MAX_VALUE : time.at(sweeps.spans().get(i + 1).first());
      double until = Math.min(end + WATCHED, next);
      if (until - end >= AT_LEAST) {
        course(new Stretch(time, values), time.at(span.first()), end, until).ifPresent(seen::add);
      }
    }
    double rise = middle(seen.stream().mapToDouble(Course::rise).toArray());
    double there = middle(seen.stream().mapToDouble(Course::there).toArray());
    double lost = middle(seen.stream().mapToDouble(Course::lost).toArray());
    if (!(rise >= RISES)) {
      return Optional.empty();
    }
    String by = String.format(Locale.ROOT, "it warms by %.0f K ", rise);
    if (there >= WITH_THE_PULL && lost >= FALLS) {
      return Optional.of(
          new LoopCoolant(
              Signal.CORE_COOLANT_OUT,
              by + "in a pull and falls soon after, as coolant that has just left the core does"));
    }
    if (there <= AFTER_THE_PULL || lost <= KEEPS) {
      return Optional.of(
          new LoopCoolant(
              Signal.CORE_COOLANT_IN,
              by
                  + (there <= AFTER_THE_PULL ? "only after a pull" : "in a pull and stays warm")
                  + ", as coolant on its way to the core does, or the reservoir's"));
    }
    return Optional.empty();
  }

  private static Optional<Course> course(Stretch stretch, double start, double end, double until) {
    double base = stretch.mean(start - STEADY, start + STEADY / 6);
    double atEnd = stretch.mean(end, end + SENSOR);
    double later = stretch.mean(end + 12, end + AT_LEAST);
    double rise = stretch.highest(start, until) - base;
    boolean known = !Double.isNaN(base + atEnd + later) && rise > 0;
    return known
        ? Optional.of(new Course(rise, (atEnd - base) / rise, (base + rise - later) / rise))
        : Optional.empty();
  }

  private static double middle(double[] values) {
    Arrays.sort(values);
    return values.length == 0 ? Double.NaN : values[values.length / 2];
  }

  /** A signal over time. */
  private record Stretch(Series time, Series values) {
    /** Mean between two times; NaN if there is none. */
    double mean(double from, double to) {
      double sum = 0;
      int count = 0;
      for (int i = first(from); i < time.size() && time.at(i) <= to; i++) {
        double value = values.at(i);
        if (!Double.isNaN(value)) {
          sum += value;
          count++;
        }
      }
      return sum / count;
    }

    double highest(double from, double to) {
      double highest = Double.NEGATIVE_INFINITY;
      for (int i = first(from); i < time.size() && time.at(i) <= to; i++) {
        double value = values.at(i);
        highest = value > highest ? value : highest;
      }
      return highest;
    }

    /** First row at or after a time. */
    private int first(double from) {
      int low = 0;
      int high = time.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (time.at(middle) < from) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return low;
    }
  }
}
