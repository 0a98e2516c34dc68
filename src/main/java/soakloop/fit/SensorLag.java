package soakloop.fit;

import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * What a sensor of first order shows of a channel of a trace that is straight between its samples,
 * having come to rest at the first.
 *
 * <p>Equation: tau ds/dt = x - s; over a stretch of length h on which x goes from a to b, s(h) = b
 * - m tau + (s(0) - a + m tau) exp(-h / tau), m = (b - a) / h (exact; PHYSICS of a ramp through a
 * first-order sensor is the same with s(0) = a).
 */
final class SensorLag {
  private SensorLag() {}

  /**
   * Returns what the sensor shows.
   *
   * @param trace of the run
   * @param data at whose points it is wanted
   * @param lag s; 0 for a sensor that shows what is
   */
  static double[] of(Trace trace, SignalData data, double lag) {
    Channel channel = data.signal().channel().orElseThrow();
    double[] shown = new double[data.size()];
    if (!(lag > 0)) {
      for (int i = 0; i < shown.length; i++) {
        shown[i] = trace.at(channel, data.time(i));
      }
      return shown;
    }
    int sample = 0;
    double time = trace.time(0);
    double true0 = trace.value(channel, 0);
    double sensor = true0;
    for (int i = 0; i < shown.length; i++) {
      double wanted = data.time(i);
      while (sample + 1 < trace.size() && trace.time(sample + 1) <= wanted) {
        sample++;
        double next = trace.value(channel, sample);
        sensor = after(sensor, true0, next, trace.time(sample) - time, lag);
        time = trace.time(sample);
        true0 = next;
      }
      double here = trace.at(channel, wanted);
      shown[i] = after(sensor, true0, here, wanted - time, lag);
    }
    return shown;
  }

  private static double after(double sensor, double from, double to, double step, double lag) {
    if (!(step > 0)) {
      return sensor;
    }
    double behind = (to - from) / step * lag;
    return to - behind + (sensor - from + behind) * Math.exp(-step / lag);
  }
}
