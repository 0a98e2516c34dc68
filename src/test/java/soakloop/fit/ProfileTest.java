package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Intervals by profile against closed forms. */
@Tag("analytic")
class ProfileTest {
  private static RealMatrix covariance(LeastSquares.Residuals problem, double[] place) {
    RealMatrix slopes = MatrixUtils.createRealMatrix(problem.slopes(place));
    return Evidence.inverse(slopes.transposeMultiply(slopes));
  }

  /** Of a linear problem the profile is the straight line's interval, whatever hangs together. */
  @Test
  void linearProblemsHaveTheStraightInterval() {
    Random random = new Random(8);
    RealMatrix a = MatrixUtils.createRealMatrix(12, 4);
    for (int i = 0; i < 12; i++) {
      a.setRow(i, random.doubles(4, -1, 1).toArray());
    }
    LeastSquares.Residuals problem =
        new LeastSquares.Residuals() {
          @Override
          public double[] at(double[] point) {
            return a.operate(point);
          }

          @Override
          public double[][] slopes(double[] point) {
            return a.getData();
          }
        };
    RealMatrix covariance = covariance(problem, new double[4]);
    Profile profile = new Profile(problem, new ArrayRealVector(4), covariance);
    for (int k = 0; k < 4; k++) {
      double half = FitKey.NINETY * Math.sqrt(covariance.getEntry(k, k));
      assertEquals(-half, profile.of(k)[0], 0.02 * half);
      assertEquals(half, profile.of(k)[1], 0.02 * half);
    }
  }

  /**
   * One key read through an exponential: the residual is (e^x - 1) / s, so -2 ln reaches 1.645
   * squared at ln(1 - 1.645 s) and ln(1 + 1.645 s), which the straight line puts at -+ 1.645 s.
   */
  @Test
  void bentProblemsHaveTheirOwnInterval() {
    double s = 0.3;
    LeastSquares.Residuals problem =
        new LeastSquares.Residuals() {
          @Override
          public double[] at(double[] point) {
            return new double[] {Math.expm1(point[0]) / s};
          }

          @Override
          public double[][] slopes(double[] point) {
            return new double[][] {{Math.exp(point[0]) / s}};
          }
        };
    Profile profile =
        new Profile(problem, new ArrayRealVector(1), covariance(problem, new double[1]));
    double[] ends = profile.of(0);
    assertEquals(Math.log(1 - FitKey.NINETY * s), ends[0], 0.01);
    assertEquals(Math.log(1 + FitKey.NINETY * s), ends[1], 0.01);
  }

  /** A second key that follows the first bends the interval of the first too. */
  @Test
  void othersAreSearchedAnew() {
    // Residuals x + y - 1 and y^3 / 2: with x held at c, y solves a cubic by itself.
    LeastSquares.Residuals problem =
        new LeastSquares.Residuals() {
          @Override
          public double[] at(double[] p) {
            return new double[] {p[0] + p[1], 0.5 * (p[1] + p[1] * p[1] * p[1])};
          }

          @Override
          public double[][] slopes(double[] p) {
            return new double[][] {{1, 1}, {0, 0.5 * (1 + 3 * p[1] * p[1])}};
          }
        };
    Profile profile =
        new Profile(problem, new ArrayRealVector(2), covariance(problem, new double[2]));
    double end = profile.of(0)[1];
    double least = Double.POSITIVE_INFINITY;
    for (double y = -3; y <= 0; y += 1e-4) {
      double one = end + y;
      double other = 0.5 * (y + y * y * y);
      least = Math.min(least, one * one + other * other);
    }
    assertEquals(FitKey.NINETY, Math.sqrt(least), 0.03);
  }
}
