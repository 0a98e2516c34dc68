package soakloop.report;

import soakloop.simulate.Trace;

/**
 * How a session's time is shown: in seconds up to ten minutes, then in minutes.
 *
 * @param from first time shown, s
 * @param to last time shown, s
 */
record TimeScale(double from, double to) {
  private static final double LONGEST_IN_SECONDS = 600;

  /** Returns the scale of a trace from its time zero, without the settling before. */
  static TimeScale of(Trace trace) {
    double end = trace.time(trace.size() - 1);
    double start = trace.time(0);
    return new TimeScale(end > 0 ? Math.max(0, start) : start, end > start ? end : start + 1);
  }

  boolean minutes() {
    return to - from > LONGEST_IN_SECONDS;
  }

  String symbol() {
    return minutes() ? "min" : "s";
  }

  double of(double seconds) {
    return minutes() ? seconds / 60 : seconds;
  }

  /** Returns a thinned line of a trace's values, already in shown units, over shown time. */
  double[][] line(Trace trace, double[] shown) {
    int first = trace.firstFrom(from);
    double[] x = new double[shown.length - first];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = of(trace.time(first + i));
      y[i] = shown[first + i];
    }
    return Thinning.line(x, y);
  }
}
