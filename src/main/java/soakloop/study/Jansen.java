package soakloop.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Variance-based sensitivity indices of a function of independent inputs total effects by Jansen's
 * estimator.
 *
 * <p>Equations, with the samples of {@link SobolDesign}, N points, and mean m and variance V of the
 * values in A and B:
 *
 * <ul>
 *   <li>total effect: {@code ST(i) = sum over j of (f(A) - f(AB(i)))^2 / (2 N V)}
 *   <li>first order: {@code S(i) = sum over j of (f(B) - m) (f(AB(i)) - f(A)) / (N V)}, whose error
 *       shrinks with the input's effect, as that of the total does
 * </ul>
 *
 * <p>Valid: any function with a finite variance. Accuracy: for the function of Ishigami and Homma
 * the checks beside this class state what a number of points gives.
 *
 * <p>Source: total effect by M. J. W. Jansen, "Analysis of variance designs for model output",
 * Computer Physics Communications 117 (1999) 35-43; both in the form of Saltelli et al., Computer
 * Physics Communications 181 (2010) 259-270, table 2, rows (b) and (f), the mean taken off first;
 * from memory.
 */
final class Jansen {
  private Jansen() {}

  /**
   * The indices of one input.
   *
   * @param alone first order: share of the variance that goes if this input becomes known, 0 to 1
   * @param total total effect: share of the variance that stays if all inputs but this become
   *     known, 0 or more; it counts what the input does together with others
   */
  record Indices(double alone, double total) {}

  /**
   * Estimates the indices.
   *
   * <p>A point with a value that is not finite in any sample is left out of all. A first-order
   * estimate outside 0 to 1, which chance alone makes, is set to the nearer end.
   *
   * @param values for each point the function's values at {@link SobolDesign#places}, in order
   * @return indices of each input; empty if fewer than two points are whole or the function does
   *     not change
   */
  static List<Indices> of(List<double[]> values) {
    List<double[]> whole = values.stream().filter(Jansen::isWhole).toList();
    double mean = whole.stream().mapToDouble(r -> (r[0] + r[1]) / 2).average().orElse(0);
    double variance = variance(whole, mean);
    if (whole.size() < 2 || !(variance > 0)) {
      return List.of();
    }
    List<Indices> indices = new ArrayList<>();
    for (int i = 2; i < whole.get(0).length; i++) {
      double fromA = 0;
      double shared = 0;
      for (double[] row : whole) {
        fromA += square(row[0] - row[i]);
        shared += (row[1] - mean) * (row[i] - row[0]);
      }
      double scale = whole.size() * variance;
      double alone = Math.min(1, Math.max(0, shared / scale));
      indices.add(new Indices(alone, fromA / (2 * scale)));
    }
    return List.copyOf(indices);
  }

  /** Returns the variance of the values in A and B about their mean. */
  private static double variance(List<double[]> rows, double mean) {
    return rows.stream()
        .mapToDouble(r -> (square(r[0] - mean) + square(r[1] - mean)) / 2)
        .average()
        .orElse(0);
  }

  private static boolean isWhole(double[] row) {
    for (double value : row) {
      if (!Double.isFinite(value)) {
        return false;
      }
    }
    return true;
  }

  private static double square(double x) {
    return x * x;
  }
}
