package soakloop.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import soakloop.plan.EveningPlan;
import soakloop.plan.WaitPlan;
import soakloop.quantity.Dimension;
import soakloop.study.StudyException;

/** Options of {@code wait} that ask for an evening of rounds. */
final class EveningOptions {
  @Option(
      names = "--rounds",
      paramLabel = "TIMES",
      description =
          "Plans an evening: one interval for each further round, from the end of one pull or pass to"
              + " the start of the next, as in '40 min, 30 min, 25 min'.")
  private Optional<String> rounds = Optional.empty();

  @Option(
      names = "--lanes",
      paramLabel = "TIME",
      description =
          "With --rounds: last part of each interval, in which nothing may cool, beside lanes that the"
              + " session has; '0 min' if left out.")
  private Optional<String> lanes = Optional.empty();

  @Option(
      names = "--ice-left",
      paramLabel = "MASS",
      description = "With --rounds: ice there is for the whole evening; none if left out.")
  private Optional<String> iceLeft = Optional.empty();

  @Option(
      names = "--battery",
      paramLabel = "ENERGY",
      description =
          "With --rounds: charge that pump and fans draw on while the engine is off, as in '400 Wh';"
              + " enough if left out.")
  private Optional<String> battery = Optional.empty();

  @Option(
      names = "--fan-power",
      paramLabel = "POWER",
      description =
          "With --rounds: what all fans draw together; '150 W' if left out, our own guess.")
  private Optional<String> fanPower = Optional.empty();

  /** Returns whether an evening is asked for. */
  boolean isAsked() {
    return rounds.isPresent();
  }

  /**
   * Checks that what belongs to an evening stands with one.
   *
   * @throws StudyException if it does not
   */
  void check() throws StudyException {
    boolean any =
        lanes.isPresent() || iceLeft.isPresent() || battery.isPresent() || fanPower.isPresent();
    if (any && !isAsked()) {
      throw new StudyException(
          "--lanes, --ice-left, --battery and --fan-power go with --rounds, as in --rounds '40 min,"
              + " 30 min'");
    }
  }

  /** Returns the ice there is, kg. */
  double ice() throws StudyException {
    return read("--ice-left", iceLeft, Dimension.MASS, 0);
  }

  /**
   * Makes the plan.
   *
   * @param question car, ways, limit and confidence
   * @throws StudyException if it cannot be asked
   */
  EveningPlan plan(WaitPlan question) throws StudyException {
    List<Double> intervals = new ArrayList<>();
    for (String interval : rounds.orElse("").split(",")) {
      intervals.add(WaitCommand.value("--rounds", interval.strip(), Dimension.TIME));
    }
    return new EveningPlan(
            question,
            intervals,
            read("--lanes", lanes, Dimension.TIME, 0),
            ice(),
            battery.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(read("--battery", battery, Dimension.ENERGY, 0)),
            read("--fan-power", fanPower, Dimension.POWER, EveningPlan.USUAL_FAN_POWER))
        .checked();
  }

  private static double read(
      String option, Optional<String> text, Dimension dimension, double otherwise)
      throws StudyException {
    return text.isEmpty() ? otherwise : WaitCommand.value(option, text.get(), dimension);
  }
}
