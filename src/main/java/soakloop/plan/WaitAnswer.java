package soakloop.plan;

import java.util.List;
import java.util.Optional;

/**
 * When the car can go again.
 *
 * @param plan the question
 * @param ways one answer for each way, in the plan's order
 * @param needs what would be needed, if no way has a window
 * @param draws cars that could do the session
 * @param lost cars that could not
 * @param keys keys that moved
 */
public record WaitAnswer(
    WaitPlan plan, List<WayAnswer> ways, Optional<Needs> needs, int draws, int lost, int keys) {
  /** Copies the list. */
  public WaitAnswer {
    ways = List.copyOf(ways);
  }

  /** Returns the same with what would be needed. */
  WaitAnswer with(Needs found) {
    return new WaitAnswer(plan, ways, Optional.of(found), draws, lost, keys);
  }

  /** Returns the way that can go first; the one whose quantile comes lowest if none can. */
  public WayAnswer best() {
    WayAnswer best = ways.get(0);
    for (WayAnswer way : ways) {
      if (isBetter(way, best)) {
        best = way;
      }
    }
    return best;
  }

  private static boolean isBetter(WayAnswer one, WayAnswer other) {
    if (one.windows().isEmpty() != other.windows().isEmpty()) {
      return other.windows().isEmpty();
    }
    return one.windows().isEmpty()
        ? one.never().orElseThrow().lowest() < other.never().orElseThrow().lowest()
        : one.windows().get(0).from() < other.windows().get(0).from();
  }
}
