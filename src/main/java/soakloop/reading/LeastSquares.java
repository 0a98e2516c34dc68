package soakloop.reading;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/** Ordinary least squares over a few terms. */
final class LeastSquares {
  private LeastSquares() {}

  /** A fit. */
  static final class Fit {
    private final double[] factors;
    private final double[][] shape;
    private final double residual;
    private final int freedom;

    private Fit(double[] factors, double[][] shape, double residual, int freedom) {
      this.factors = factors;
      this.shape = shape;
      this.residual = residual;
      this.freedom = freedom;
    }

    /** The factor of a term. */
    double factor(int term) {
      return factors[term];
    }

    /** The sum of the first powers at a distance from their moment. */
    double at(double distance) {
      double sum = 0;
      for (int i = factors.length - 1; i >= 0; i--) {
        sum = sum * distance + factors[i];
      }
      return sum;
    }

    /** Variance of that sum over the variance of one value. */
    double shapeAt(double distance) {
      double sum = 0;
      for (int i = factors.length - 1; i >= 0; i--) {
        double row = 0;
        for (int j = factors.length - 1; j >= 0; j--) {
          row = row * distance + shape[i][j];
        }
        sum = sum * distance + row;
      }
      return sum;
    }

    /** Covariance of two factors over the variance of one value. */
    double shape(int one, int other) {
      return shape[one][other];
    }

    /** Sum of squares of what the fit leaves. */
    double residual() {
      return residual;
    }

    /** Variance of one value, as what the fit leaves shows it. */
    double variance() {
      return residual / freedom;
    }
  }

  /**
   * Fits values by terms.
   *
   * @param updates times and values
   * @param terms the terms at a time, as many for each
   * @return empty if there are not more values than terms or the terms are not independent
   */
  static Optional<Fit> fit(Updates updates, DoubleFunction<double[]> terms) {
    int n = updates.size();
    if (n == 0) {
      return Optional.empty();
    }
    double[][] x =
        IntStream.range(0, n).mapToObj(i -> terms.apply(updates.time(i))).toArray(double[][]::new);
    int freedom = n - x[0].length;
    if (freedom < 1) {
      return Optional.empty();
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.setNoIntercept(true);
    regression.newSampleData(updates.values(), x);
    try {
      return Optional.of(
          new Fit(
              regression.estimateRegressionParameters(),
              regression.estimateRegressionParametersVariance(),
              regression.calculateResidualSumOfSquares(),
              freedom));
    } catch (SingularMatrixException dependent) {
      return Optional.empty();
    }
  }

  /** Powers of the time from a moment: 1, t, t^2 and so on. */
  static DoubleFunction<double[]> powers(double moment, int degree) {
    return time -> {
      double[] terms = new double[degree + 1];
      terms[0] = 1;
      for (int i = 1; i <= degree; i++) {
        terms[i] = terms[i - 1] * (time - moment);
      }
      return terms;
    };
  }
}
