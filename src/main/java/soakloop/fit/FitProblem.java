package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;

/**
 * Residuals whose sum of squares is least at the likeliest place: what each point reads less what
 * was foretold, made independent and of variance 1, then the place itself, which is what was
 * believed before. Remembers the place that was run last, since searches, errors and searches with
 * other errors ask for the same place in turn; so one is for one thread.
 */
final class FitProblem implements LeastSquares.Residuals {
  private final FitModel model;
  private final double[] read;
  private final List<Block> blocks;
  private Linear last;

  /** Points of one signal in one case. */
  private record Block(Signal signal, int from, int size, CorrelatedError.Whitening whitening) {}

  /**
   * The model as it is near a place.
   *
   * @param place where
   * @param foretold what all points read there
   * @param slopes what they change by for each key, a row for each point; empty until asked for
   */
  private record Linear(RealVector place, RealVector foretold, Optional<RealMatrix> slopes) {
    boolean isAt(double[] point) {
      return Arrays.equals(place.toArray(), point);
    }
  }

  /** Sets out a problem of which nothing is known yet. */
  FitProblem(FitModel model, Map<Signal, CorrelatedError> errors) {
    this(
        model,
        errors,
        new Linear(new ArrayRealVector(0), new ArrayRealVector(0), Optional.empty()));
  }

  private FitProblem(FitModel model, Map<Signal, CorrelatedError> errors, Linear last) {
    this.model = model;
    this.last = last;
    this.read = new double[model.size()];
    this.blocks = new ArrayList<>();
    int from = 0;
    for (FitCase one : model.cases()) {
      for (SignalData data : one.data()) {
        System.arraycopy(data.values(), 0, read, from, data.size());
        CorrelatedError error = errors.get(data.signal());
        if (error == null) {
          throw new IllegalArgumentException("no error of " + data.signal());
        }
        blocks.add(
            new Block(
                data.signal(), from, data.size(), data.whitening(error.repeated(one.pulls()))));
        from += data.size();
      }
    }
  }

  /** Returns the logarithm of the determinant of the points' covariance. */
  double logDeterminant() {
    return blocks.stream().mapToDouble(b -> b.whitening().logDeterminant()).sum();
  }

  /** Returns what the points read. */
  double[] read() {
    return read.clone();
  }

  /** Returns the same with other errors; what was run last is not run again. */
  FitProblem with(Map<Signal, CorrelatedError> errors) {
    return new FitProblem(model, errors, last);
  }

  /** Returns what all points should read at a place. */
  double[] foretold(double[] point) {
    if (!last.isAt(point)) {
      last =
          new Linear(
              new ArrayRealVector(point),
              new ArrayRealVector(model.at(point), false),
              Optional.empty());
    }
    return last.foretold().toArray();
  }

  /** Returns what each point changes by for each key at a place, a row for each point. */
  double[][] change(double[] point) {
    double[] own = foretold(point);
    if (last.slopes().isEmpty()) {
      RealMatrix slopes = new Array2DRowRealMatrix(model.slopes(point, own, false), false);
      last = new Linear(last.place(), last.foretold(), Optional.of(slopes));
    }
    return last.slopes().orElseThrow().getData();
  }

  @Override
  public double[] at(double[] point) {
    return residuals(foretold(point), point);
  }

  double[] residuals(double[] foretold, double[] point) {
    double[] left = new double[read.length];
    Arrays.setAll(left, i -> foretold[i] - read[i]);
    double[] all = Arrays.copyOf(whitened(left), read.length + point.length);
    System.arraycopy(point, 0, all, read.length, point.length);
    return all;
  }

  @Override
  public double[][] slopes(double[] point) {
    return slopes(change(point), point.length);
  }

  /** Makes the slopes of the residuals from those of the points. */
  double[][] slopes(double[][] raw, int keys) {
    double[][] all = new double[read.length + keys][keys];
    double[] column = new double[read.length];
    for (int k = 0; k < keys; k++) {
      for (int i = 0; i < read.length; i++) {
        column[i] = raw[i][k];
      }
      double[] white = whitened(column);
      for (int i = 0; i < read.length; i++) {
        all[i][k] = white[i];
      }
      all[read.length + k][k] = 1;
    }
    return all;
  }

  private double[] whitened(double[] values) {
    double[] white = new double[values.length];
    for (Block block : blocks) {
      block
          .whitening()
          .apply(
              Arrays.copyOfRange(values, block.from(), block.from() + block.size()),
              white,
              block.from());
    }
    return white;
  }
}
