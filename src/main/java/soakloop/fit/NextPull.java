package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.simulate.Setup;

/** A session with one more pull like its last, after a wait like the one before that. */
final class NextPull {
  /** How long the session goes on after the pull, so that the sensor's peak is in it, s. */
  private static final double AFTER = 30;

  private NextPull() {}

  /** Returns the longer session; empty if there is no pull to be like. */
  static Optional<Setup> of(Setup setup) {
    return changed(setup, wait -> wait, pull -> pull);
  }

  /** Changes a phase. */
  interface Change {
    Phase of(Phase phase);
  }

  /** Returns the longer session with what is added changed; empty if there is no pull. */
  static Optional<Setup> changed(Setup setup, Change wait, Change pull) {
    List<Phase> phases = new ArrayList<>(setup.session().phases());
    int last = -1;
    for (int i = 0; i < phases.size(); i++) {
      if (phases.get(i).kind().isCounted()) {
        last = i;
      }
    }
    if (last < 0) {
      return Optional.empty();
    }
    Optional<Phase> between = between(phases, last);
    // What follows the last pull is replaced by a wait like the one that led to it.
    List<Phase> longer = new ArrayList<>(phases.subList(0, last + 1));
    between.ifPresent(b -> longer.add(wait.of(named(b, "wait before the next pull"))));
    longer.add(pull.of(named(phases.get(last), "next pull")));
    between.ifPresent(b -> longer.add(lasting(named(b, "after the next pull"), AFTER)));
    return Optional.of(
        new Setup(
            setup.day(), setup.rig(), setup.start(), new Session(longer), setup.chargeLimit()));
  }

  /** Returns the wait after the last pull, else before it. */
  private static Optional<Phase> between(List<Phase> phases, int last) {
    if (last + 1 < phases.size()) {
      return Optional.of(phases.get(last + 1));
    }
    return last > 0 && phases.get(last - 1).kind() != Phase.Kind.SETTLE
        ? Optional.of(phases.get(last - 1))
        : Optional.empty();
  }

  private static Phase named(Phase phase, String name) {
    return new Phase(
        name, phase.kind(), phase.duration(), phase.drive(), phase.cooling(), phase.countedAt());
  }

  /** Returns a phase with another length. */
  static Phase lasting(Phase phase, double duration) {
    return new Phase(
        phase.name(), phase.kind(), duration, phase.drive(), phase.cooling(), phase.countedAt());
  }
}
