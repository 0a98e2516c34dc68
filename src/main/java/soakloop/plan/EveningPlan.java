package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.Phase;
import soakloop.study.StudyException;

/**
 * An evening of rounds after a session's last pull or pass, which is the first of them.
 *
 * @param question the car, the ways that it may be treated in the pit, limit and confidence
 * @param intervals from the end of one pull to the start of the next, one a further round, s
 * @param lanes last part of each interval, in which nothing may cool; beside what the session has
 *     between pit and pass, s
 * @param ice there is for the evening, kg
 * @param battery charge that pump and fans draw on while the engine is off, J; empty for enough
 * @param fanPower that all fans draw together, W
 */
public record EveningPlan(
    WaitPlan question,
    List<Double> intervals,
    double lanes,
    double ice,
    OptionalDouble battery,
    double fanPower) {
  /** What shop or car fans draw if nothing is said (our own guess), W. */
  public static final double USUAL_FAN_POWER = 150;

  /** Most rounds that may be planned after the first. */
  public static final int MOST = 20;

  /** Shortest time in the pit, s: enough to start an engine. */
  static final double SHORTEST_PIT = 60;

  private static final List<Double> STEPS = List.of(1.0, 2.0, 3.0, 5.0);

  /** Copies the intervals and sees to it that a car may always just stand. */
  public EveningPlan {
    intervals = List.copyOf(intervals);
    Way stand = new Way(false, false, false, 0);
    if (!question.ways().contains(stand)) {
      List<Way> ways = new ArrayList<>(question.ways());
      ways.add(0, stand);
      question =
          new WaitPlan(
              question.scenario(),
              ways,
              question.limit(),
              question.confidence(),
              question.horizon(),
              question.draws(),
              question.iceBelow());
    }
  }

  /**
   * Returns ways to treat a car in the pit. None has ice and fans: by the time the ice is in, they
   * would blow warm air through a cold exchanger.
   *
   * @param fans whether it has any
   * @param ice there is, kg; 0 for none
   */
  public static List<Way> ways(boolean fans, double ice) {
    List<Way> ways = new ArrayList<>();
    ways.add(new Way(false, false, false, 0));
    ways.add(new Way(false, true, false, 0));
    ways.add(new Way(true, true, fans, 0));
    if (fans) {
      ways.add(new Way(false, true, true, 0));
    }
    for (double step : STEPS) {
      if (step <= ice) {
        ways.add(new Way(false, true, false, step));
      }
    }
    if (ice > 0 && ice < STEPS.get(0)) {
      ways.add(new Way(false, true, false, ice));
    }
    return List.copyOf(ways);
  }

  /**
   * Returns the same for a car.
   *
   * @param rig which may have fans
   * @param ice there is, kg; 0 for none
   */
  public static List<Way> ways(Rig rig, double ice) {
    var face = rig.airflow().face();
    return ways(face.hasShopFan() || face.hasCarFan(), ice);
  }

  /** Returns how many things are done in the pit: pump or engine, fans, ice. */
  public static int actions(Way way) {
    return (way.idles() || way.pump() ? 1 : 0)
        + (way.fans() ? 1 : 0)
        + (way.hood() ? 1 : 0)
        + (way.ice() > 0 ? 1 : 0);
  }

  /** Returns how long a car is in the pit before a round, from 0, s. */
  public double pit(int round) {
    List<Phase> phases = question.scenario().session().phases();
    Around around = Around.of(phases, WaitPlan.lastPull(phases));
    return intervals.get(round) - seconds(around.back()) - seconds(around.lead()) - lanes;
  }

  private static double seconds(List<Phase> phases) {
    return phases.stream().mapToDouble(Phase::duration).sum();
  }

  /**
   * Checks the plan.
   *
   * @throws StudyException if it cannot be asked
   */
  public EveningPlan checked() throws StudyException {
    question.checked();
    require(
        !intervals.isEmpty() && intervals.size() <= MOST,
        "--rounds takes 1 to " + MOST + " intervals, as in '40 min, 30 min'");
    require(lanes >= 0, "--lanes must not be below 0");
    require(ice >= 0 && ice <= 200, "--ice-left must be from 0 to 200 kg (441 lb)");
    require(fanPower >= 0 && fanPower <= 5000, "--fan-power must be from 0 to 5 kW");
    require(
        battery.orElse(1) >= 0 && battery.orElse(1) <= 3.6e8,
        "--battery must be from 0 to 100 kWh");
    for (int i = 0; i < intervals.size(); i++) {
      require(
          intervals.get(i) <= WaitPlan.LONGEST_HORIZON && pit(i) >= SHORTEST_PIT,
          String.format(
              Locale.ROOT,
              "--rounds: interval %d of %.1f min leaves %.1f min in the pit after the way back and"
                  + " lanes, burnout and staging; allowed: at least 1 min there, at most 12 h in all",
              i + 1,
              intervals.get(i) / 60,
              pit(i) / 60));
    }
    return this;
  }

  private static void require(boolean holds, String message) throws StudyException {
    if (!holds) {
      throw new StudyException(message);
    }
  }
}
