package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.IceAdded;
import soakloop.session.Phase;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** A session's last pull or pass, to be done again: what leads up to it and what is read off it. */
final class PullAgain {
  private final Rig rig;
  private final Phase pull;
  private final Around around;
  private final boolean drains;
  private final List<Phase> before;

  /**
   * Reads it off a session.
   *
   * @param rig the car's
   * @param phases the session's; one of them is a pull or pass
   */
  PullAgain(Rig rig, List<Phase> phases) {
    int last = WaitPlan.lastPull(phases);
    this.rig = rig;
    this.pull = phases.get(last);
    this.around = Around.of(phases, last);
    this.drains = phases.stream().anyMatch(p -> p.ice().filter(IceAdded::drains).isPresent());
    this.before = new ArrayList<>(phases.subList(0, last + 1));
    before.addAll(around.back());
  }

  /** Returns the session up to the end of its last pull, or to the pit after its last pass. */
  List<Phase> before() {
    return List.copyOf(before);
  }

  /** Returns whether the water of earlier ice is drained off before ice goes in. */
  boolean drains() {
    return drains;
  }

  /** Returns what leads up to the pull, and the pull. */
  List<Phase> again() {
    List<Phase> again = new ArrayList<>(around.lead());
    again.add(pull);
    return again;
  }

  /** Returns the same and the way back from it. */
  List<Phase> andBack() {
    List<Phase> again = again();
    again.addAll(around.back());
    return again;
  }

  /** Returns where in a trace of {@link #again} the pull is. */
  Trace.Span span(Trace trace) {
    return trace.spans().get(around.lead().size());
  }

  /** Returns an idle with a cooling. */
  Phase idle(String name, double seconds, Cooling cooling) {
    return new Phase(
        name,
        Phase.Kind.IDLE,
        seconds,
        new Drive.Idle(rig.engine().idleSpeed()),
        cooling,
        OptionalDouble.empty());
  }

  /** Returns the highest value of a pull: where phases meet, the sample that is the pull's. */
  static double highest(Trace trace, Channel channel, double from, double to) {
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
