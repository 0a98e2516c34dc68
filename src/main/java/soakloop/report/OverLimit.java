package soakloop.report;

import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * How the charge sensor stands to a limit while the engine runs, settling left out. With the engine
 * off no charge passes the sensor: it shows soaked metal, which no limit is meant for.
 *
 * @param seconds time above it, s
 * @param first when it is first passed, s; NaN if never
 * @param peak highest reading, K; NaN if the engine never runs
 */
record OverLimit(double seconds, double first, double peak) {
  /** Measures a trace, straight between its samples. */
  static OverLimit of(Trace trace, double limit) {
    double seconds = 0;
    double first = Double.NaN;
    double peak = Double.NaN;
    for (int i = trace.firstFrom(TimeScale.of(trace).from()) + 1; i < trace.size(); i++) {
      if (!runs(trace, i - 1) || !runs(trace, i)) {
        continue;
      }
      double a = trace.value(Channel.SENSOR, i - 1);
      double b = trace.value(Channel.SENSOR, i);
      peak = Double.isNaN(peak) ? Math.max(a, b) : Math.max(peak, Math.max(a, b));
      if (!(Math.max(a, b) > limit)) {
        continue;
      }
      double step = trace.time(i) - trace.time(i - 1);
      double crossing = a > limit == b > limit ? 0 : (limit - a) / (b - a);
      if (Double.isNaN(first)) {
        first = trace.time(i - 1) + (a > limit ? 0 : crossing * step);
      }
      seconds += step * (a > limit ? b > limit ? 1 : crossing : 1 - crossing);
    }
    return new OverLimit(seconds, first, peak);
  }

  private static boolean runs(Trace trace, int i) {
    return trace.value(Channel.ENGINE_SPEED, i) > 0;
  }

  boolean happens() {
    return seconds > 0;
  }
}
