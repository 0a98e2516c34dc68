package soakloop.quantity;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/** How values hang together: a correlation matrix, symmetric and positive definite. Immutable. */
public final class Correlation {
  /**
   * How far an entry may be moved to make a rounded matrix positive definite [-]: three digits
   * round each by 0.0005, and forty keys make up to forty times that of it.
   */
  public static final double TOLERANCE = 0.02;

  /** Smallest eigenvalue that is left [-]: less is a rounding error of the draws. */
  private static final double LEAST = 1e-5;

  private final double[][] entries;

  private Correlation(double[][] entries) {
    this.entries = entries;
  }

  /**
   * Takes a matrix; one that is not quite positive definite, because it was rounded, is moved to
   * one near it that is: eigenvalues below a least one are raised to it, and the diagonal is made 1
   * again.
   *
   * @param lower its rows up to and including the diagonal, which is 1 [-]
   * @throws IllegalArgumentException if it is no correlation matrix, or would have to be moved by
   *     more than {@link #TOLERANCE}; says why
   */
  public static Correlation ofLower(double[][] lower) {
    int n = lower.length;
    double[][] entries = new double[n][n];
    for (int i = 0; i < n; i++) {
      if (lower[i].length != i + 1) {
        throw new IllegalArgumentException(
            "row " + (i + 1) + " must have " + (i + 1) + " numbers, up to its own 1");
      }
      for (int j = 0; j <= i; j++) {
        double c = lower[i][j];
        if (!(Math.abs(c) <= 1) || (i == j && c != 1)) {
          throw new IllegalArgumentException(
              "row " + (i + 1) + " must have numbers from -1 to 1, the last one 1");
        }
        entries[i][j] = c;
        entries[j][i] = c;
      }
    }
    return n == 0 ? new Correlation(entries) : definite(entries);
  }

  private static Correlation definite(double[][] entries) {
    int n = entries.length;
    EigenDecompositionSymmetric parts =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(entries));
    if (Arrays.stream(parts.getEigenvalues()).allMatch(e -> e >= LEAST)) {
      return new Correlation(entries);
    }
    RealMatrix vectors = parts.getV();
    RealMatrix scaled = vectors.copy();
    for (int j = 0; j < n; j++) {
      double value = Math.max(LEAST, parts.getEigenvalue(j));
      scaled.setColumnVector(j, vectors.getColumnVector(j).mapMultiply(value));
    }
    RealMatrix raised = scaled.multiplyTransposed(vectors);
    double[][] moved = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        moved[i][j] =
            i == j
                ? 1
                : raised.getEntry(Math.max(i, j), Math.min(i, j))
                    / Math.sqrt(raised.getEntry(i, i) * raised.getEntry(j, j));
        if (Math.abs(moved[i][j] - entries[i][j]) > TOLERANCE) {
          throw new IllegalArgumentException(
              "these cannot be correlations: no values hang together so (the matrix is not"
                  + " positive definite, by more than rounding)");
        }
      }
    }
    return new Correlation(moved);
  }

  /** Returns the number of values. */
  public int size() {
    return entries.length;
  }

  /**
   * Returns how two values hang together [-].
   *
   * @param i index of one
   * @param j index of the other
   */
  public double at(int i, int j) {
    return entries[i][j];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Correlation c && Arrays.deepEquals(entries, c.entries);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(entries);
  }

  @Override
  public String toString() {
    return Arrays.deepToString(entries);
  }
}
