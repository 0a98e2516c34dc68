package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.log.Signal;
import soakloop.scenario.ScenarioReader;

/** The likeliest error against the dense marginal likelihood of a linear model. */
@Tag("analytic")
class EvidenceTest {
  private static final int SIZE = 80;
  private static final int KEYS = 3;

  @Test
  void noErrorIsLikelierByTheDenseLikelihood() throws Exception {
    Random random = new Random(11);
    double[] times = new double[SIZE];
    double[] noise = new double[SIZE];
    Arrays.fill(noise, 0.1);
    Arrays.setAll(times, i -> 4.0 * i);
    CorrelatedError truth = new CorrelatedError(1.4, 17);
    RealMatrix lower =
        new CholeskyDecomposition(CorrelatedErrorTest.dense(truth, times, noise)).getL();
    RealMatrix slopes = MatrixUtils.createRealMatrix(SIZE, KEYS);
    double[] even = random.doubles(SIZE, -1.7, 1.7).toArray();
    for (int i = 0; i < SIZE; i++) {
      slopes.setRow(i, new double[] {1, Math.sin(times[i] / 40), times[i] / 100});
    }
    double[] read = lower.operate(even);
    SignalData data = new SignalData(Signal.CORE_COOLANT_IN, times, read, noise);
    FitCase one =
        new FitCase(
            "one", ScenarioReader.read(Path.of("scenarios/cool-morning.yaml")), List.of(data));
    double[] place = {0.3, -0.2, 0.1};
    double[] foretold = slopes.operate(place);
    FitModel model = new FitModel(List.of(one), List.of(), 1);
    CorrelatedError found =
        new Evidence(model, place, foretold, slopes.getData())
            .likeliest(Evidence.usual(List.of(one)))
            .getOrDefault(Signal.CORE_COOLANT_IN, Evidence.USUAL);
    // What is left at place 0 does not depend on the place it was set out from.
    RealVector left = new ArrayRealVector(read).mapMultiply(-1);
    double least = unlikeliness(found, times, noise, slopes, left);
    for (double deviation = 0.6; deviation < 5; deviation *= 1.1) {
      for (double time = 10; time <= 25; time += 1) {
        CorrelatedError other = new CorrelatedError(deviation, time);
        double value = unlikeliness(other, times, noise, slopes, left);
        assertTrue(least < value + 0.02, other + " is likelier than " + found);
      }
    }
  }

  /** -2 ln of the density of what is left, N(0, C + J J'), and of what is believed of the error. */
  private static double unlikeliness(
      CorrelatedError error, double[] times, double[] noise, RealMatrix slopes, RealVector left) {
    RealMatrix whole =
        CorrelatedErrorTest.dense(error, times, noise).add(slopes.multiply(slopes.transpose()));
    CholeskyDecomposition cholesky = new CholeskyDecomposition(whole, 1e-9, 1e-12);
    double sum = left.dotProduct(cholesky.getSolver().solve(left));
    for (int i = 0; i < SIZE; i++) {
      sum += 2 * Math.log(cholesky.getL().getEntry(i, i));
    }
    double size = Math.log(error.deviation() / 0.8) / Math.log(2.2);
    double lasting = Math.log(error.time() / 20) / Math.log(2.5);
    return sum + size * size + lasting * lasting;
  }
}
