package soakloop.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Looks for the evening with the fewest actions, round by round: each plan so far goes on in every
 * way that ice and battery allow, and a few of what comes of it are gone on from.
 */
final class EveningSearch {
  /** Plans that are gone on from after each round. */
  static final int BEAM = 6;

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
   * @throws InterruptedException if it is broken off
   */
  List<Prefix> plans() throws InterruptedException {
    List<Prefix> now = List.of(Prefix.first(plan, fleet.first()));
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

  /** Keeps a few: by turns the coolest of the next number of actions, and the coolest of all. */
  private List<Prefix> trimmed(List<Prefix> sorted) {
    int latest = sorted.get(0).firstMiss();
    List<Prefix> left = new ArrayList<>();
    for (Prefix one : sorted) {
      boolean fits = one.firstMiss() == latest;
      if (fits && left.stream().noneMatch(better -> better.dominates(one))) {
        left.add(one);
      }
    }
    Comparator<Prefix> cooler = Comparator.comparingDouble(Prefix::coolant);
    List<Prefix> kept = new ArrayList<>();
    while (kept.size() < beam && !left.isEmpty()) {
      TreeMap<Integer, Prefix> byActions = new TreeMap<>();
      left.forEach(
          p -> byActions.merge(p.actions(), p, (a, b) -> cooler.compare(a, b) <= 0 ? a : b));
      List<Prefix> cheapFirst = new ArrayList<>(byActions.values());
      Optional<Prefix> coolest = left.stream().min(cooler);
      coolest.ifPresent(c -> cheapFirst.add(Math.min(1, cheapFirst.size()), c));
      for (Prefix one : cheapFirst) {
        if (kept.size() < beam && left.remove(one)) {
          kept.add(one);
        }
      }
    }
    return kept;
  }
}
