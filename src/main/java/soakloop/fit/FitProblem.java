package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import soakloop.log.Signal;

/**
 * Residuals whose sum of squares is least at the likeliest place: what each point reads less what
 * was foretold, made independent and of variance 1, then the place itself, which is what was
 * believed before.
 */
final class FitProblem implements LeastSquares.Residuals {
  private final FitModel model;
  private final double[] read;
  private final List<Block> blocks;

  /** Points of one signal in one case. */
  private record Block(Signal signal, int from, int size, CorrelatedError.Whitening whitening) {}

  FitProblem(FitModel model, Map<Signal, CorrelatedError> errors) {
    this.model = model;
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

  @Override
  public double[] at(double[] point) {
    return residuals(model.at(point), point);
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
    return slopes(model.slopes(point, model.at(point), false), point.length);
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
