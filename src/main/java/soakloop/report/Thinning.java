package soakloop.report;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.stream.IntStream;

/** Leaves out what cannot be seen, so that a long session makes a small drawing. */
final class Thinning {
  /** Share of a line's whole height that a left-out point may lie off the line. */
  private static final double UNSEEN = 1.0 / 1500;

  private Thinning() {}

  /**
   * Thins a line; every extreme and every bend stays.
   *
   * <p>Method of Douglas and Peucker, "Algorithms for the reduction of the number of points
   * required to represent a digitized line or its caricature" (1973), with the distance measured
   * upright.
   *
   * @param x never falling
   * @param y as many; NaN breaks the line
   * @return x and y of what is left
   */
  static double[][] line(double[] x, double[] y) {
    double low = Arrays.stream(y).filter(Double::isFinite).min().orElse(0);
    double high = Arrays.stream(y).filter(Double::isFinite).max().orElse(0);
    double unseen = (high - low) * UNSEEN;
    BitSet keep = new BitSet(y.length);
    int i = 0;
    while (i < y.length) {
      if (!Double.isFinite(y[i])) {
        keep.set(i++);
        continue;
      }
      int end = i;
      while (end + 1 < y.length && Double.isFinite(y[end + 1])) {
        end++;
      }
      keepBends(x, y, i, end, unseen, keep);
      i = end + 1;
    }
    return pick(x, y, keep);
  }

  /**
   * Thins points to the lowest and the highest in each of so many columns, so that every peak
   * stays; points without a value go.
   *
   * @param x in any order
   * @param y as many
   * @param from left end of the columns
   * @param to right end
   * @param columns how many
   */
  static double[][] points(double[] x, double[] y, double from, double to, int columns) {
    int[] lowest = new int[columns];
    int[] highest = new int[columns];
    Arrays.fill(lowest, -1);
    Arrays.fill(highest, -1);
    for (int i = 0; i < y.length; i++) {
      if (Double.isFinite(y[i]) && x[i] >= from && x[i] <= to) {
        int column = (int) Math.min(columns - 1.0, (x[i] - from) / (to - from) * columns);
        if (lowest[column] < 0 || y[i] < y[lowest[column]]) {
          lowest[column] = i;
        }
        if (highest[column] < 0 || y[i] > y[highest[column]]) {
          highest[column] = i;
        }
      }
    }
    BitSet keep = new BitSet(y.length);
    IntStream.concat(Arrays.stream(lowest), Arrays.stream(highest))
        .filter(i -> i >= 0)
        .forEach(keep::set);
    return pick(x, y, keep);
  }

  private static void keepBends(
      double[] x, double[] y, int first, int last, double unseen, BitSet keep) {
    keep.set(first);
    keep.set(last);
    Deque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {first, last});
    while (!open.isEmpty()) {
      int[] part = open.pop();
      int a = part[0];
      int b = part[1];
      double slope = x[b] > x[a] ? (y[b] - y[a]) / (x[b] - x[a]) : 0;
      double worst = unseen;
      int at = -1;
      for (int i = a + 1; i < b; i++) {
        double off = Math.abs(y[i] - y[a] - slope * (x[i] - x[a]));
        if (off > worst) {
          worst = off;
          at = i;
        }
      }
      if (at >= 0) {
        keep.set(at);
        open.push(new int[] {a, at});
        open.push(new int[] {at, b});
      }
    }
  }

  private static double[][] pick(double[] x, double[] y, BitSet keep) {
    double[][] kept = new double[2][keep.cardinality()];
    int n = 0;
    for (int i = keep.nextSetBit(0); i >= 0; i = keep.nextSetBit(i + 1)) {
      kept[0][n] = x[i];
      kept[1][n++] = y[i];
    }
    return kept;
  }
}
