package soakloop.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Phase;
import soakloop.simulate.CarState;
import soakloop.simulate.Channel;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * One drawn car that has done its session up to the end of its last pull, or to the pit after its
 * last pass: it waits once in each way and can then go after any wait. Not thread-safe.
 */
final class WaitingCar {
  private final Rig rig;
  private final Simulation car;
  private final CarState after;
  private final PullAgain pull;
  private final List<Phase> again;
  private final Errors errors;
  private final double iceBelow;
  private final Map<Way, KeptWait> waits = new HashMap<>();

  /**
   * What is wrong about one car and its gauges.
   *
   * @param charge true charge above the modelled one, K
   * @param sensor the charge sensor above the charge it stands in, K
   * @param coolant the coolant gauge above the modelled coolant, K
   */
  record Errors(double charge, double sensor, double coolant) {
    static final Errors NONE = new Errors(0, 0, 0);
  }

  /**
   * Runs a car's session up to the end of its last pull.
   *
   * @param setup the car; its session has a pull
   * @param errors what is wrong about it
   * @param iceBelow reservoir temperature at which ice goes in, K
   * @throws SimulationException if it cannot
   */
  WaitingCar(Setup setup, Errors errors, double iceBelow) throws SimulationException {
    this.rig = setup.rig();
    this.pull = new PullAgain(rig, setup.session().phases());
    this.again = pull.again();
    again.add(pull.idle("after the pull", WaitPlan.AFTER, Cooling.ALL));
    this.errors = errors;
    this.iceBelow = iceBelow;
    this.car = Simulation.of(setup);
    this.after = car.runOn(car.start(), pull.before(), Running.SESSION).end();
  }

  /**
   * Waits once in a way.
   *
   * @param times whole waits after which the car may go, s, rising, not below the way's shortest
   * @throws SimulationException if it cannot
   */
  void waitIn(Way way, double[] times) throws SimulationException {
    double[] at = Arrays.stream(times).map(t -> t - way.startUp()).toArray();
    waits.put(way, new KeptWait(car, rig, way, pull.drains(), after, at, iceBelow));
  }

  /** Returns when ice went in during a wait, s from the pull's end; empty if none did. */
  OptionalDouble icedAt(Way way) {
    KeptWait wait = waits.get(way);
    return wait == null ? OptionalDouble.empty() : wait.icedAt();
  }

  /**
   * Goes after a wait.
   *
   * @param way one that was waited in
   * @param wait from the last pull's end to the next one's start, or in the pit between passes, s
   */
  Go go(Way way, double wait) {
    KeptWait waited = waits.get(way);
    if (waited == null) {
      return Go.FAILED;
    }
    try {
      CarState ready = waited.at(wait - way.startUp());
      if (way.startUp() > 0) {
        Phase startUp = pull.idle("start-up", way.startUp(), Cooling.ALL);
        ready = car.runOn(ready, List.of(startUp), Running.WAIT).end();
      }
      Trace trace = car.runOn(ready, again, Running.PULL).trace();
      Trace.Span span = pull.span(trace);
      return new Go(
          PullAgain.highest(trace, Channel.CHARGE, span.start(), span.end()) + errors.charge(),
          PullAgain.highest(
                  trace,
                  Channel.SENSOR,
                  0.5 * (span.start() + span.end()),
                  Double.POSITIVE_INFINITY)
              + errors.charge()
              + errors.sensor(),
          trace.value(Channel.CORE_COOLANT_IN, 0) + errors.coolant());
    } catch (SimulationException e) {
      return Go.FAILED;
    }
  }
}
