package soakloop.simulate;

/**
 * ROS34PW2: four stages, third order whatever matrix stands for the Jacobian, L-stable if it is the
 * exact one, with a second-order result for the error.
 *
 * <p>Source: J. Rang, L. Angermann, New Rosenbrock W-methods of order 3 for partial differential
 * algebraic equations of index 1, BIT Numerical Mathematics 45 (2005) 761 (citation from memory;
 * coefficients as they stand in several public solver libraries). {@code RosenbrockOrderTest} holds
 * them against the order conditions.
 *
 * <p>The stages are used in the form {@code u = gamma k} (E. Hairer, G. Wanner, Solving Ordinary
 * Differential Equations II, section IV.7; from memory), which needs no product with the Jacobian.
 */
final class RosenbrockTable {
  static final int STAGES = 4;
  static final int ORDER = 3;

  /** The diagonal of all stages. */
  static final double GAMMA = 0.435866521508459;

  private static final double[][] ALPHA = {
    {0, 0, 0, 0},
    {0.871733043016918, 0, 0, 0},
    {0.8445706001536942, -0.11299064236484185, 0, 0},
    {0, 0, 1, 0}
  };

  private static final double[][] COUPLING = {
    {GAMMA, 0, 0, 0},
    {-0.871733043016918, GAMMA, 0, 0},
    {-0.9033805701304408, 0.054180672388095326, GAMMA, 0},
    {0.24212380706095346, -1.2232505839045147, 0.5452602553351021, GAMMA}
  };

  private static final double[] WEIGHT = {
    0.24212380706095346, -1.2232505839045147, 1.545260255335102, 0.435866521508459
  };

  private static final double[] EMBEDDED = {
    0.3781090314581937, -0.09604229221242318, 0.5, 0.2179332607542295
  };

  /** Time of each stage as a share of the step. */
  static final double[] TIME = new double[STAGES];

  /** Shares of the earlier u in the state of a stage. */
  static final double[][] STATE = new double[STAGES][STAGES];

  /** Shares of the earlier u, over the step, in the right side of a stage. */
  static final double[][] RIGHT = new double[STAGES][STAGES];

  /** Shares of all u in the result. */
  static final double[] RESULT = new double[STAGES];

  /** Shares of all u in the difference to the second-order result. */
  static final double[] ERROR = new double[STAGES];

  static {
    double[][] inverse = inverse(COUPLING);
    for (int i = 0; i < STAGES; i++) {
      for (int j = 0; j < STAGES; j++) {
        TIME[i] += ALPHA[i][j];
        RESULT[i] += WEIGHT[j] * inverse[j][i];
        ERROR[i] += (WEIGHT[j] - EMBEDDED[j]) * inverse[j][i];
        RIGHT[i][j] = j < i ? -inverse[i][j] : 0;
        for (int k = 0; k < STAGES; k++) {
          STATE[i][j] += ALPHA[i][k] * inverse[k][j];
        }
      }
    }
  }

  private RosenbrockTable() {}

  private static double[][] inverse(double[][] lower) {
    int n = lower.length;
    double[][] inverse = new double[n][n];
    for (int j = 0; j < n; j++) {
      for (int i = j; i < n; i++) {
        double sum = i == j ? 1 : 0;
        for (int k = j; k < i; k++) {
          sum -= lower[i][k] * inverse[k][j];
        }
        inverse[i][j] = sum / lower[i][i];
      }
    }
    return inverse;
  }

  /** Returns the published tables for a check of their order: alpha, gamma, weights. */
  static double[][][] published() {
    return new double[][][] {ALPHA, COUPLING, {WEIGHT, EMBEDDED}};
  }
}
