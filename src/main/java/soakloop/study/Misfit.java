package soakloop.study;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

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
    SummaryStatistics differences = new SummaryStatistics();
    for (Comparison.Residual residual : residuals) {
      differences.addValue(residual.value());
    }
    double low = differences.getMin();
    double high = differences.getMax();
    return new Misfit(
        residuals.size(),
        differences.getMean(),
        differences.getQuadraticMean(),
        Math.abs(low) > Math.abs(high) ? low : high);
  }
}
