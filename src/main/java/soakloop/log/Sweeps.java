package soakloop.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Stretches in which the engine speeds up as in a pull. They serve to tell columns apart and are
 * not the pulls that a study finds.
 *
 * @param spans first and last row of each
 */
record Sweeps(List<Span> spans) {
  /** Smallest rise, rev/s, and its length, s. */
  private static final double RISE = 20;

  private static final double SHORTEST = 2;
  private static final double LONGEST = 60;

  /** A fall of this much ends a sweep, rev/s. */
  private static final double FALL = 5;

  /** Sensors go on rising a little after a sweep, s. */
  private static final double AFTER = 3;

  private static final int MOST = 200;

  /** A stretch of rows. */
  record Span(int first, int last) {}

  /** Finds the stretches. */
  static Sweeps of(Series time, Optional<Series> speed) {
    List<Span> spans = new ArrayList<>();
    if (speed.isEmpty()) {
      return new Sweeps(spans);
    }
    Series v = speed.get();
    int low = -1;
    int top = -1;
    for (int i = 0; i < v.size() && spans.size() < MOST; i++) {
      double now = v.at(i);
      if (Double.isNaN(now)) {
        continue;
      }
      if (low < 0 || (top == low && now <= v.at(low) + 0.2)) {
        low = i;
        top = i;
      } else if (now >= v.at(top)) {
        top = i;
      } else if (now < v.at(top) - FALL) {
        add(spans, time, v, low, top);
        low = i;
        top = i;
      }
    }
    if (low >= 0) {
      add(spans, time, v, low, top);
    }
    return new Sweeps(spans);
  }

  private static void add(List<Span> spans, Series time, Series v, int low, int top) {
    double lasts = time.at(top) - time.at(low);
    if (v.at(top) - v.at(low) >= RISE && lasts >= SHORTEST && lasts <= LONGEST) {
      spans.add(new Span(low, top));
    }
  }

  /**
   * Returns how much a signal usually rises from a sweep's start to its highest; NaN if unknown.
   */
  double rise(Series time, Series values) {
    double[] rises =
        spans.stream()
            .mapToDouble(s -> rise(time, values, s))
            .filter(r -> !Double.isNaN(r))
            .sorted()
            .toArray();
    return rises.length == 0 ? Double.NaN : rises[rises.length / 2];
  }

  private static double rise(Series time, Series values, Span span) {
    double start = Double.NaN;
    double highest = Double.NEGATIVE_INFINITY;
    double end = time.at(span.last()) + AFTER;
    for (int i = span.first(); i < values.size() && time.at(i) <= end; i++) {
      double value = values.at(i);
      if (Double.isNaN(value)) {
        continue;
      }
      if (Double.isNaN(start)) {
        start = value;
      }
      highest = Math.max(highest, value);
    }
    return highest - start;
  }

  /**
   * Returns the usual difference, {@code one} less the other, at the sweeps' ends; NaN if unknown.
   */
  double difference(Series one, Series less) {
    double[] all =
        spans.stream()
            .mapToDouble(s -> one.at(s.last()) - less.at(s.last()))
            .filter(d -> !Double.isNaN(d))
            .toArray();
    Arrays.sort(all);
    return all.length == 0 ? Double.NaN : all[all.length / 2];
  }
}
