package soakloop.simulate;

/**
 * One step of the linearly implicit method, and everything it needs again in the next: the
 * Jacobian, its factors and the stages.
 *
 * <p>Each stage solves {@code (1/(gamma h) - J) u = f(stage) + (sum of earlier u) / h}. Quadratures
 * stand below the square matrix: their rows of the Jacobian are multiplied after the solve, so that
 * a balance between states and quadratures that is linear stays exact.
 */
final class RosenbrockStep {
  private final LinearlyImplicitEquation equation;
  private final SparseJacobian jacobian;
  private final SparseLu lu;
  private final int dynamic;
  private final double[][] u;
  private final double[] state;
  private final double[] slope;
  private final double[] error;

  /**
   * Finds the Jacobian's pattern.
   *
   * @param equation what is integrated
   * @param t s
   * @param y a state
   */
  RosenbrockStep(LinearlyImplicitEquation equation, double t, double[] y) {
    this.equation = equation;
    this.dynamic = equation.dynamicStates();
    this.u = new double[RosenbrockTable.STAGES][y.length];
    this.state = new double[y.length];
    this.slope = new double[y.length];
    this.error = new double[y.length];
    equation.derivatives(t, y, slope);
    this.jacobian = new SparseJacobian(equation, y);
    this.lu = new SparseLu(jacobian);
  }

  /** Takes the Jacobian at a state whose derivatives were just worked out. */
  void jacobianAt(double[] y) {
    jacobian.update(equation, y);
  }

  /**
   * Makes a step from where the Jacobian was taken; evaluates the derivatives three times.
   *
   * @param t s
   * @param h length, s
   * @param y state at the start
   * @param dy its derivatives
   * @param after takes the state at the end
   */
  void make(double t, double h, double[] y, double[] dy, double[] after) {
    double shift = 1 / (RosenbrockTable.GAMMA * h);
    lu.factor(shift, jacobian);
    for (int s = 0; s < RosenbrockTable.STAGES; s++) {
      double[] right = u[s];
      if (s == 0) {
        System.arraycopy(dy, 0, right, 0, right.length);
      } else {
        sum(RosenbrockTable.STATE[s], s, 1, y, state);
        equation.derivatives(t + RosenbrockTable.TIME[s] * h, state, slope);
        sum(RosenbrockTable.RIGHT[s], s, 1 / h, slope, right);
      }
      lu.solve(right);
      jacobian.addQuadratures(right);
      for (int i = dynamic; i < right.length; i++) {
        right[i] /= shift;
      }
    }
    sum(RosenbrockTable.RESULT, RosenbrockTable.STAGES, 1, y, after);
  }

  /** Returns the estimated error of each state in the step made last. */
  double[] error() {
    java.util.Arrays.fill(error, 0);
    sum(RosenbrockTable.ERROR, RosenbrockTable.STAGES, 1, error, error);
    return error;
  }

  /** Adds the first few u by their shares to a start. */
  private void sum(double[] shares, int stages, double scale, double[] start, double[] result) {
    if (start != result) {
      System.arraycopy(start, 0, result, 0, result.length);
    }
    for (int j = 0; j < stages; j++) {
      double share = shares[j] * scale;
      if (share != 0) {
        double[] stage = u[j];
        for (int i = 0; i < result.length; i++) {
          result[i] += share * stage[i];
        }
      }
    }
  }
}
