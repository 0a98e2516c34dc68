package soakloop.session;

import java.util.List;

/**
 * What the car does from start to end.
 *
 * @param phases in order, at least one; only the first may settle
 */
public record Session(List<Phase> phases) {
  /** Checks the phases. */
  public Session {
    phases = List.copyOf(phases);
    if (phases.isEmpty()) {
      throw new IllegalArgumentException("a session needs at least one phase");
    }
    for (Phase phase : phases.subList(1, phases.size())) {
      if (phase.kind() == Phase.Kind.SETTLE) {
        throw new IllegalArgumentException("only the first phase of a session may settle");
      }
    }
  }

  /** Returns the time at which the session starts, s: before zero if it settles first. */
  public double startTime() {
    Phase first = phases.get(0);
    return first.kind() == Phase.Kind.SETTLE ? -first.duration() : 0;
  }

  /** Returns the time at which the session ends, s. */
  public double endTime() {
    return startTime() + phases.stream().mapToDouble(Phase::duration).sum();
  }
}
