package soakloop.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import soakloop.study.StudyException;

/** Plans an evening of rounds. */
public final class EveningRunner {
  /** Cars that plans are searched with. */
  static final int FEW = 12;

  /** Searches at the most, each corrected by what all cars gave in the last. */
  private static final int SEARCHES = 3;

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
    Prefix best = best(search, all, pumpPower);
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

  /** Searches and runs what is found with all cars, until that keeps what was promised. */
  private Prefix best(EveningSearch search, EveningFleet all, double pumpPower)
      throws InterruptedException {
    Sample sample = all.sample(most);
    List<Prefix> ran = new ArrayList<>();
    for (int i = 0; i < SEARCHES; i++) {
      Prefix promised = search.plans(sample).get(0);
      Prefix full = run(promised, all, pumpPower);
      ran.add(full);
      if (full.firstMiss() >= promised.firstMiss() && full.missed() <= promised.missed()) {
        break;
      }
      sample = sample.corrected(promised, full);
    }
    return Collections.min(ran, Prefix.BETTER);
  }

  private Prefix run(Prefix like, EveningFleet all, double pumpPower) throws InterruptedException {
    Prefix now = Prefix.first(plan, all.first(), all.sample(all.size()));
    for (EveningRound round : like.rounds().subList(1, like.rounds().size())) {
      Way way = round.way().orElseThrow();
      now = now.then(way, pumpPower, all.go(List.of(now.step(way))).get(0));
    }
    return now;
  }
}
