package soakloop.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Variance-based sensitivity indices of a function of independent inputs by Jansen's estimators.
 *
 * <p>Equations, with the samples of {@link SobolDesign}, N points and the variance V of the values
 * in A and B:
 *
 * <ul>
 *   <li>total effect: {@code ST(i) = sum over j of (f(A) - f(AB(i)))^2 / (2 N V)}
 *   <li>first order: {@code S(i) = 1 - sum over j of (f(B) - f(AB(i)))^2 / (2 N V)}
 * </ul>
 *
 * <p>Valid: any function with a finite variance. Accuracy: for the function of Ishigami and Homma
 * the checks beside this class state what a number of points gives.
 *
 * <p>Source: M. J. W. Jansen, "Analysis of variance designs for model output", Computer Physics
 * Communications 117 (1999) 35-43; in the form of Saltelli et al., Computer Physics Communications
 * 181 (2010) 259-270, table 2, rows (c) and (f); from memory.
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
    double variance = variance(whole);
    if (whole.size() < 2 || !(variance > 0)) {
      return List.of();
    }
    List<Indices> indices = new ArrayList<>();
    for (int i = 2; i < whole.get(0).length; i++) {
      double fromA = 0;
      double fromB = 0;
      for (double[] row : whole) {
        fromA += square(row[0] - row[i]);
        fromB += square(row[1] - row[i]);
      }
      double scale = 2 * whole.size() * variance;
      indices.add(new Indices(Math.min(1, Math.max(0, 1 - fromB / scale)), fromA / scale));
    }
    return List.copyOf(indices);
  }

  /** Returns the variance of the values in A and B, by deviations from their mean. */
  private static double variance(List<double[]> rows) {
    double mean = rows.stream().mapToDouble(r -> (r[0] + r[1]) / 2).average().orElse(0);
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
