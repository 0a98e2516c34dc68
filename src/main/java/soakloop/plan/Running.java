package soakloop.plan;

import soakloop.simulate.Options;

/**
 * How plans compute their many stretches: steps ten times as wide as a run's, which moves a peak by
 * some hundredths of a kelvin ({@code WaitTest} holds it under 0.1 K), and few samples.
 */
final class Running {
  private static final double TOLERANCE = 0.1;

  /** A session whose trace is not looked at. */
  static final Options SESSION = of(1, 60);

  /** A wait, whose reservoir is looked at. */
  static final Options WAIT = of(1, 15);

  /** A pull and the seconds after it. */
  static final Options PULL = of(0.5, 1);

  private Running() {}

  private static Options of(double pullSampling, double waitSampling) {
    return new Options(TOLERANCE, 0, pullSampling, waitSampling, false, 1e9);
  }
}
