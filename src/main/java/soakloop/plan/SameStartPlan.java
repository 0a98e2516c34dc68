package soakloop.plan;

import java.util.List;
import soakloop.scenario.Scenario;
import soakloop.session.Phase;
import soakloop.study.StudyException;

/**
 * How far apart pulls on a dyno must be to start alike.
 *
 * @param scenario the car, the day and the session, whose first pull is done again and again
 * @param ways of waiting, at least one, none with ice
 * @param pulls that must be alike, 2 to 20
 * @param warmUps pulls before them that do not count, 0 to 5
 * @param within how far apart the starts may be, coolant into the core and charge sensor, K
 * @param confidence share of equally likely cars in which they must be, 0.5 to 0.99
 * @param horizon longest interval looked at, s
 * @param draws equally likely cars
 */
public record SameStartPlan(
    Scenario scenario,
    List<Way> ways,
    int pulls,
    int warmUps,
    double within,
    double confidence,
    double horizon,
    int draws) {
  /** Pulls if nothing is said. */
  public static final int USUAL_PULLS = 5;

  /** Cars drawn if nothing is said: a power of two, as the sequence likes. */
  public static final int USUAL_DRAWS = 64;

  /** Copies the ways. */
  public SameStartPlan {
    ways = List.copyOf(ways);
  }

  /**
   * Checks the plan.
   *
   * @throws StudyException if it cannot be asked
   */
  public SameStartPlan checked() throws StudyException {
    require(!ways.isEmpty(), "no way of waiting is left");
    require(ways.stream().allMatch(w -> w.ice() == 0), "pulls with ice between never start alike");
    require(pulls >= 2 && pulls <= 20, "pulls must be 2 to 20, not " + pulls);
    require(warmUps >= 0 && warmUps <= 5, "pulls to warm up must be 0 to 5, not " + warmUps);
    require(
        within >= 0.2 && within <= 50,
        "starts may be 0.2 to 50 K apart, in any unit of difference");
    require(
        confidence >= 0.5 && confidence <= 0.99,
        "the confidence must be from 50 % to 99 %, not " + 100 * confidence + " %");
    require(
        horizon >= WaitPlan.SHORTEST_HORIZON && horizon <= WaitPlan.LONGEST_HORIZON,
        "the horizon must be from 5 min to 12 h");
    require(
        draws >= WaitPlan.FEWEST_DRAWS,
        "draws must be " + WaitPlan.FEWEST_DRAWS + " or more, not " + draws);
    int first = firstPull(scenario.session().phases());
    require(
        first >= 0 && scenario.session().phases().get(first).kind() == Phase.Kind.PULL,
        "the session begins with no pull on a dyno, so there is none to do again");
    return this;
  }

  private static void require(boolean holds, String message) throws StudyException {
    if (!holds) {
      throw new StudyException(message);
    }
  }

  /** Returns the index of the first pull or pass; -1 if there is none. */
  static int firstPull(List<Phase> phases) {
    for (int i = 0; i < phases.size(); i++) {
      if (phases.get(i).kind().isCounted()) {
        return i;
      }
    }
    return -1;
  }
}
