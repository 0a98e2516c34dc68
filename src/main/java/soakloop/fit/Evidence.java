package soakloop.fit;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import soakloop.log.Signal;

/**
 * Finds how large the model's own error is and how long it lasts, signal by signal, as those under
 * which the logs are likeliest once all places of the keys are allowed for (the marginal likelihood
 * of a linear model). Counting only what is left after fitting would take an error that the keys
 * have bent themselves to for none.
 *
 * <p>Equation: with residuals r at the best place z, slopes J, prior z ~ N(0, I) and covariance C,
 * -2 ln L = ln det C + ln det(I + J'C^-1 J) + r0'C^-1 r0 - b'(I + J'C^-1 J)^-1 b, where r0 = r - J
 * z and b = J'C^-1 r0; by the matrix inversion lemma (general algebra, no source).
 */
final class Evidence {
  /**
   * What is believed of a lumped model's error before any log, as medians and the factor within
   * which it lies two times in three: some tenths of a degree to a few degrees, for the time of a
   * pull or a wait. Our own judgement, not published.
   */
  static final CorrelatedError USUAL = new CorrelatedError(0.8, 20);

  private static final double DEVIATION_FACTOR = Math.log(2.2);
  private static final double TIME_FACTOR = Math.log(2.5);

  /** Where the search for an error begins and ends, as steps of its logarithms. */
  private static final double RADIUS = 0.3;

  private static final double CLOSE = 3e-4;
  private static final int EVALUATIONS = 1000;
  private static final int SWEEPS = 2;

  private final FitModel model;
  private final RealVector place;
  private final RealVector foretold;
  private final RealMatrix slopes;
  private final List<Signal> signals;

  /**
   * What the points of one signal say.
   *
   * @param inner J'C^-1 J
   * @param pull b, J'C^-1 r0
   * @param rest r0'C^-1 r0 + ln det C, and what is believed of the error
   */
  private record Terms(RealMatrix inner, RealVector pull, double rest) {}

  /**
   * Sets out.
   *
   * @param model what was fitted
   * @param place where
   * @param foretold what all points should read there
   * @param slopes what they change by there
   */
  Evidence(FitModel model, double[] place, double[] foretold, double[][] slopes) {
    this.model = model;
    this.place = new ArrayRealVector(place);
    this.foretold = new ArrayRealVector(foretold);
    this.slopes = new Array2DRowRealMatrix(slopes);
    Set<Signal> all = new LinkedHashSet<>();
    model.cases().forEach(c -> c.data().forEach(d -> all.add(d.signal())));
    this.signals = List.copyOf(all);
  }

  /** Returns the usual errors for each signal of some cases. */
  static Map<Signal, CorrelatedError> usual(List<FitCase> cases) {
    Map<Signal, CorrelatedError> errors = new EnumMap<>(Signal.class);
    cases.forEach(c -> c.data().forEach(d -> errors.put(d.signal(), USUAL)));
    return errors;
  }

  /** Returns the likeliest errors, searched from some, one signal after the other. */
  Map<Signal, CorrelatedError> likeliest(Map<Signal, CorrelatedError> from) {
    Map<Signal, CorrelatedError> errors = new EnumMap<>(from);
    Map<Signal, Terms> terms = new EnumMap<>(Signal.class);
    for (Signal signal : signals) {
      terms.put(signal, terms(signal, errors.getOrDefault(signal, USUAL)));
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      for (Signal signal : signals) {
        CorrelatedError best = likeliest(signal, errors.getOrDefault(signal, USUAL), terms);
        errors.put(signal, best);
        terms.put(signal, terms(signal, best));
      }
    }
    return errors;
  }

  private CorrelatedError likeliest(
      Signal signal, CorrelatedError from, Map<Signal, Terms> others) {
    Map<Signal, Terms> tried = new EnumMap<>(others);
    CorrelatedError least = CorrelatedError.least(signal);
    CorrelatedError most = CorrelatedError.MOST;
    double[] low = {Math.log(least.deviation()), Math.log(least.time())};
    double[] high = {Math.log(most.deviation()), Math.log(most.time())};
    double[] start = {
      between(low[0], Math.log(from.deviation()), high[0]),
      between(low[1], Math.log(from.time()), high[1])
    };
    MultivariateFunction unlikeliness =
        point -> {
          tried.put(
              signal, terms(signal, new CorrelatedError(Math.exp(point[0]), Math.exp(point[1]))));
          return unlikeliness(tried.values());
        };
    double[] best =
        new BOBYQAOptimizer(2 * start.length + 1, RADIUS, CLOSE)
            .optimize(
                new MaxEval(EVALUATIONS),
                new ObjectiveFunction(unlikeliness),
                GoalType.MINIMIZE,
                new InitialGuess(start),
                new SimpleBounds(low, high))
            .getPoint();
    return new CorrelatedError(Math.exp(best[0]), Math.exp(best[1])).within(signal);
  }

  private static double between(double low, double value, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private Terms terms(Signal signal, CorrelatedError error) {
    int keys = place.getDimension();
    RealMatrix inner = new Array2DRowRealMatrix(keys, keys);
    RealVector pull = new ArrayRealVector(keys);
    double rest = belief(error);
    int from = 0;
    for (FitCase one : model.cases()) {
      for (SignalData data : one.data()) {
        if (data.signal() == signal && data.size() > 0) {
          CorrelatedError.Whitening whitening = data.whitening(error);
          RealMatrix part = slopes.getSubMatrix(from, from + data.size() - 1, 0, keys - 1);
          double[] left = new double[data.size()];
          for (int i = 0; i < left.length; i++) {
            left[i] = foretold.getEntry(from + i) - data.value(i);
          }
          RealVector before = new ArrayRealVector(left, false).subtract(part.operate(place));
          RealVector r0 = white(whitening, before);
          RealMatrix j = new Array2DRowRealMatrix(data.size(), keys);
          for (int k = 0; k < keys; k++) {
            j.setColumnVector(k, white(whitening, part.getColumnVector(k)));
          }
          inner = inner.add(j.transposeMultiply(j));
          pull = pull.add(j.preMultiply(r0));
          rest += r0.dotProduct(r0) + whitening.logDeterminant();
        }
        from += data.size();
      }
    }
    return new Terms(inner, pull, rest);
  }

  private static RealVector white(CorrelatedError.Whitening whitening, RealVector values) {
    double[] white = new double[values.getDimension()];
    whitening.apply(values.toArray(), white, 0);
    return new ArrayRealVector(white, false);
  }

  /** Returns -2 ln of the likelihood of errors, less a constant. */
  private double unlikeliness(Iterable<Terms> all) {
    int keys = place.getDimension();
    RealMatrix inner = MatrixUtils.createRealIdentityMatrix(keys);
    RealVector pull = new ArrayRealVector(keys);
    double rest = 0;
    for (Terms terms : all) {
      inner = inner.add(terms.inner());
      pull = pull.add(terms.pull());
      rest += terms.rest();
    }
    CholeskyDecomposition decomposed = new CholeskyDecomposition(symmetric(inner), 1e-8, 1e-12);
    return rest
        + 2 * logDiagonal(decomposed.getL())
        - pull.dotProduct(decomposed.getSolver().solve(pull));
  }

  private static double belief(CorrelatedError error) {
    double size = Math.log(error.deviation() / USUAL.deviation()) / DEVIATION_FACTOR;
    double time = Math.log(error.time() / USUAL.time()) / TIME_FACTOR;
    return size * size + time * time;
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }

  private static double logDiagonal(RealMatrix lower) {
    double sum = 0;
    for (int i = 0; i < lower.getRowDimension(); i++) {
      sum += Math.log(lower.getEntry(i, i));
    }
    return sum;
  }

  /** Returns the inverse of a symmetric positive matrix. */
  static RealMatrix inverse(RealMatrix matrix) {
    RealMatrix even = symmetric(matrix);
    return symmetric(
        new CholeskyDecomposition(even, 1e-8, 1e-14)
            .getSolver()
            .solve(MatrixUtils.createRealIdentityMatrix(even.getRowDimension())));
  }
}
