package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.IceAdded;
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
  private final Phase pull;
  private final Phase startUp;
  private final List<Phase> again;
  private final int lead;
  private final Errors errors;
  private final double iceBelow;
  private final boolean drains;
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
    List<Phase> phases = setup.session().phases();
    int last = WaitPlan.lastPull(phases);
    this.rig = setup.rig();
    this.pull = phases.get(last);
    this.startUp = idle("start-up", WaitPlan.START_UP);
    Around around = Around.of(phases, last);
    this.lead = around.lead().size();
    this.again = new ArrayList<>(around.lead());
    again.add(pull);
    again.add(idle("after the pull", WaitPlan.AFTER));
    this.errors = errors;
    this.iceBelow = iceBelow;
    this.drains = phases.stream().anyMatch(p -> p.ice().filter(IceAdded::drains).isPresent());
    this.car = Simulation.of(setup);
    List<Phase> before = new ArrayList<>(phases.subList(0, last + 1));
    before.addAll(around.back());
    this.after = car.runOn(car.start(), before, Running.SESSION).end();
  }

  private Phase idle(String name, double seconds) {
    return new Phase(
        name,
        Phase.Kind.IDLE,
        seconds,
        new Drive.Idle(rig.engine().idleSpeed()),
        Cooling.ALL,
        OptionalDouble.empty());
  }

  /**
   * Waits once in a way.
   *
   * @param times whole waits after which the car may go, s, rising, not below the way's shortest
   * @throws SimulationException if it cannot
   */
  void waitIn(Way way, double[] times) throws SimulationException {
    double[] at = Arrays.stream(times).map(t -> t - way.startUp()).toArray();
    waits.put(way, new KeptWait(car, rig, way, drains, after, at, iceBelow));
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
        ready = car.runOn(ready, List.of(startUp), Running.WAIT).end();
      }
      Trace trace = car.runOn(ready, again, Running.PULL).trace();
      Trace.Span span = trace.spans().get(lead);
      return new Go(
          highest(trace, Channel.CHARGE, span.start(), span.end()) + errors.charge(),
          highest(
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

  /** Returns the highest value of a pull: where phases meet, the sample that is the pull's. */
  private static double highest(Trace trace, Channel channel, double from, double to) {
    double highest = Double.NEGATIVE_INFINITY;
    int end = to > trace.time(trace.size() - 1) ? trace.size() : trace.firstFrom(to) + 1;
    int start = trace.firstFrom(from);
    if (start + 1 < end && trace.time(start + 1) == trace.time(start)) {
      start++;
    }
    for (int i = start; i < end; i++) {
      highest = Math.max(highest, trace.value(channel, i));
    }
    return highest;
  }
}
