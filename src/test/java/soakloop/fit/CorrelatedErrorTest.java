package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.log.Signal;

/** The filter against the dense covariance that it stands for. */
@Tag("analytic")
class CorrelatedErrorTest {
  private static final int SIZE = 60;

  /** Covariance of readings: exponential in time, and each one's own noise. */
  static RealMatrix dense(CorrelatedError error, double[] times, double[] noise) {
    RealMatrix covariance = MatrixUtils.createRealMatrix(times.length, times.length);
    for (int i = 0; i < times.length; i++) {
      for (int j = 0; j < times.length; j++) {
        double apart = Math.abs(times[i] - times[j]);
        double shared = error.deviation() * error.deviation() * Math.exp(-apart / error.time());
        covariance.setEntry(i, j, shared + (i == j ? noise[i] * noise[i] : 0));
      }
    }
    return covariance;
  }

  /**
   * Whitening by the lower Cholesky factor takes from each reading what those before it tell, so it
   * must give the very same numbers (general algebra).
   */
  @Test
  void filterIsTheCholeskyFactorOfTheCovariance() {
    Random random = new Random(7);
    double[] times = new double[SIZE];
    double[] noise = new double[SIZE];
    double[] residuals = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      times[i] = i == 0 ? 3 : times[i - 1] + (i % 9 == 0 ? 0 : 12 * random.nextDouble());
      noise[i] = 0.05 + random.nextDouble();
      residuals[i] = random.nextGaussian();
    }
    CorrelatedError error = new CorrelatedError(0.7, 18);
    RealMatrix covariance = dense(error, times, noise);
    CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance);
    RealVector white = new ArrayRealVector(residuals);
    MatrixUtils.solveLowerTriangularSystem(cholesky.getL(), white);
    double[] filtered = new double[SIZE + 2];
    CorrelatedError.Whitening whitening = error.whitening(times, noise);
    whitening.apply(residuals, filtered, 2);
    assertArrayEquals(white.toArray(), java.util.Arrays.copyOfRange(filtered, 2, SIZE + 2), 1e-10);
    double logarithm = 0;
    for (int i = 0; i < SIZE; i++) {
      logarithm += 2 * Math.log(cholesky.getL().getEntry(i, i));
    }
    assertEquals(logarithm, whitening.logDeterminant(), 1e-10);
  }

  @Test
  void alikePullsTellAsMuchAsOne() {
    CorrelatedError error = new CorrelatedError(0.3, 20);
    assertEquals(0.6, error.repeated(4).deviation(), 1e-15);
    assertEquals(error, error.repeated(0));
  }

  @Test
  void noModelIsTakenToBeBetterThanItCanBe() {
    CorrelatedError tiny = new CorrelatedError(1e-3, 1000);
    assertEquals(new CorrelatedError(0.2, 25), tiny.within(Signal.CHARGE_TEMPERATURE));
    assertEquals(new CorrelatedError(0.6, 25), tiny.within(Signal.CORE_COOLANT_IN));
    CorrelatedError large = new CorrelatedError(3, 15);
    assertEquals(large, large.within(Signal.CORE_COOLANT_OUT));
  }
}
