package soakloop.quantity;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a function changes its sign between two places. */
public final class Bracket {
  private static final double RELATIVE = 1e-13;
  private static final int ORDER = 5;
  private static final int MAX_EVALUATIONS = 1000;

  private Bracket() {}

  /**
   * Returns a place where the function is zero, to 1e-13 of the greater end.
   *
   * @param low one end
   * @param high the other end, above {@code low}
   * @param function continuous, of opposite signs at the ends or zero at one of them
   * @return the place
   * @throws IllegalArgumentException if the signs at the ends do not differ
   */
  public static double root(double low, double high, DoubleUnaryOperator function) {
    double atLow = function.applyAsDouble(low);
    if (atLow == 0) {
      return low;
    }
    double atHigh = function.applyAsDouble(high);
    if (atHigh == 0) {
      return high;
    }
    if (!(Math.signum(atLow) * Math.signum(atHigh) < 0)) {
      throw new IllegalArgumentException(
          "no change of sign from " + low + " to " + high + ": " + atLow + ", " + atHigh);
    }
    double absolute = RELATIVE * Math.max(Math.abs(low), Math.abs(high));
    return new BracketingNthOrderBrentSolver(RELATIVE, absolute, 0, ORDER)
        .solve(MAX_EVALUATIONS, function::applyAsDouble, low, high);
  }
}
