package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** The sparse solution against Hipparchus' dense one. */
@Tag("library")
class SparseLuTest {
  @RepeatedTest(60)
  void solvesAsTheDenseDecompositionDoes(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    int n = 1 + random.nextInt(40);
    double[][] matrix = new double[n][n];
    for (int k = random.nextInt(4 * n); k > 0; k--) {
      matrix[random.nextInt(n)][random.nextInt(n)] = random.nextDouble() - 0.5;
    }
    double shift = n;
    LinearlyImplicitEquation equation = new Given(matrix);
    SparseJacobian jacobian = new SparseJacobian(equation, new double[n]);
    SparseLu lu = new SparseLu(jacobian);
    for (int turn = 0; turn < 2; turn++) {
      jacobian.update(equation, new double[n]);
      lu.factor(shift, jacobian);
      double[] b = random.doubles(n).toArray();
      double[] x = b.clone();
      lu.solve(x);
      double[][] full = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          full[i][j] = (i == j ? shift : 0) - matrix[i][j];
        }
      }
      double[] dense =
          new LUDecomposition(new Array2DRowRealMatrix(full, false))
              .getSolver()
              .solve(new ArrayRealVector(b, false))
              .toArray();
      for (int i = 0; i < n; i++) {
        assertEquals(dense[i], x[i], 1e-12);
      }
      shift = 2.0 * n;
    }
  }

  /** An equation whose Jacobian is a given matrix. */
  private static final class Given implements LinearlyImplicitEquation {
    private final double[][] matrix;

    Given(double[][] matrix) {
      this.matrix = matrix;
    }

    @Override
    public int getDimension() {
      return matrix.length;
    }

    @Override
    public int dynamicStates() {
      return matrix.length;
    }

    @Override
    public void derivatives(double t, double[] y, double[] dy) {}

    @Override
    public void jacobian(double[] y, JacobianEntries entries) {
      for (int i = 0; i < matrix.length; i++) {
        for (int j = 0; j < matrix.length; j++) {
          if (matrix[i][j] != 0) {
            entries.add(i, j, matrix[i][j]);
          }
        }
      }
    }
  }
}
