package soakloop.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines of one level through a grid of values: marching squares, straight between the grid's
 * points; where a cell could be cut two ways its mean decides.
 */
final class Contours {
  private final double[] x;
  private final double[] y;
  private final double[][] z;
  private final double level;
  private final Map<Long, List<Long>> joined = new HashMap<>();

  private Contours(double[] x, double[] y, double[][] z, double level) {
    this.x = x;
    this.y = y;
    this.z = z;
    this.level = level;
  }

  /**
   * Finds the lines of a level.
   *
   * @param x places of the columns, rising
   * @param y places of the rows, rising
   * @param z value at {@code [column][row]}; NaN where there is none, and no line around it
   * @param level which
   * @return x and y of each line, the longest first
   */
  static List<double[][]> of(double[] x, double[] y, double[][] z, double level) {
    Contours contours = new Contours(x, y, z, level);
    for (int i = 0; i + 1 < x.length; i++) {
      for (int j = 0; j + 1 < y.length; j++) {
        contours.cut(i, j);
      }
    }
    return contours.lines();
  }

  private void cut(int i, int j) {
    double[] corners = {z[i][j], z[i + 1][j], z[i + 1][j + 1], z[i][j + 1]};
    long[] edges = {edge(i, j, 0), edge(i + 1, j, 1), edge(i, j + 1, 0), edge(i, j, 1)};
    List<Long> crossed = new ArrayList<>();
    double sum = 0;
    for (int k = 0; k < 4; k++) {
      if (Double.isNaN(corners[k])) {
        return;
      }
      sum += corners[k];
      if (above(corners[k]) != above(corners[(k + 1) % 4])) {
        crossed.add(edges[k]);
      }
    }
    if (crossed.size() == 2) {
      join(crossed.get(0), crossed.get(1));
    } else if (crossed.size() == 4) {
      boolean turned = above(sum / 4) == above(corners[0]);
      join(crossed.get(0), crossed.get(turned ? 1 : 3));
      join(crossed.get(2), crossed.get(turned ? 3 : 1));
    }
  }

  private boolean above(double value) {
    return value > level;
  }

  /** Returns a name for the edge from a grid point along x (0) or y (1). */
  private long edge(int i, int j, int along) {
    return ((long) i * y.length + j) * 2 + along;
  }

  private void join(long a, long b) {
    joined.computeIfAbsent(a, k -> new ArrayList<>()).add(b);
    joined.computeIfAbsent(b, k -> new ArrayList<>()).add(a);
  }

  private List<double[][]> lines() {
    List<double[][]> lines = new ArrayList<>();
    for (long start : joined.keySet().stream().sorted().toList()) {
      while (!neighbours(start).isEmpty()) {
        Deque<Long> line = new ArrayDeque<>(List.of(start));
        follow(line, true);
        follow(line, false);
        lines.add(places(line));
      }
    }
    lines.sort(Comparator.comparingInt(l -> -l[0].length));
    return lines;
  }

  private List<Long> neighbours(long edge) {
    return joined.getOrDefault(edge, List.of());
  }

  private void follow(Deque<Long> line, boolean forward) {
    long at = forward ? line.getLast() : line.getFirst();
    while (!neighbours(at).isEmpty()) {
      long next = neighbours(at).remove(0);
      neighbours(next).remove(at);
      if (forward) {
        line.addLast(next);
      } else {
        line.addFirst(next);
      }
      at = next;
    }
  }

  private double[][] places(Deque<Long> line) {
    double[][] xy = new double[2][line.size()];
    int n = 0;
    for (long edge : line) {
      int i = (int) (edge / 2 / y.length);
      int j = (int) (edge / 2 % y.length);
      int right = i + (edge % 2 == 0 ? 1 : 0);
      int up = j + (edge % 2 == 0 ? 0 : 1);
      double share = (level - z[i][j]) / (z[right][up] - z[i][j]);
      xy[0][n] = x[i] + share * (x[right] - x[i]);
      xy[1][n++] = y[j] + share * (y[up] - y[j]);
    }
    return xy;
  }
}
