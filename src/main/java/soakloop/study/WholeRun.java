package soakloop.study;

import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * The charge sensor over all of a run that the log covers, modelled and logged.
 *
 * @param modelled what the model's sensor shows
 * @param logged what the log shows
 */
public record WholeRun(Course modelled, Course logged) {
  /**
   * A temperature over a run.
   *
   * @param start first value, K
   * @param end last value, K
   * @param peak highest value, K
   * @param overLimit time above the limit, s; 0 without a limit
   */
  public record Course(double start, double end, double peak, double overLimit) {}

  /**
   * Reads both over the time that both cover, from the session's time zero.
   *
   * @param trace the simulated run
   * @param logged the log with its place in time
   * @param limit charge temperature that must not be passed, K
   * @return empty if the log has no charge temperature there
   */
  static Optional<WholeRun> of(Trace trace, Scenario.Logged logged, OptionalDouble limit) {
    Optional<Polyline> line = Polyline.of(logged, Signal.CHARGE_TEMPERATURE);
    if (line.isEmpty()) {
      return Optional.empty();
    }
    double from = Math.max(0, Math.max(line.get().startTime(), trace.time(0)));
    double to = Math.min(line.get().endTime(), trace.time(trace.size() - 1));
    if (!(to > from)) {
      return Optional.empty();
    }
    return Optional.of(
        new WholeRun(
            course(Polyline.of(trace, Channel.SENSOR).between(from, to), limit),
            course(line.get().between(from, to), limit)));
  }

  private static Course course(Polyline line, OptionalDouble limit) {
    return new Course(
        line.first(),
        line.last(),
        line.highest(),
        limit.isPresent() ? line.timeAbove(limit.getAsDouble()) : 0);
  }
}
