package soakloop.plan;

import java.util.List;
import soakloop.session.Phase;

/**
 * What belongs to doing a pull again. A pull stands by itself; around a pass there is the way back
 * from it, up to the pit, and what leads from the pit to the next: lanes, burnout, staging.
 *
 * @param back after the last pull or pass, before the wait
 * @param lead after the wait, before the next
 */
record Around(List<Phase> back, List<Phase> lead) {
  Around {
    back = List.copyOf(back);
    lead = List.copyOf(lead);
  }

  /**
   * Reads it off a session.
   *
   * @param phases all of it
   * @param last index of its last pull or pass
   */
  static Around of(List<Phase> phases, int last) {
    if (phases.get(last).kind() != Phase.Kind.PASS) {
      return new Around(List.of(), List.of());
    }
    int wait = last + 1;
    while (wait < phases.size() && phases.get(wait).kind() != Phase.Kind.WAIT) {
      wait++;
    }
    int first = last;
    while (first > 0 && isOfTheWay(phases.get(first - 1))) {
      first--;
    }
    return new Around(phases.subList(last + 1, wait), phases.subList(first, last));
  }

  private static boolean isOfTheWay(Phase phase) {
    return switch (phase.kind()) {
      case IDLE, CRUISE, REPLAY -> true;
      case SETTLE, PULL, PASS, WAIT -> false;
    };
  }
}
