package soakloop.fit;

import soakloop.log.Signal;

/** What a fitted key moves. */
public sealed interface Role {
  /** A value of the scenario. */
  record OfScenario() implements Role {}

  /**
   * By how much a sensor reads high throughout.
   *
   * @param signal the sensor's
   */
  record Bias(Signal signal) implements Role {}

  /**
   * The time in which a sensor shows 63 % of a step. The charge sensor has one in the scenario.
   *
   * @param signal the sensor's
   */
  record Lag(Signal signal) implements Role {}
}
