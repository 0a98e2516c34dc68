package soakloop.fit;

import java.util.Arrays;
import soakloop.log.Signal;

/** What a log says of one signal, drawn together to points that a model is held against. */
final class SignalData {
  private final Signal signal;
  private final double[] times;
  private final double[] values;
  private final double[] noise;

  /**
   * Makes it.
   *
   * @param signal which; a trace has a channel of it
   * @param times session time, s, rising
   * @param values SI
   * @param noise standard deviation of each point's own noise, SI
   */
  SignalData(Signal signal, double[] times, double[] values, double[] noise) {
    this.signal = signal;
    this.times = times.clone();
    this.values = values.clone();
    this.noise = noise.clone();
  }

  Signal signal() {
    return signal;
  }

  int size() {
    return times.length;
  }

  double time(int i) {
    return times[i];
  }

  double value(int i) {
    return values[i];
  }

  double[] values() {
    return values.clone();
  }

  /** Makes the filter of an error over these points. */
  CorrelatedError.Whitening whitening(CorrelatedError error) {
    return error.whitening(times, noise);
  }

  /** Returns the points before a time. */
  SignalData before(double time) {
    int n = 0;
    while (n < times.length && times[n] < time) {
      n++;
    }
    return new SignalData(
        signal, Arrays.copyOf(times, n), Arrays.copyOf(values, n), Arrays.copyOf(noise, n));
  }
}
