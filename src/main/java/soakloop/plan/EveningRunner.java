package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import soakloop.study.StudyException;

/** Plans an evening of rounds. */
public final class EveningRunner {
  /** Cars that plans are searched with. */
  static final int FEW = 16;

  /** Plans that are checked with all cars, at the most. */
  private static final int CHECKED = 3;

  private final EveningPlan plan;
  private final int threads;
  private final int most;

  /**
   * Sets out.
   *
   * @param plan the question, checked
   * @param threads cars at a time, at least one
   */
  public EveningRunner(EveningPlan plan, int threads) {
    this(plan, threads, FEW);
  }

  /** Sets out to search with another number of cars. */
  EveningRunner(EveningPlan plan, int threads, int few) {
    this.plan = plan;
    this.threads = threads;
    this.most = few;
  }

  /**
   * Searches with a few cars and checks with all.
   *
   * @return the answer
   * @throws StudyException if hardly any of the cars can do the session
   * @throws InterruptedException if it is broken off
   */
  public EveningAnswer answer() throws StudyException, InterruptedException {
    EveningFleet all = EveningFleet.of(plan, threads);
    if (all.size() < plan.question().draws() / 2) {
      throw new StudyException(
          "only "
              + all.size()
              + " of "
              + plan.question().draws()
              + " equally likely cars can do the session; run it first and narrow the spreads");
    }
    EveningFleet few = all.few(most);
    double pumpPower = all.pumpPower();
    EveningSearch search = new EveningSearch(plan, few, pumpPower, EveningSearch.BEAM);
    List<Prefix> found = search.plans();
    Prefix best =
        few.size() == all.size()
            ? run(found.get(0), all, pumpPower)
            : checked(found, all, few, pumpPower);
    double residual =
        best.cars().stream().mapToDouble(c -> c.books().residualFraction()).max().orElse(0);
    return new EveningAnswer(
        plan,
        best.rounds(),
        all.size(),
        all.lost(),
        all.keys(),
        pumpPower,
        few.size(),
        search.looked(),
        residual);
  }

  /**
   * Runs the best plans with all cars until none of the others promises more, and returns the best.
   */
  private Prefix checked(List<Prefix> found, EveningFleet all, EveningFleet few, double pumpPower)
      throws InterruptedException {
    List<Prefix> left = new ArrayList<>(found);
    // By how much all cars' peaks are above those of the few, by round: first as in their session.
    double[] above = new double[plan.intervals().size() + 1];
    Arrays.fill(
        above,
        Prefix.first(plan, all.first()).last().peak()
            - Prefix.first(plan, few.first()).last().peak());
    List<Prefix> ran = new ArrayList<>();
    while (ran.size() < CHECKED && !left.isEmpty()) {
      double[] shift = above;
      Comparator<Prefix> promising =
          Comparator.comparing((Prefix p) -> p.shifted(shift), Prefix.BETTER);
      Prefix next = Collections.min(left, promising);
      if (!ran.isEmpty()
          && Prefix.BETTER.compare(Collections.min(ran, Prefix.BETTER), next.shifted(shift)) <= 0) {
        break;
      }
      left.remove(next);
      Prefix full = run(next, all, pumpPower);
      ran.add(full);
      above = full.above(next);
    }
    return Collections.min(ran, Prefix.BETTER);
  }

  private Prefix run(Prefix like, EveningFleet all, double pumpPower) throws InterruptedException {
    Prefix now = Prefix.first(plan, all.first());
    for (EveningRound round : like.rounds().subList(1, like.rounds().size())) {
      Way way = round.way().orElseThrow();
      now = now.then(way, pumpPower, all.go(List.of(now.step(way))).get(0));
    }
    return now;
  }
}
