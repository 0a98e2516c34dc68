package soakloop.study;

import java.util.List;

/**
 * The answer of a plan.
 *
 * @param plan what was asked
 * @param own the result of the scenario as it is, SI
 * @param keys what moves the result, furthest first
 * @param design how the first keys were moved together
 */
public record Ranking(RankPlan plan, double own, List<Moved> keys, Design design) {
  /**
   * How the first keys were moved together.
   *
   * @param runs all that were made for it; 0 if nothing was asked, or nothing moves the result
   * @param failed those that could not finish
   * @param reason the first that failed says why; empty if none did
   * @param points those of the sample that are whole, from which the indices were taken
   */
  public record Design(int runs, int failed, String reason, int points) {
    /** Nothing was done. */
    static final Design NONE = new Design(0, 0, "", 0);
  }

  /** Copies the list. */
  public Ranking {
    keys = List.copyOf(keys);
  }

  /** Returns the keys that were also moved together and gave indices. */
  public List<Moved> together() {
    return keys.stream().filter(k -> k.indices().isPresent()).toList();
  }

  /** Returns the keys of which an end could not be run. */
  public List<Moved> broken() {
    return keys.stream()
        .filter(k -> k.low().change().isEmpty() || k.high().change().isEmpty())
        .toList();
  }
}
