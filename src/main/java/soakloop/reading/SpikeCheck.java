package soakloop.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import soakloop.log.Log;
import soakloop.log.Signal;

/**
 * Takes out values that leap away and back quicker than the thing measured can.
 *
 * <p>A value or a few in a row count as a spike if both leaps are larger and quicker than the
 * limits of the signal's dimension and what lies before and after agrees within a third of the
 * leap. Slow channels therefore never have one: over a second an engine may do what it likes.
 */
final class SpikeCheck {
  /** The longest spike, s; a longer one is something that happened. */
  private static final double LONGEST = 2;

  private final Log log;
  private final Signal signal;
  private final double leap;
  private final double rate;

  SpikeCheck(Log log, Signal signal, double quantum) {
    this.log = log;
    this.signal = signal;
    Limits limits = Limits.of(signal);
    this.leap = Math.max(limits.leap, 4 * quantum);
    this.rate = limits.rate;
  }

  /**
   * What a signal cannot do.
   *
   * @param leap smallest leap that counts, SI
   * @param rate quickest change that is possible, SI per s
   */
  private record Limits(double leap, double rate) {
    /** A bare bead follows 15 K/s at most; an engine revs up freely by 12,000 rpm a second. */
    static Limits of(Signal signal) {
      if (signal == Signal.CORE_AIR_IN) {
        return new Limits(10, 60);
      }
      return switch (signal.dimension()) {
        case TEMPERATURE -> new Limits(6, 15);
        case ROTATION -> new Limits(500.0 / 60, 12_000.0 / 60);
        case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> new Limits(30e3, 600e3);
        case SPEED -> new Limits(4, 25);
        default -> new Limits(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
      };
    }
  }

  /** Returns the good updates and adds a finding if there are others. */
  Updates clean(Updates all, List<Finding> findings) {
    boolean[] bad = new boolean[all.size()];
    List<Double> times = new ArrayList<>();
    int i = 1;
    while (i < all.size()) {
      int end = spikeEnd(all, i);
      if (end > i) {
        Arrays.fill(bad, i, end, true);
        times.add(all.time(i));
        i = end;
      }
      i++;
    }
    if (!times.isEmpty()) {
      findings.add(finding(times));
    }
    return times.isEmpty() ? all : all.where(k -> !bad[k]);
  }

  /** Index after a spike that begins at {@code i}; {@code i} if none does. */
  private int spikeEnd(Updates all, int i) {
    double away = all.value(i) - all.value(i - 1);
    if (!tooQuick(all, i)) {
      return i;
    }
    for (int k = i + 1; k < all.size() && all.time(k) - all.time(i) <= LONGEST; k++) {
      double left = all.value(k) - all.value(i - 1);
      if (Math.abs(left) < Math.abs(away) / 3 && tooQuick(all, k)) {
        return k;
      }
    }
    return i;
  }

  private boolean tooQuick(Updates all, int i) {
    double step = Math.abs(all.value(i) - all.value(i - 1));
    return step > leap && step > rate * (all.time(i) - all.time(i - 1));
  }

  private Finding finding(List<Double> times) {
    double first = times.get(0);
    double last = times.get(times.size() - 1);
    String count = times.size() == 1 ? "one impossible leap" : times.size() + " impossible leaps";
    return Finding.of(
        Finding.Kind.SPIKE,
        signal,
        Span.of(log, first, last),
        Sureness.SURE,
        ChannelWords.name(signal)
            + " has "
            + count
            + " and back, the first at "
            + ChannelWords.number(first)
            + " s.",
        "These values are left out.");
  }
}
