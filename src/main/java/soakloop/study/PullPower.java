package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.charge.EnginePower;
import soakloop.charge.SparkTable;
import soakloop.quantity.Estimate;
import soakloop.scenario.Scenario;
import soakloop.scenario.Stated;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * Power and spark where a pull is counted, SI units.
 *
 * @param pull its name
 * @param airFlow kg/s
 * @param blower shaft power of the blower, W
 * @param crank power that is left, if asked for
 * @param spark spark taken out, if the scenario has a table
 */
public record PullPower(
    String pull, double airFlow, double blower, Optional<Crank> crank, Optional<Spark> spark) {
  /** What two instants are apart that are meant to be one, s. */
  private static final double INSTANT = 1e-6;

  /**
   * Power at the crank and behind it, W.
   *
   * @param gross before the blower's drive is taken off and with all spark in
   * @param crank with spark taken out as the table says
   * @param fullSpark with all spark in
   * @param wheels at the wheels, spark taken out
   * @param wheelsFullSpark at the wheels, all spark in
   * @param spread half width of the 90 % interval of crank power as a share of it, from fuel and
   *     air-fuel ratio alone
   */
  public record Crank(
      double gross,
      double crank,
      double fullSpark,
      double wheels,
      double wheelsFullSpark,
      double spread) {}

  /**
   * Spark taken out by what the charge sensor reads.
   *
   * @param out rad
   * @param share of the engine's torque that it costs [-]
   * @param beyond whether the sensor reads more than the table goes to
   */
  public record Spark(double out, double share, boolean beyond) {
    static Spark of(SparkTable table, double reading) {
      return new Spark(table.out(reading), table.share(reading), table.isBeyond(reading));
    }
  }

  /**
   * Reads all pulls.
   *
   * @param outcome what a run gave
   * @return one for each pull; none if the scenario asks for neither power nor spark
   */
  public static List<PullPower> of(Outcome outcome) {
    Scenario.Output output = outcome.scenario().output();
    List<PullPower> all = new ArrayList<>();
    if (output.power().isPresent() || output.spark().isPresent()) {
      outcome.pulls().forEach(pull -> all.add(at(outcome.scenario(), outcome.trace(), pull)));
    }
    return List.copyOf(all);
  }

  /** Reads one pull, with crank power and spark as far as the scenario asks for them. */
  static PullPower at(Scenario scenario, Trace trace, PullResult pull) {
    double time = instant(pull);
    double air = trace.at(Channel.AIR_MASS_FLOW, time);
    double blower = trace.at(Channel.BLOWER_POWER, time);
    Optional<Spark> spark =
        scenario.output().spark().map(table -> Spark.of(table, trace.at(Channel.SENSOR, time)));
    double lost = spark.map(Spark::share).orElse(0.0);
    Optional<Crank> crank =
        scenario.output().power().map(p -> crank(scenario, p, air, blower, lost));
    return new PullPower(pull.name(), air, blower, crank, spark);
  }

  private static Crank crank(
      Scenario scenario, EnginePower power, double air, double blower, double lost) {
    double gross = power.gross(air);
    double full = gross - blower;
    double left = gross * (1 - lost) - blower;
    double spread =
        Math.hypot(
                relative(scenario, "power.fuel-consumption"),
                relative(scenario, "power.air-fuel-ratio"))
            * (full > 0 ? gross / full : 1);
    return new Crank(gross, left, full, power.wheels(left), power.wheels(full), spread);
  }

  private static double relative(Scenario scenario, String key) {
    return scenario.values().stream()
        .filter(value -> value.key().equals(key))
        .map(Stated::estimate)
        .mapToDouble(PullPower::relative)
        .findFirst()
        .orElse(0);
  }

  private static double relative(Estimate estimate) {
    return estimate.spread() / estimate.value();
  }

  /** Returns the last instant at which a pull is still on, where it is counted. */
  static double instant(PullResult pull) {
    return Math.max(pull.startTime(), pull.countedAt() - INSTANT);
  }
}
