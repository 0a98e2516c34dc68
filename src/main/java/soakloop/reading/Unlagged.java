package soakloop.reading;

import java.util.Optional;
import soakloop.quantity.Estimate;

/**
 * What a sensor of first order would show without its lag.
 *
 * <p>Equation: T = Ts + tau dTs/dt, from tau dTs/dt = T - Ts. Reading and slope come from a
 * parabola (a line through fewer than eight updates) by least squares over the seconds before and
 * just after the moment, at the times of true updates.
 *
 * @param value K
 * @param noise half width of its 90 % interval from noise and steps, K
 * @param lag the same from what is not known of the lag, K
 */
record Unlagged(double value, double noise, double lag) {
  /** Standard deviations to the end of a 90 % interval of a normal distribution. */
  private static final double NINETY = 1.645;

  /** Seconds looked at before the moment and after it: long beside steps, short beside a pull. */
  private static final double BEFORE = 3;

  private static final double AFTER = 1.5;

  /** Updates that must be there. */
  private static final int FEWEST = 3;

  private static final int FEWEST_FOR_PARABOLA = 8;

  /**
   * Reads a channel.
   *
   * @param channel which
   * @param when s
   * @param from updates before it do not count, s
   * @param to updates after it do not count, s
   * @param lag time constant, s
   * @return empty if there are too few updates
   */
  static Optional<Unlagged> of(Channel channel, double when, double from, double to, Estimate lag) {
    double slow = 2 * channel.updates().spacing();
    double start = Math.max(from, when - Math.max(BEFORE, slow));
    double end = Math.min(to, when + Math.max(AFTER, slow));
    Updates window = channel.updates().between(start, end);
    if (window.size() < FEWEST) {
      return Optional.empty();
    }
    int degree = window.size() >= FEWEST_FOR_PARABOLA ? 2 : 1;
    return LeastSquares.fit(window, LeastSquares.powers(when, degree))
        .map(fit -> corrected(fit, channel.deviation(), lag));
  }

  private static Unlagged corrected(LeastSquares.Fit fit, double deviation, Estimate lag) {
    double tau = lag.value();
    double shape = fit.shape(0, 0) + 2 * tau * fit.shape(0, 1) + tau * tau * fit.shape(1, 1);
    double variance = Math.max(deviation * deviation, fit.variance());
    return new Unlagged(
        fit.factor(0) + tau * fit.factor(1),
        NINETY * Math.sqrt(variance * Math.max(0, shape)),
        lag.spread() * Math.abs(fit.factor(1)));
  }
}
