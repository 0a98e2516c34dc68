package soakloop.log;

import java.util.Arrays;

/**
 * How a file's times go from row to row.
 *
 * @param missing rows without a time
 * @param firstMissing index of the first of them, -1 if there is none
 * @param lastMissing index of the last
 * @param rising steps up
 * @param equal steps of nothing
 * @param falling steps down
 * @param step usual step up or down, s; 0 if there is none
 */
record TimeSurvey(
    int missing,
    int firstMissing,
    int lastMissing,
    long rising,
    long equal,
    long falling,
    double step) {
  private static final int SAMPLED = 4096;

  /** Looks at all rows. */
  static TimeSurvey of(Series raw) {
    int missing = 0;
    int firstMissing = -1;
    int lastMissing = -1;
    long rising = 0;
    long equal = 0;
    long falling = 0;
    double[] steps = new double[SAMPLED];
    int count = 0;
    int every = Math.max(1, raw.size() / SAMPLED);
    double before = Double.NaN;
    for (int i = 0; i < raw.size(); i++) {
      double t = raw.at(i);
      if (Double.isNaN(t)) {
        firstMissing = missing++ == 0 ? i : firstMissing;
        lastMissing = i;
        continue;
      }
      double d = t - before;
      before = t;
      rising += d > 0 ? 1 : 0;
      falling += d < 0 ? 1 : 0;
      equal += d == 0 ? 1 : 0;
      if (d != 0 && !Double.isNaN(d) && i % every == 0 && count < SAMPLED) {
        steps[count++] = Math.abs(d);
      }
    }
    double[] sorted = Arrays.copyOf(steps, count);
    Arrays.sort(sorted);
    double step = count == 0 ? 0 : sorted[count / 2];
    return new TimeSurvey(missing, firstMissing, lastMissing, rising, equal, falling, step);
  }

  /** Returns whether every row has a time later than the one before. */
  boolean isRising() {
    return missing == 0 && equal == 0 && falling == 0;
  }

  /** Returns whether times fall more often than they rise. */
  boolean isReversed() {
    return falling > rising;
  }

  /** Returns the share of steps of nothing. */
  double equalShare() {
    return equal / Math.max(1.0, (double) (rising + falling + equal));
  }

  /** Returns the step from row to row if rows that share a time are spread evenly, s. */
  double spreadStep() {
    return step * (rising + falling + 1) / (1.0 + rising + falling + equal);
  }
}
