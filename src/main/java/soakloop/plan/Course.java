package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;

/** A smooth line through what was run, for the eye; windows are not read off it. */
final class Course {
  /** Waits nearer to one another than this share count as one. */
  private static final double SAME = 0.01;

  private static final int FEWEST = 5;

  private Course() {}

  /**
   * Returns places and values of an Akima spline over the root of the wait.
   *
   * @param waits s, rising
   * @param values as many; those that are not finite are left out
   * @param count places, at least two
   * @return waits, then values
   */
  static double[][] through(double[] waits, double[] values, int count) {
    List<Integer> used = new ArrayList<>();
    for (int i = 0; i < waits.length; i++) {
      boolean apart =
          used.isEmpty() || waits[i] > (1 + SAME) * waits[used.get(used.size() - 1)] + 1;
      if (Double.isFinite(values[i]) && apart) {
        used.add(i);
      }
    }
    double[] x = used.stream().mapToDouble(i -> Math.sqrt(waits[i])).toArray();
    double[] y = used.stream().mapToDouble(i -> values[i]).toArray();
    if (x.length < FEWEST) {
      return new double[][] {used.stream().mapToDouble(i -> waits[i]).toArray(), y};
    }
    UnivariateFunction line = new AkimaSplineInterpolator().interpolate(x, y);
    double[][] course = new double[2][count];
    for (int i = 0; i < count; i++) {
      double at = x[0] + (x[x.length - 1] - x[0]) * i / (count - 1);
      course[0][i] = at * at;
      course[1][i] = line.value(at);
    }
    return course;
  }
}
