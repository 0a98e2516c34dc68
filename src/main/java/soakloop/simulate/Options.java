package soakloop.simulate;

import soakloop.quantity.Require;

/**
 * How a run is computed and recorded; see the decision record on the integrator for the numbers.
 *
 * @param absoluteTolerance error allowed in each temperature per step, K
 * @param relativeTolerance the same relative to the temperature in K
 * @param pullSampling time between samples in a pull or a replay, s
 * @param waitSampling time between samples in other phases, s
 * @param mostWork work after which a run gives up: evaluations of the model times its states
 */
public record Options(
    double absoluteTolerance,
    double relativeTolerance,
    double pullSampling,
    double waitSampling,
    double mostWork) {
  /** Some minutes of computing; a usual session takes less than 1e6. */
  private static final double MOST_WORK = 1e10;

  /** What runs use if nothing else is said. */
  public static final Options DEFAULT = new Options(1e-5, 1e-8, 0.1, 0.5, MOST_WORK);

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
    return new Options(absolute, relative, pullSampling, waitSampling, mostWork);
  }

  /**
   * Returns the same with another sampling everywhere.
   *
   * @param interval s
   */
  public Options sampledEvery(double interval) {
    return new Options(absoluteTolerance, relativeTolerance, interval, interval, mostWork);
  }

  /**
   * Returns the same with another end of patience.
   *
   * @param work evaluations of the model times its states
   */
  public Options withMostWork(double work) {
    return new Options(absoluteTolerance, relativeTolerance, pullSampling, waitSampling, work);
  }
}
