package soakloop.study;

import java.util.List;
import soakloop.scenario.Scenario;

/**
 * What is to be ranked, and by what.
 *
 * @param scenario whose keys
 * @param measure the result that they move
 * @param top how many of the first keys are also moved together; 0 for none
 * @param keys all that carry a spread, at least one
 */
public record RankPlan(Scenario scenario, Measure measure, int top, List<UncertainKey> keys) {
  /** How many keys are moved together if nothing is said. */
  public static final int USUAL_TOP = 8;

  /** Most keys that can be moved together. */
  public static final int MOST_TOP = 100;

  /**
   * Points of each sample in which the first keys are moved together: a power of two, as the Sobol
   * sequence likes. That makes 128 times two more than the keys runs.
   */
  public static final int POINTS = 128;

  /** Copies the list. */
  public RankPlan {
    keys = List.copyOf(keys);
  }

  /**
   * Makes a plan.
   *
   * @param scenario whose keys are ranked
   * @param result word of a {@link Measure}
   * @param top how many of the first keys are also moved together, 0 to {@link #MOST_TOP}
   * @throws StudyException if it cannot be asked of the scenario
   */
  public static RankPlan of(Scenario scenario, String result, int top) throws StudyException {
    Measure measure = Measure.of(result, scenario);
    if (!(top >= 0 && top <= MOST_TOP)) {
      throw new StudyException("keys to move together must be 0 to " + MOST_TOP + ", not " + top);
    }
    if (scenario.session().phases().stream().noneMatch(p -> p.kind().isCounted())) {
      throw new StudyException("the session has no pull, so there is no result to rank by");
    }
    List<UncertainKey> keys = UncertainKeys.of(scenario);
    if (keys.isEmpty()) {
      throw new StudyException(
          "no key of the scenario has a spread, so there is nothing to rank; write one as in"
              + " 'conductance: 150 W/K +/- 30 %'");
    }
    return new RankPlan(scenario, measure, top, keys);
  }
}
