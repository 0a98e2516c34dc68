package soakloop.fit;

import soakloop.log.Signal;
import soakloop.quantity.Require;

/**
 * How a model's error and a sensor's noise hang together in time: an error of the model that
 * persists (an Ornstein-Uhlenbeck process: normal, fading exponentially in time) and a noise of
 * each reading by itself.
 *
 * <p>Twenty readings a second are then not twenty pieces of news: readings closer than the error's
 * time tell the same thing again.
 *
 * @param deviation standard deviation of the model's error, K, above 0
 * @param time in which it fades to 1/e, s, above 0
 */
record CorrelatedError(double deviation, double time) {
  /**
   * No lumped model of a car is taken to be better than this: logs of one day show less of its
   * error than the next one will. Coolant comes out worse than the charge air, because a mixed
   * reservoir passes a slug of heat on in another shape than a real one, by up to 1 K for some
   * seconds. Our own judgement, not published, made on invented days other than those that the
   * coverage in {@code validation/fit} is counted on.
   */
  private static final double LEAST_OF_CHARGE = 0.2;

  private static final double LEAST_OF_OTHERS = 0.6;

  /**
   * Least and most time that a model's error lasts, s: some seconds, and about the time that the
   * loop goes around. Were it allowed to last longer, a small steady offset would stand for all of
   * it, and what the model gets wrong in shape would pass for news of the car.
   */
  private static final double SHORTEST = 10;

  private static final double LONGEST = 25;

  CorrelatedError {
    Require.positive("deviation of the model error", deviation);
    Require.positive("time of the model error", time);
  }

  /** No error is taken to be larger, K, or to last longer, s. */
  static final CorrelatedError MOST = new CorrelatedError(50, LONGEST);

  /**
   * Returns the least error that a lumped model may be taken to have, and the least time of it.
   *
   * @param signal of which
   */
  static CorrelatedError least(Signal signal) {
    return new CorrelatedError(
        signal == Signal.CHARGE_TEMPERATURE ? LEAST_OF_CHARGE : LEAST_OF_OTHERS, SHORTEST);
  }

  /**
   * Returns the nearest error that a lumped model may be taken to have.
   *
   * @param signal of which
   */
  CorrelatedError within(Signal signal) {
    CorrelatedError least = least(signal);
    return new CorrelatedError(
        Math.max(least.deviation(), Math.min(MOST.deviation(), deviation)),
        Math.max(least.time(), Math.min(MOST.time(), time)));
  }

  /**
   * Returns the error to weigh readings of pulls with that are all alike. A model that gets a pull
   * wrong gets the next one wrong in the same way; ten pulls then tell no more of its error than
   * one does, so its variance counts as often.
   *
   * @param times how many pulls
   */
  CorrelatedError repeated(int times) {
    return new CorrelatedError(deviation * Math.sqrt(Math.max(1, times)), time);
  }

  /**
   * Makes the filter that turns residuals into independent ones of variance 1: each less what those
   * before it foretold (a scalar Kalman filter), over its standard deviation. It is linear.
   *
   * @param times s, never falling
   * @param noise standard deviation of each reading's own noise, K
   */
  Whitening whitening(double[] times, double[] noise) {
    int n = times.length;
    double[] fade = new double[n];
    double[] gain = new double[n];
    double[] spread = new double[n];
    double known = deviation * deviation;
    double logDeterminant = 0;
    for (int i = 0; i < n; i++) {
      fade[i] = i == 0 ? 0 : Math.exp(-(times[i] - times[i - 1]) / time);
      double kept = fade[i] * fade[i];
      known = i == 0 ? known : kept * known + deviation * deviation * (1 - kept);
      double variance = known + noise[i] * noise[i];
      gain[i] = known / variance;
      spread[i] = Math.sqrt(variance);
      known *= 1 - gain[i];
      logDeterminant += Math.log(variance);
    }
    return new Whitening(fade, gain, spread, logDeterminant);
  }

  /** The filter for one row of readings. */
  static final class Whitening {
    private final double[] fade;
    private final double[] gain;
    private final double[] spread;
    private final double logDeterminant;

    /**
     * Makes it.
     *
     * @param fade what is left of the error since the reading before
     * @param gain how far a reading is believed
     * @param spread standard deviation of a reading about what was foretold
     * @param logDeterminant of the readings' covariance
     */
    private Whitening(double[] fade, double[] gain, double[] spread, double logDeterminant) {
      this.fade = fade;
      this.gain = gain;
      this.spread = spread;
      this.logDeterminant = logDeterminant;
    }

    double logDeterminant() {
      return logDeterminant;
    }

    /** Writes the filtered residuals into a longer row from an index on. */
    void apply(double[] residuals, double[] into, int from) {
      double error = 0;
      for (int i = 0; i < residuals.length; i++) {
        error *= fade[i];
        double news = residuals[i] - error;
        error += gain[i] * news;
        into[from + i] = news / spread[i];
      }
    }
  }
}
