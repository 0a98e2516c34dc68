package soakloop.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for the evening with the fewest actions, round by round: each plan so far goes on in every
 * way that ice and battery allow, and a few of what comes of it are gone on from.
 */
final class EveningSearch {
  /** Plans that are gone on from after each round. */
  static final int BEAM = 8;

  /** What may turn out to count: few actions, ice or charge for later rounds, a cool car. */
  private static final List<Comparator<Prefix>> WANTED =
      List.of(
          Prefix.BETTER,
          Comparator.comparingDouble((Prefix p) -> -p.last().iceLeft())
              .thenComparingDouble(Prefix::coolant),
          Comparator.comparingDouble((Prefix p) -> -p.last().batteryLeft())
              .thenComparingDouble(Prefix::coolant),
          Comparator.comparingDouble(Prefix::coolant));

  private final EveningPlan plan;
  private final EveningFleet fleet;
  private final double pumpPower;
  private final int beam;
  private int looked;

  /**
   * Sets out.
   *
   * @param fleet cars to search with
   * @param pumpPower for the battery, W
   * @param beam plans gone on from after each round
   */
  EveningSearch(EveningPlan plan, EveningFleet fleet, double pumpPower, int beam) {
    this.plan = plan;
    this.fleet = fleet;
    this.pumpPower = pumpPower;
    this.beam = beam;
  }

  /**
   * Returns plans of the whole evening, the best first.
   *
   * @param sample how the cars are read
   * @throws InterruptedException if it is broken off
   */
  List<Prefix> plans(Sample sample) throws InterruptedException {
    List<Prefix> now = List.of(Prefix.first(plan, fleet.first(), sample));
    for (int round = 0; round < plan.intervals().size(); round++) {
      List<Prefix> next = further(now);
      next.sort(Prefix.BETTER);
      boolean isLast = round == plan.intervals().size() - 1;
      now = isLast ? next : trimmed(next);
    }
    return now;
  }

  /** Returns how many rounds were run. */
  int looked() {
    return looked;
  }

  private List<Prefix> further(List<Prefix> now) throws InterruptedException {
    List<Prefix> from = new ArrayList<>();
    List<EveningFleet.Step> steps = new ArrayList<>();
    for (Prefix prefix : now) {
      for (Way way : plan.question().ways()) {
        if (prefix.allows(way, pumpPower)) {
          from.add(prefix);
          steps.add(prefix.step(way));
        }
      }
    }
    looked += steps.size();
    List<List<CarRound>> done = fleet.go(steps);
    List<Prefix> next = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      next.add(from.get(i).then(steps.get(i).way(), pumpPower, done.get(i)));
    }
    return next;
  }

  /** Keeps a few, by turns the first in each thing wanted. */
  private List<Prefix> trimmed(List<Prefix> sorted) {
    int latest = sorted.get(0).firstMiss();
    List<Prefix> left = new ArrayList<>();
    for (Prefix one : sorted) {
      boolean fits = one.firstMiss() == latest;
      if (fits && left.stream().noneMatch(better -> better.dominates(one))) {
        left.add(one);
      }
    }
    List<Prefix> kept = new ArrayList<>();
    for (int turn = 0; kept.size() < beam && !left.isEmpty(); turn++) {
      Prefix next = Collections.min(left, WANTED.get(turn % WANTED.size()));
      left.remove(next);
      kept.add(next);
    }
    return kept;
  }
}
