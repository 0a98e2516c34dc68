package soakloop.study;

import java.util.List;

/**
 * How far the model is from a logged signal: modelled less logged, K.
 *
 * @param count readings compared
 * @param bias mean difference
 * @param rms root mean square difference
 * @param largest difference of the largest magnitude, with its sign
 */
public record Misfit(int count, double bias, double rms, double largest) {
  /**
   * Sums up residuals.
   *
   * @param residuals at least one
   * @throws IllegalArgumentException if there is none
   */
  public static Misfit of(List<Comparison.Residual> residuals) {
    if (residuals.isEmpty()) {
      throw new IllegalArgumentException("a misfit needs at least one residual");
    }
    double sum = 0;
    double squares = 0;
    double largest = 0;
    for (Comparison.Residual residual : residuals) {
      double value = residual.value();
      sum += value;
      squares += value * value;
      if (Math.abs(value) > Math.abs(largest)) {
        largest = value;
      }
    }
    int n = residuals.size();
    return new Misfit(n, sum / n, Math.sqrt(squares / n), largest);
  }
}
