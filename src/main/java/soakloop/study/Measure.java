package soakloop.study;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import soakloop.quantity.Dimension;
import soakloop.scenario.Scenario;

/** A single number that a run with pulls gives, and by which runs are held against each other. */
public enum Measure {
  /** Highest reading of the charge sensor over all pulls, each to the next pull's start; K. */
  PEAK_CHARGE(
      "peak-charge",
      "Highest charge sensor reading",
      Dimension.TEMPERATURE,
      run -> run.highest(p -> p.sensor().peakToNextPull())),
  /** Reading of the charge sensor where the last pull is counted; K. */
  END_CHARGE(
      "end-charge",
      "Charge sensor at the last pull's counted end",
      Dimension.TEMPERATURE,
      run -> run.last().sensor().end()),
  /** Coolant entering the core as the last pull starts; K. */
  COOLANT(
      "coolant",
      "Coolant into the core as the last pull starts",
      Dimension.TEMPERATURE,
      run -> run.last().coolant().coreInletStart()),
  /** Time that the charge sensor is over the scenario's limit, each pull to the next; s. */
  OVER_LIMIT(
      "over-limit",
      "Time over the charge limit",
      Dimension.TIME,
      run -> run.pulls().stream().mapToDouble(p -> p.sensor().overLimit()).sum()),
  /** Highest gauge pressure after the core over all pulls; Pa. */
  BOOST(
      "boost",
      "Highest boost after the core",
      Dimension.GAUGE_PRESSURE,
      run -> run.highest(PullResult::boostPeak)),
  /** Highest gauge pressure before the core over all pulls; Pa. */
  BOOST_BEFORE_CORE(
      "boost-before-core",
      "Highest boost before the core",
      Dimension.GAUGE_PRESSURE,
      run -> run.loss(PullResult.ChargeLoss::boostBefore)),
  /** Highest pressure that the charge air loses in the core over all pulls; Pa. */
  CORE_LOSS(
      "core-loss",
      "Highest pressure lost in the core",
      Dimension.PRESSURE_DIFFERENCE,
      run -> run.loss(PullResult.ChargeLoss::peak)),
  /** Shaft power of the blower where the last pull is counted; W. */
  BLOWER_POWER(
      "blower-power",
      "Blower power at the last pull's counted end",
      Dimension.POWER,
      run -> run.power().blower()),
  /** Crank power there, spark taken out; W. */
  CRANK_POWER(
      "crank-power",
      "Crank power at the last pull's counted end",
      Dimension.POWER,
      run -> run.crank(PullPower.Crank::crank)),
  /** Power at the wheels there, spark taken out; W. */
  WHEEL_POWER(
      "wheel-power",
      "Wheel power at the last pull's counted end",
      Dimension.POWER,
      run -> run.crank(PullPower.Crank::wheels)),
  /** Spark taken out there; rad. */
  SPARK_OUT(
      "spark-out",
      "Spark taken out at the last pull's counted end",
      Dimension.ANGLE,
      Measured::sparkOut);

  private final String key;
  private final String label;
  private final Dimension dimension;
  private final ToDoubleFunction<Measured> value;

  Measure(String key, String label, Dimension dimension, ToDoubleFunction<Measured> value) {
    this.key = key;
    this.label = label;
    this.dimension = dimension;
    this.value = value;
  }

  /** Returns the word by which it is asked for. */
  public String key() {
    return key;
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns its value, SI. */
  double of(Measured run) {
    return value.applyAsDouble(run);
  }

  /** Returns its value, SI. */
  double of(Outcome outcome) {
    return of(Measured.of(outcome));
  }

  /**
   * Returns what a scenario lacks for it, such as "needs limits.charge-temperature in the
   * scenario"; empty if nothing.
   *
   * @param scenario which
   */
  public Optional<String> lacks(Scenario scenario) {
    return switch (this) {
      case PEAK_CHARGE, END_CHARGE, COOLANT, BOOST, BLOWER_POWER -> Optional.empty();
      case OVER_LIMIT ->
          lacks(
              scenario.limits().chargeTemperature().isPresent(),
              "limits.charge-temperature in the scenario");
      case BOOST_BEFORE_CORE, CORE_LOSS ->
          lacks(
              scenario.rig().loop().core().exchanger().conductance().geometry().isPresent(),
              "a core described by geometry: its pressure loss is not known otherwise");
      case CRANK_POWER, WHEEL_POWER ->
          lacks(
              scenario.output().power().isPresent(),
              "the section power in the scenario ('power: {}' for its defaults)");
      case SPARK_OUT ->
          lacks(scenario.output().spark().isPresent(), "spark.taken-out in the scenario");
    };
  }

  private static Optional<String> lacks(boolean there, String what) {
    return there ? Optional.empty() : Optional.of("needs " + what);
  }

  /**
   * Returns whether it is told where no result is asked for: temperatures and time over the limit,
   * and boost where it follows from pulleys.
   *
   * @param scenario which
   */
  boolean isUsual(Scenario scenario) {
    return switch (this) {
      case PEAK_CHARGE, END_CHARGE, COOLANT -> true;
      case OVER_LIMIT -> lacks(scenario).isEmpty();
      case BOOST -> scenario.rig().boost().isEmpty();
      default -> false;
    };
  }

  /**
   * Returns what the log says of the same, SI; empty if it does not cover the pulls, or for results
   * that are not read off logs.
   *
   * @param outcome a run with at least one pull
   */
  public OptionalDouble logged(Outcome outcome) {
    return switch (this) {
      case PEAK_CHARGE -> LoggedMeasure.peakCharge(outcome);
      case END_CHARGE -> LoggedMeasure.endCharge(outcome);
      case COOLANT -> LoggedMeasure.coolant(outcome);
      case OVER_LIMIT -> LoggedMeasure.overLimit(outcome);
      default -> OptionalDouble.empty();
    };
  }

  /**
   * Returns what a scenario says it must not pass, SI: the charge limit for charge temperatures.
   *
   * @param scenario which
   */
  public OptionalDouble limit(Scenario scenario) {
    return switch (this) {
      case PEAK_CHARGE, END_CHARGE -> scenario.limits().chargeTemperature();
      default -> OptionalDouble.empty();
    };
  }

  /** Returns all words, such as "peak-charge, coolant". */
  public static String keys() {
    return String.join(", ", Arrays.stream(values()).map(Measure::key).toList());
  }

  /**
   * Finds one by its word.
   *
   * @param key such as {@code peak-charge}
   */
  public static Optional<Measure> named(String key) {
    return Arrays.stream(values()).filter(m -> m.key.equals(key.strip())).findFirst();
  }

  /**
   * Finds one by its word that a scenario has all for.
   *
   * @param key such as {@code peak-charge}
   * @param scenario which
   * @throws StudyException if there is none, or the scenario lacks something
   */
  static Measure of(String key, Scenario scenario) throws StudyException {
    Measure found =
        named(key)
            .orElseThrow(
                () -> new StudyException("`" + key + "` is no result; there are: " + keys()));
    Optional<String> lacks = found.lacks(scenario);
    if (lacks.isPresent()) {
      throw new StudyException(found.key + " " + lacks.get());
    }
    return found;
  }
}
