package soakloop.plan;

import soakloop.simulate.Options;

/**
 * How plans compute their many stretches: wider steps than a run's and few samples, which moves a
 * peak by less than 0.15 K ({@code WaitTest}).
 */
final class Running {
  /** A session whose trace is not looked at. */
  static final Options SESSION = of(0.02, 1, 60);

  /** A wait, whose reservoir is looked at. */
  static final Options WAIT = of(0.03, 1, 15);

  /** A pull and the seconds after it; its few seconds leave no time for errors to grow. */
  static final Options PULL = of(0.1, 0.25, 1);

  /** A pull with the minutes before and after it, of which only the pull is looked at. */
  static final Options ROUND = of(0.1, 0.25, 60);

  private Running() {}

  private static Options of(double tolerance, double pullSampling, double waitSampling) {
    return new Options(tolerance, 0, pullSampling, waitSampling, false, 1e9);
  }
}
