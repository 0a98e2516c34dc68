package soakloop.plan;

import java.util.List;
import java.util.OptionalDouble;
import soakloop.scenario.Scenario;
import soakloop.session.Phase;
import soakloop.study.StudyException;

/**
 * When the car can go again after its session's last pull or pass.
 *
 * @param scenario the car, the day and what it did so far
 * @param ways of waiting, at least one
 * @param limit highest charge temperature allowed in the next pull, K
 * @param confidence share of equally likely cars that must keep it, from 0.5 to 0.99
 * @param horizon longest wait looked at, s
 * @param draws equally likely cars
 * @param iceBelow reservoir temperature at which ice goes in, K
 */
public record WaitPlan(
    Scenario scenario,
    List<Way> ways,
    double limit,
    double confidence,
    double horizon,
    int draws,
    double iceBelow) {
  /** Longest wait looked at if nothing is said, s. */
  public static final double USUAL_HORIZON = 3600;

  /** Longest wait that may be asked for, s. */
  public static final double LONGEST_HORIZON = 12 * 3600;

  /** Shortest horizon that may be asked for, s. */
  public static final double SHORTEST_HORIZON = 300;

  /** Confidence if nothing is said. */
  public static final double USUAL_CONFIDENCE = 0.9;

  /** Cars drawn if nothing is said: a power of two, as the sequence likes. */
  public static final int USUAL_DRAWS = 128;

  /** Fewest cars that a share of nine in ten is read off. */
  public static final int FEWEST_DRAWS = 32;

  /**
   * Reservoir below which it may be opened for ice if nothing is said: no warmer than a hand bears,
   * so that nothing scalds (common practice, no source), K.
   */
  public static final double USUAL_ICE_BELOW = 318.15;

  /** Warmest reservoir that may be opened for ice, K: as above. */
  public static final double WARMEST_ICE_BELOW = 323.15;

  /** How long the engine idles before the pull after it was off, s. */
  static final double START_UP = 20;

  /** How long the engine idles after the pull, for what the sensor then shows, s. */
  static final double AFTER = 5;

  /** Copies the ways. */
  public WaitPlan {
    ways = List.copyOf(ways);
  }

  /**
   * Returns the limit to plan for.
   *
   * @param scenario which may have one
   * @param asked limit asked for instead, K
   * @throws StudyException if there is neither
   */
  public static double limit(Scenario scenario, OptionalDouble asked) throws StudyException {
    if (asked.isPresent()) {
      return asked.getAsDouble();
    }
    return scenario
        .limits()
        .chargeTemperature()
        .orElseThrow(
            () ->
                new StudyException(
                    "no limit to keep: write limits.charge-temperature or give --limit, as in"
                        + " --limit '54 degC'"));
  }

  /**
   * Checks the plan.
   *
   * @throws StudyException if it cannot be asked
   */
  public WaitPlan checked() throws StudyException {
    require(!ways.isEmpty(), "no way of waiting is left");
    require(limit > 250 && limit < 450, "the limit must be a charge temperature, -23 to 177 degC");
    require(
        confidence >= 0.5 && confidence <= 0.99,
        "the confidence must be from 50 % to 99 %, not " + 100 * confidence + " %");
    require(
        horizon >= SHORTEST_HORIZON && horizon <= LONGEST_HORIZON,
        "the horizon must be from 5 min to 12 h");
    require(draws >= FEWEST_DRAWS, "draws must be " + FEWEST_DRAWS + " or more, not " + draws);
    require(
        iceBelow <= WARMEST_ICE_BELOW,
        "a reservoir is not opened above 50 degC (122 degF): it may be under pressure and scalds");
    require(
        ways.stream().noneMatch(Way::hood) || scenario.setup().rig().underhood().openHood() < 1,
        "an open hood counts only where the session opens it: write hood: open in one of its waits");
    require(lastPull() >= 0, "the session has no pull or pass, so there is none to do again");
    return this;
  }

  private static void require(boolean holds, String message) throws StudyException {
    if (!holds) {
      throw new StudyException(message);
    }
  }

  /** Returns whether a pass is done again, with what leads away from it and up to the next. */
  public boolean isPass() {
    return scenario.session().phases().get(lastPull()).kind() == Phase.Kind.PASS;
  }

  /** Returns the index of the session's last pull; -1 if it has none. */
  private int lastPull() {
    return lastPull(scenario.session().phases());
  }

  /** Returns the index of the last pull or pass; -1 if there is none. */
  static int lastPull(List<Phase> phases) {
    for (int i = phases.size() - 1; i >= 0; i--) {
      if (phases.get(i).kind().isCounted()) {
        return i;
      }
    }
    return -1;
  }
}
