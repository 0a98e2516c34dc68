package soakloop.plan;

import java.util.List;
import java.util.Optional;

/**
 * A planned evening.
 *
 * @param plan the question
 * @param rounds all of them, from the session's last pull on
 * @param draws cars that could do the session
 * @param lost cars that could not
 * @param keys keys that moved
 * @param pumpPower taken for the battery, W
 * @param searched cars that plans were searched with; the plan told is checked with all
 * @param looked rounds that were run in the search, each with all the cars searched with
 * @param residual largest share of all heat moved by which the books of a car do not close
 */
public record EveningAnswer(
    EveningPlan plan,
    List<EveningRound> rounds,
    int draws,
    int lost,
    int keys,
    double pumpPower,
    int searched,
    int looked,
    double residual) {
  /** Copies the list. */
  public EveningAnswer {
    rounds = List.copyOf(rounds);
  }

  /** Returns the first round that does not keep the limit; empty if all do. */
  public Optional<EveningRound> firstMiss() {
    return firstMiss(0);
  }

  /** Returns the first of the planned rounds that does not; empty if all of those do. */
  public Optional<EveningRound> firstPlannedMiss() {
    return firstMiss(1);
  }

  private Optional<EveningRound> firstMiss(int from) {
    return rounds.stream().skip(from).filter(r -> r.peak() > plan.question().limit()).findFirst();
  }

  /** Returns how many things are done in all. */
  public int actions() {
    return rounds.stream().mapToInt(EveningRound::actions).sum();
  }
}
