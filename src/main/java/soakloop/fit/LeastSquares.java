package soakloop.fit;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.ConvergenceChecker;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Finds where the sum of squares of residuals is least, by Hipparchus' Levenberg-Marquardt method.
 */
final class LeastSquares {
  /** Residuals and what they change by. */
  interface Residuals {
    /** Returns the residuals at a point; always as many, all finite. */
    double[] at(double[] point);

    /** Returns the derivative of each residual by each part of the point. */
    double[][] slopes(double[] point);
  }

  /**
   * Where the search ended.
   *
   * @param point the best found
   * @param residuals there
   * @param settled whether it ended because nothing got better, not for want of patience
   */
  record Solution(RealVector point, RealVector residuals, boolean settled) {
    /** Returns the sum of squares. */
    double cost() {
      return residuals.dotProduct(residuals);
    }
  }

  /**
   * When to stop.
   *
   * @param cost relative change of the sum of squares below which it has settled
   * @param step relative change of the point below which it has settled
   * @param iterations most
   */
  record Patience(double cost, double step, int iterations) {}

  private LeastSquares() {}

  /**
   * Searches from a start.
   *
   * @param residuals to be made small
   * @param start where to begin
   * @param patience when to stop
   */
  static Solution search(Residuals residuals, double[] start, Patience patience) {
    Function function = new Function(residuals, start);
    double[] target = new double[function.size()];
    ConvergenceChecker<LeastSquaresProblem.Evaluation> checker =
        (i, before, after) ->
            Math.abs(before.getCost() - after.getCost()) <= patience.cost() * after.getCost();
    LeastSquaresProblem problem =
        LeastSquaresFactory.create(
            function,
            new ArrayRealVector(target, false),
            new ArrayRealVector(start),
            null,
            checker,
            100 * patience.iterations(),
            patience.iterations(),
            true,
            null);
    LevenbergMarquardtOptimizer optimizer =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(patience.cost())
            .withParameterRelativeTolerance(patience.step())
            .withOrthoTolerance(0);
    boolean settled = true;
    try {
      LeastSquaresOptimizer.Optimum optimum = optimizer.optimize(problem);
      function.keep(optimum.getPoint().toArray());
    } catch (MathIllegalStateException e) {
      // Out of patience, or no step makes it better: the best point met is what it comes to.
      settled = e.getMessage() != null && e.getMessage().contains("tolerance");
    }
    double[] best = function.best();
    return new Solution(
        new ArrayRealVector(best, false), new ArrayRealVector(residuals.at(best), false), settled);
  }

  /** Remembers the best point met, so that nothing is lost when the search breaks off. */
  private static final class Function implements ValueAndJacobianFunction {
    private final Residuals residuals;
    private final int size;
    private double[] best;
    private double least;

    Function(Residuals residuals, double[] start) {
      this.residuals = residuals;
      this.best = start.clone();
      double[] first = residuals.at(start);
      this.size = first.length;
      this.least = new ArrayRealVector(first, false).getNorm();
    }

    int size() {
      return size;
    }

    double[] best() {
      return best.clone();
    }

    void keep(double[] point) {
      computeValue(point);
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      double[] at = point.toArray();
      return new Pair<>(computeValue(at), computeJacobian(at));
    }

    @Override
    public RealVector computeValue(double[] point) {
      RealVector value = new ArrayRealVector(residuals.at(point), false);
      double norm = value.getNorm();
      if (norm < least) {
        least = norm;
        best = point.clone();
      }
      return value;
    }

    @Override
    public RealMatrix computeJacobian(double[] point) {
      return new Array2DRowRealMatrix(residuals.slopes(point), false);
    }
  }
}
