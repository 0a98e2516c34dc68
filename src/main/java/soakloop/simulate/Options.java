package soakloop.simulate;

import soakloop.quantity.Require;

/**
 * How a run is computed and recorded; see the decision record on the integrator for the numbers.
 *
 * @param absoluteTolerance error allowed in each temperature per step, K
 * @param relativeTolerance the same relative to the temperature in K
 * @param pullSampling time between samples in a pull or a replay, s
 * @param waitSampling time between samples in other phases, s; their first three seconds, in which
 *     temperatures still turn, are sampled as a pull if that is closer
 * @param explicit whether Hipparchus' explicit Dormand-Prince 5(4) integrates, as a check
 * @param mostWork work after which a run gives up: evaluations of the model times its states
 */
public record Options(
    double absoluteTolerance,
    double relativeTolerance,
    double pullSampling,
    double waitSampling,
    boolean explicit,
    double mostWork) {
  /** Some minutes of computing; a usual session takes 1e5. */
  private static final double MOST_WORK = 1e10;

  /** What runs use if nothing else is said. */
  public static final Options DEFAULT = new Options(0.01, 0, 0.1, 1, false, MOST_WORK);

  /**
   * What a study's many runs use: the same steps, sampled closely enough for the readings of pulls.
   */
  public static final Options STUDY = new Options(0.01, 0, 0.25, 5, false, MOST_WORK);

  /** Checks the parts. */
  public Options {
    Require.positive("absolute tolerance", absoluteTolerance);
    Require.notNegative("relative tolerance", relativeTolerance);
    Require.positive("sampling in pulls", pullSampling);
    Require.positive("sampling in waits", waitSampling);
    Require.positive("most work", mostWork);
  }

  /**
   * Returns the same with other tolerances.
   *
   * @param absolute K
   * @param relative of the temperature in K
   */
  public Options withTolerances(double absolute, double relative) {
    return new Options(absolute, relative, pullSampling, waitSampling, explicit, mostWork);
  }

  /**
   * Returns the same with another sampling everywhere.
   *
   * @param interval s
   */
  public Options sampledEvery(double interval) {
    return new Options(
        absoluteTolerance, relativeTolerance, interval, interval, explicit, mostWork);
  }

  /**
   * Returns the same for the explicit integrator. Stability bounds its steps, so that a tight
   * tolerance costs it nothing.
   */
  public Options explicitly() {
    return new Options(1e-5, 1e-8, pullSampling, waitSampling, true, mostWork);
  }

  /**
   * Returns the same with another end of patience.
   *
   * @param work evaluations of the model times its states
   */
  public Options withMostWork(double work) {
    return new Options(
        absoluteTolerance, relativeTolerance, pullSampling, waitSampling, explicit, work);
  }
}
