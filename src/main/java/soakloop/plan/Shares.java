package soakloop.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Values under which shares of equally likely ones lie. */
final class Shares {
  private Shares() {}

  /**
   * Returns the value under which a share lies, straight between the middles of the values' steps.
   *
   * @param values at least one; infinite ones count as what they are
   * @param share 0 to 1
   */
  static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double place = share * sorted.length - 0.5;
    int below = (int) Math.max(0, Math.min(sorted.length - 1.0, Math.floor(place)));
    int above = Math.min(sorted.length - 1, below + 1);
    double part = Math.max(0, Math.min(1, place - below));
    return part == 0 || sorted[below] == sorted[above]
        ? sorted[below]
        : sorted[below] + part * (sorted[above] - sorted[below]);
  }

  /** Returns the same of what every car gave. */
  static double quantile(List<Go> goes, ToDoubleFunction<Go> of, double share) {
    return quantile(goes.stream().mapToDouble(of).toArray(), share);
  }
}
