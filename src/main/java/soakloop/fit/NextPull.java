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
    List<Phase> between = between(phases, last);
    // What follows the last pull is replaced by what led to it: a wait, around a pass some more.
    List<Phase> longer = new ArrayList<>(phases.subList(0, last + 1));
    for (Phase phase : between) {
      if (between.size() == 1) {
        longer.add(wait.of(named(phase, "wait before the next pull")));
      } else {
        longer.add(phase.kind() == Phase.Kind.WAIT ? wait.of(phase) : phase);
      }
    }
    Phase again = phases.get(last);
    longer.add(pull.of(named(again, "next " + word(again))));
    between.stream()
        .findFirst()
        .ifPresent(b -> longer.add(lasting(named(b, "after the next " + word(again)), AFTER)));
    return Optional.of(
        new Setup(
            setup.day(), setup.rig(), setup.start(), new Session(longer), setup.chargeLimit()));
  }

  private static String word(Phase phase) {
    return phase.kind() == Phase.Kind.PASS ? "pass" : "pull";
  }

  /**
   * Returns the wait after the last pull, else before it; with a pass all that leads from one to
   * the next, from the shutdown to the staging.
   */
  private static List<Phase> between(List<Phase> phases, int last) {
    if (phases.get(last).kind() != Phase.Kind.PASS) {
      if (last + 1 < phases.size()) {
        return List.of(phases.get(last + 1));
      }
      return last > 0 && phases.get(last - 1).kind() != Phase.Kind.SETTLE
          ? List.of(phases.get(last - 1))
          : List.of();
    }
    int before = last - 1;
    while (before >= 0 && !phases.get(before).kind().isCounted()) {
      before--;
    }
    List<Phase> between = new ArrayList<>();
    if (before < 0) {
      between.addAll(phases.subList(last + 1, phases.size()));
    }
    between.addAll(phases.subList(before + 1, last));
    between.removeIf(phase -> phase.kind() == Phase.Kind.SETTLE);
    return between;
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
