package soakloop.report;

import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * How the charge sensor stands to a limit over the session, settling left out.
 *
 * @param seconds time above it, s
 * @param first when it is first passed, s; NaN if never
 * @param peak highest reading, K
 */
record OverLimit(double seconds, double first, double peak) {
  /** Measures a trace, straight between its samples. */
  static OverLimit of(Trace trace, double limit) {
    double seconds = 0;
    double first = Double.NaN;
    int start = trace.firstFrom(TimeScale.of(trace).from());
    double peak = trace.value(Channel.SENSOR, start);
    for (int i = start + 1; i < trace.size(); i++) {
      double a = trace.value(Channel.SENSOR, i - 1);
      double b = trace.value(Channel.SENSOR, i);
      peak = Math.max(peak, b);
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

  boolean happens() {
    return seconds > 0;
  }
}
