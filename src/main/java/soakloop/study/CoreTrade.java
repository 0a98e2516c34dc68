package soakloop.study;

import java.util.List;
import java.util.Optional;
import soakloop.charge.EnginePower;
import soakloop.charge.SparkTable;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * What a core costs in pressure, and what it gives in temperature, where the last pull is counted:
 * the run beside the same instant with a core that takes no pressure, and beside none at all.
 *
 * <p>Blower, engine, day and speed stay. Without a core the charge is the blower's outlet less what
 * case and plenum take from it in the run. With boost from pulleys the manifold pressure follows
 * the charge temperature; a stated boost is held. Spark is that of the true charge temperature, as
 * of a sensor that has caught up.
 *
 * @param pull name of the pull
 * @param boostHeld whether manifold pressure is stated and so stays
 * @param loss pressure that the core takes, Pa
 * @param lossPower what that costs at the blower, W
 * @param cooling how much cooler the charge is for the core, K
 * @param coolingPower what that saves at the blower, W; 0 with held boost and no leakage
 * @param boost gauge pressure in the manifold, Pa
 * @param boostWithout the same without a core, Pa
 * @param spark spark, where the scenario has a table
 */
public record CoreTrade(
    String pull,
    boolean boostHeld,
    double loss,
    double lossPower,
    double cooling,
    double coolingPower,
    double boost,
    double boostWithout,
    Optional<SparkKept> spark) {
  /** A blower that does less than this is not looked at, W. */
  private static final double IDLE = 100;

  /**
   * Spark that the core keeps in.
   *
   * @param kept less taken out with the core than without, rad
   * @param beyond whether the table ends below the charge without a core, so that it is more
   * @param power what it is worth, W, where power is asked for and the table and the rule for lost
   *     torque reach as far as the charge without a core
   */
  public record SparkKept(double kept, boolean beyond, Optional<Double> power) {}

  /**
   * Works it out.
   *
   * @param outcome what a run gave
   * @return empty without a pull, where the core's loss is not known, or where no boost is made
   */
  public static Optional<CoreTrade> of(Outcome outcome) {
    List<PullResult> pulls = outcome.pulls();
    if (pulls.isEmpty()) {
      return Optional.empty();
    }
    PullResult last = pulls.get(pulls.size() - 1);
    double time = PullPower.instant(last);
    Trace trace = outcome.trace();
    double loss = trace.at(Channel.CORE_LOSS, time);
    if (!(loss > 0) || !(trace.at(Channel.BLOWER_POWER, time) > IDLE)) {
      return Optional.empty();
    }
    try {
      return Optional.of(of(outcome, last.name(), new BlowerAt(outcome.scenario(), trace, time)));
    } catch (IllegalArgumentException e) {
      // Without its core such a blower would run away: there is nothing to hold beside.
      return Optional.empty();
    }
  }

  private static CoreTrade of(Outcome outcome, String pull, BlowerAt blower) {
    BlowerAt.Point run = blower.asRun();
    BlowerAt.Point free = blower.withoutLoss();
    BlowerAt.Point none = blower.withoutCore();
    Scenario.Output output = outcome.scenario().output();
    return new CoreTrade(
        pull,
        blower.boostHeld(),
        blower.loss(),
        run.power() - free.power(),
        none.charge() - run.charge(),
        none.power() - free.power(),
        run.boost(),
        none.boost(),
        output.spark().map(table -> spark(table, output.power(), run, none)));
  }

  private static SparkKept spark(
      SparkTable table, Optional<EnginePower> power, BlowerAt.Point run, BlowerAt.Point none) {
    boolean beyond = table.isBeyond(none.charge());
    double share = table.share(none.charge()) - table.share(run.charge());
    return new SparkKept(
        table.out(none.charge()) - table.out(run.charge()),
        beyond,
        power
            .filter(p -> !beyond && table.isWithinRule(none.charge()))
            .map(p -> share * p.gross(run.airFlow())));
  }
}
