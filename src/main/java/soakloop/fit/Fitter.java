package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.random.SobolSequenceGenerator;
import soakloop.log.Signal;

/**
 * Finds the likeliest place of keys, and how well they are then known.
 *
 * <p>Searches begin at what was believed before and at some places of a Sobol sequence about it.
 * Then the model's own error is estimated from what is left ({@link Evidence}) and the search goes
 * on from the best place, until both agree.
 */
final class Fitter {
  /** Searches beside the first. */
  private static final int STARTS = 2;

  /** How far from what was believed before searches begin, in standard deviations. */
  private static final double REACH = 1.5;

  /** Times that errors and places are found anew. */
  private static final int ROUNDS = 5;

  /** Relative difference of errors that moves no place by anything that shows. */
  private static final double ALIKE = 0.02;

  private static final LeastSquares.Patience COARSE = new LeastSquares.Patience(1e-3, 1e-3, 8);
  private static final LeastSquares.Patience FINE = new LeastSquares.Patience(1e-4, 1e-3, 12);

  /** Difference of -2 ln likelihood within which another place is nearly as likely. */
  private static final double NEARLY = 4;

  /** The same for a search that was broken off early and may yet come near. */
  private static final double WORTH_A_LOOK = 60;

  private Fitter() {}

  /**
   * Fits.
   *
   * @param model what moves and what it is held against
   * @param from where to begin; zeros are what was believed before
   * @param starts whether to search from other places too
   */
  static Fitted fit(FitModel model, double[] from, boolean starts) {
    Map<Signal, CorrelatedError> errors = Evidence.usual(model.cases());
    FitProblem problem = new FitProblem(model, errors);
    List<LeastSquares.Solution> found = new ArrayList<>();
    found.add(LeastSquares.search(problem, from, COARSE));
    if (starts) {
      for (double[] start : around(from)) {
        found.add(LeastSquares.search(problem, start, COARSE));
      }
    }
    found.sort(Comparator.comparingDouble(LeastSquares.Solution::cost));
    LeastSquares.Solution best = found.get(0);
    for (int round = 0; round < ROUNDS; round++) {
      double[] place = best.point().toArray();
      Map<Signal, CorrelatedError> likelier =
          new Evidence(model, place, problem.foretold(place), problem.change(place))
              .likeliest(errors);
      if (areAlike(errors, likelier)) {
        break;
      }
      errors = likelier;
      problem = problem.with(errors);
      best = LeastSquares.search(problem, place, FINE);
    }
    List<RealVector> rivals = new ArrayList<>();
    for (LeastSquares.Solution other : found.subList(1, found.size())) {
      if (other.cost() < found.get(0).cost() + WORTH_A_LOOK
          && isApart(other.point(), found.get(0).point())) {
        LeastSquares.Solution again = LeastSquares.search(problem, other.point().toArray(), FINE);
        if (isApart(again.point(), best.point()) && again.cost() < best.cost() + NEARLY) {
          rivals.add(again.cost() < best.cost() ? best.point() : again.point());
          best = again.cost() < best.cost() ? again : best;
        }
      }
    }
    return fitted(model, errors, problem, best, rivals);
  }

  /** Returns whether some key lies a standard deviation or more from where it lies elsewhere. */
  private static boolean isApart(RealVector point, RealVector other) {
    return point.getLInfDistance(other) > 1;
  }

  /** Returns whether errors are so much alike that another search would end where it began. */
  private static boolean areAlike(
      Map<Signal, CorrelatedError> some, Map<Signal, CorrelatedError> others) {
    return some.entrySet().stream()
        .allMatch(
            e -> {
              CorrelatedError other = others.getOrDefault(e.getKey(), Evidence.USUAL);
              return Math.abs(Math.log(other.deviation() / e.getValue().deviation())) < ALIKE
                  && Math.abs(Math.log(other.time() / e.getValue().time())) < ALIKE;
            });
  }

  private static List<double[]> around(double[] from) {
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(from.length);
    sequence.skipTo(1);
    NormalDistribution normal = new NormalDistribution();
    List<double[]> starts = new ArrayList<>();
    for (int s = 0; s < STARTS; s++) {
      double[] unit = sequence.nextVector();
      double[] start = from.clone();
      for (int k = 0; k < start.length; k++) {
        double away = normal.inverseCumulativeProbability(0.05 + 0.9 * unit[k]);
        start[k] += REACH * Math.max(-1, Math.min(1, away));
      }
      starts.add(start);
    }
    return starts;
  }

  private static Fitted fitted(
      FitModel model,
      Map<Signal, CorrelatedError> errors,
      FitProblem problem,
      LeastSquares.Solution best,
      List<RealVector> rivals) {
    double[] place = best.point().toArray();
    double[] foretold = problem.foretold(place);
    double[][] slopes = model.slopes(place, foretold, true);
    RealMatrix white = new Array2DRowRealMatrix(problem.slopes(slopes, place.length), false);
    RealMatrix covariance = Evidence.inverse(white.transposeMultiply(white));
    double[] left = problem.residuals(foretold, place);
    int points = left.length - place.length;
    double misfit = Arrays.stream(left, 0, points).map(r -> r * r).sum();
    return new Fitted(
        model,
        best.point(),
        covariance,
        errors,
        new ArrayRealVector(foretold, false),
        new Array2DRowRealMatrix(slopes, false),
        misfit,
        rivals,
        best.settled());
  }
}
