package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Scales, bands, draws and the search against closed forms. */
@Tag("analytic")
class FitPartsTest {
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  @Test
  void scaleKeepsItsBoundsAndTurnsBack() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double low = i % 4 == 1 || i % 4 == 3 ? -INFINITE : 10 * random.nextGaussian();
      double span = Math.exp(2 * random.nextGaussian());
      double high =
          i % 4 >= 2 ? INFINITE : Double.isInfinite(low) ? random.nextGaussian() : low + span;
      Scale scale = new Scale(low, high);
      double place = 40 * random.nextGaussian();
      double value = scale.at(place);
      assertTrue(value >= low && value <= high, scale + " at " + place + ": " + value);
      double inside = 6 * random.nextDouble() - 3;
      assertEquals(inside, scale.of(scale.at(inside)), 1e-6, scale.toString());
    }
  }

  /** ln((x - 2) / (10 - x)) at 4: ln(2 / 6). */
  @Test
  void scaleIsTheLogarithmOfTheDistances() {
    assertEquals(Math.log(2.0 / 6), new Scale(2, 10).of(4), 1e-12);
    assertEquals(4, new Scale(2, 10).at(Math.log(2.0 / 6)), 1e-12);
    assertEquals(Math.log(5), new Scale(2, INFINITE).of(7), 1e-12);
  }

  /**
   * Quantiles between plotting positions (k - 1/2) / n: of 1 to 100, 5 % lies at 5.5 and 95 % at
   * 95.5 (Hyndman and Fan 1996, definition 5, from memory).
   */
  @Test
  void bandReadsQuantiles() {
    double[] values = new double[101];
    Arrays.setAll(values, i -> (i * 37 % 101) == 0 ? Double.NaN : i * 37 % 101);
    Band band = Band.of(values);
    assertEquals(5.5, band.low(), 1e-12);
    assertEquals(50.5, band.middle(), 1e-12);
    assertEquals(95.5, band.high(), 1e-12);
    assertTrue(band.holds(95.5) && !band.holds(95.6));
    assertTrue(Double.isNaN(Band.of(new double[] {Double.NaN}).middle()));
  }

  @Test
  void drawsHaveTheMeanAndTheCovarianceAskedFor() {
    RealVector mean = new ArrayRealVector(new double[] {1, -2, 0.5});
    RealMatrix covariance =
        new Array2DRowRealMatrix(new double[][] {{1, 0.6, 0}, {0.6, 2, -0.4}, {0, -0.4, 0.5}});
    int count = 4096;
    Draws draws = Draws.of(mean, covariance, count, 1);
    double[] sum = new double[3];
    double[][] products = new double[3][3];
    double mixed = 0;
    for (int i = 0; i < count; i++) {
      RealVector off = new ArrayRealVector(draws.place(i)).subtract(mean);
      for (int a = 0; a < 3; a++) {
        sum[a] += off.getEntry(a) / count;
        mixed += off.getEntry(a) * draws.other(i, 0) / count;
        for (int b = 0; b < 3; b++) {
          products[a][b] += off.getEntry(a) * off.getEntry(b) / count;
        }
      }
    }
    for (int a = 0; a < 3; a++) {
      assertEquals(0, sum[a], 0.01);
      for (int b = 0; b < 3; b++) {
        assertEquals(covariance.getEntry(a, b), products[a][b], 0.02);
      }
    }
    assertEquals(0, mixed, 0.02, "the further numbers are independent of the places");
  }

  /**
   * Posterior of y = A x + e with x ~ N(0, I): covariance (I + A'A/s2)^-1, mean that times A'y/s2.
   */
  @Test
  void linearProblemHasItsClosedForm() {
    Random random = new Random(5);
    int rows = 30;
    int keys = 4;
    double noise = 0.3;
    RealMatrix a = MatrixUtils.createRealMatrix(rows, keys);
    double[] y = random.doubles(rows, -2, 2).toArray();
    for (int i = 0; i < rows; i++) {
      a.setRow(i, random.doubles(keys, -1, 1).toArray());
    }
    LeastSquares.Residuals residuals =
        new LeastSquares.Residuals() {
          @Override
          public double[] at(double[] point) {
            double[] all = Arrays.copyOf(a.operate(point), rows + keys);
            for (int i = 0; i < rows; i++) {
              all[i] = (all[i] - y[i]) / noise;
            }
            System.arraycopy(point, 0, all, rows, keys);
            return all;
          }

          @Override
          public double[][] slopes(double[] point) {
            RealMatrix all = MatrixUtils.createRealMatrix(rows + keys, keys);
            all.setSubMatrix(a.scalarMultiply(1 / noise).getData(), 0, 0);
            all.setSubMatrix(MatrixUtils.createRealIdentityMatrix(keys).getData(), rows, 0);
            return all.getData();
          }
        };
    LeastSquares.Solution found =
        LeastSquares.search(
            residuals, new double[keys], new LeastSquares.Patience(1e-14, 1e-14, 50));
    RealMatrix precision =
        MatrixUtils.createRealIdentityMatrix(keys)
            .add(a.transposeMultiply(a).scalarMultiply(1 / (noise * noise)));
    RealMatrix covariance = new LUDecomposition(precision).getSolver().getInverse();
    double[] mean = covariance.operate(a.transpose().operate(y));
    RealMatrix slopes = MatrixUtils.createRealMatrix(residuals.slopes(found.point().toArray()));
    for (int k = 0; k < keys; k++) {
      assertEquals(mean[k] / (noise * noise), found.point().getEntry(k), 1e-9);
      for (int j = 0; j < keys; j++) {
        assertEquals(
            covariance.getEntry(k, j),
            Evidence.inverse(slopes.transposeMultiply(slopes)).getEntry(k, j),
            1e-12);
      }
    }
    assertFalse(found.residuals().isNaN());
  }
}
