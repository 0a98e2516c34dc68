package soakloop.fit;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * What a probe's readings of a session tell of keys: J'C^-1 J, with the slopes J of what it shows
 * and the covariance C of what it is off by. What it reads wrong throughout is allowed for, and an
 * error of the model that comes back in every pull counts once.
 *
 * @param traces the session at the likeliest place, then with each key moved up and down
 * @param step by how much each is moved
 * @param from time from which readings count, s
 * @param to time to which they do, s
 * @param pulls how many pulls lie in between
 */
record ProbeNews(List<Trace> traces, double step, double from, double to, int pulls) {
  /** Time between readings that are counted, s: the model's error fades no faster. */
  private static final double EVERY = 5;

  /**
   * Works it out.
   *
   * @param probe what reads
   * @param modelError of what it shows; of a flow, that of its noise is taken
   * @param shift what the probe reads high for a key moved by a step, K, as a key of its own may
   */
  RealMatrix of(
      Probe probe, CorrelatedError modelError, ToDoubleBiFunction<Integer, Double> shift) {
    Trace own = traces.get(0);
    int keys = (traces.size() - 1) / 2;
    int count = (int) Math.max(1, Math.floor((to - from) / EVERY));
    double[] times = new double[count];
    double[] noise = new double[count];
    double[] wrong = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = from + i * EVERY;
      double size = probe.ofReading() ? Math.abs(own.at(probe.channel(), times[i])) : 1;
      noise[i] = Math.max(probe.noise() * size, 1e-12);
      wrong[i] = probe.bias() * size;
    }
    CorrelatedError error =
        probe.ofReading() ? new CorrelatedError(noise[0], Evidence.USUAL.time()) : modelError;
    CorrelatedError.Whitening whitening = error.repeated(pulls).whitening(times, noise);
    RealMatrix white = new Array2DRowRealMatrix(count, keys);
    for (int k = 0; k < keys; k++) {
      double shifted = shift.applyAsDouble(k, step) - shift.applyAsDouble(k, -step);
      white.setColumn(k, slope(probe.channel(), k, times, shifted, whitening));
    }
    RealMatrix news = white.transposeMultiply(white);
    double[] shifted = new double[count];
    whitening.apply(wrong, shifted, 0);
    RealVector throughout = new ArrayRealVector(shifted, false);
    RealVector mixed = white.preMultiply(throughout);
    return news.subtract(
        mixed.outerProduct(mixed).scalarMultiply(1 / (1 + throughout.dotProduct(throughout))));
  }

  private double[] slope(
      Channel channel, int key, double[] times, double shift, CorrelatedError.Whitening whitening) {
    Trace up = traces.get(1 + 2 * key);
    Trace down = traces.get(2 + 2 * key);
    double[] slope = new double[times.length];
    Arrays.setAll(
        slope, i -> (up.at(channel, times[i]) - down.at(channel, times[i]) + shift) / (2 * step));
    double[] white = new double[times.length];
    whitening.apply(slope, white, 0);
    return white;
  }
}
