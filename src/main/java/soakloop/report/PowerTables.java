package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import soakloop.charge.AmbientCorrection;
import soakloop.charge.DensityRule;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Dimension;
import soakloop.rig.Day;
import soakloop.session.Drive;
import soakloop.study.Outcome;
import soakloop.study.PullPower;

/**
 * Power and spark in tables.
 *
 * @param outcome what they are about
 * @param pulls power of its pulls, none if it is not asked for
 * @param display how numbers are shown
 */
record PowerTables(Outcome outcome, List<PullPower> pulls, Display display) {
  static PowerTables of(Outcome outcome, Display display) {
    return new PowerTables(outcome, PullPower.of(outcome), display);
  }

  /** Returns whether there is anything to show. */
  boolean hasSomething() {
    return !pulls.isEmpty();
  }

  private boolean hasPower() {
    return outcome.scenario().output().power().isPresent();
  }

  private boolean hasSpark() {
    return outcome.scenario().output().spark().isPresent();
  }

  /** Returns power and spark, pull by pull. */
  Table pullByPull() {
    List<String> head = new ArrayList<>(List.of(Counted.of(outcome).head(), "Air", "Blower"));
    if (hasSpark()) {
      head.addAll(List.of("Spark out", "Costs"));
    }
    if (hasPower()) {
      head.addAll(List.of("Crank", "Wheels"));
      if (hasSpark()) {
        head.addAll(List.of("Crank, full spark", "Wheels"));
      }
    }
    List<List<String>> rows = pulls.stream().map(this::row).toList();
    return new Table(head, rows, 1, head.size() - 1);
  }

  private List<String> row(PullPower pull) {
    List<String> row = new ArrayList<>();
    row.add(Counted.of(outcome).number(pull.pull()));
    row.add(display.number(pull.airFlow(), Dimension.MASS_FLOW, 0));
    row.add(power(pull.blower()));
    pull.spark()
        .ifPresent(
            spark -> {
              row.add(
                  display.number(spark.out(), Dimension.ANGLE, 1) + (spark.beyond() ? "+" : ""));
              row.add(percent(spark.share()));
            });
    pull.crank()
        .ifPresent(
            crank -> {
              row.add(power(crank.crank()));
              row.add(power(crank.wheels()));
              if (hasSpark()) {
                row.add(power(crank.fullSpark()));
                row.add(power(crank.wheelsFullSpark()));
              }
            });
    return row;
  }

  /** Says what the numbers are in and how far to trust them. */
  String note() {
    String power = display.symbol(Dimension.POWER);
    StringBuilder note =
        new StringBuilder("Where each " + Counted.of(outcome).one() + " is counted: air in ")
            .append(display.symbol(Dimension.MASS_FLOW))
            .append(", power in ")
            .append(power);
    if (hasSpark()) {
      note.append(", spark in ")
          .append(display.symbol(Dimension.ANGLE))
          .append(" taken out by your table at what the sensor reads");
      if (pulls.stream().anyMatch(p -> p.spark().map(PullPower.Spark::beyond).orElse(false))) {
        note.append(" (+: hotter than the table goes, its last value held)");
      }
    }
    note.append('.');
    pulls
        .get(pulls.size() - 1)
        .crank()
        .ifPresent(
            crank ->
                note.append(" Crank power follows from air and fuel and is good to about ")
                    .append(percent(crank.spread()))
                    .append(" of itself; differences from ")
                    .append(Counted.of(outcome).one())
                    .append(" to ")
                    .append(Counted.of(outcome).one())
                    .append(" are better than that."));
    return note.toString();
  }

  /** Returns what the charge did to power from the first pull to the last, and what rules say. */
  Optional<Table> rules() {
    if (pulls.size() < 2 || !hasPower()) {
      return Optional.empty();
    }
    int last = pulls.size() - 1;
    double first = outcome.pulls().get(0).charge().end();
    double then = outcome.pulls().get(last).charge().end();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "this model, " + (isHeld() ? "boost held as stated" : "boost from pulleys"),
            change(PullPower.Crank::fullSpark)));
    if (hasSpark()) {
      rows.add(List.of("this model, with spark taken out", change(PullPower.Crank::crank)));
    }
    for (DensityRule rule : List.of(DensityRule.DENSITY, DensityRule.SQUARE_ROOT)) {
      rows.add(List.of("rule: " + rule.label(), signed(rule.powerRatio(then, first) - 1)));
    }
    String head =
        "Crank power, "
            + pulls.get(0).pull()
            + " to "
            + pulls.get(last).pull()
            + ", charge "
            + display.signedDifference(then - first);
    return Optional.of(new Table(List.of(head, "Change"), rows, 1, 1));
  }

  private String change(Function<PullPower.Crank, Double> power) {
    double first = pulls.get(0).crank().map(power).orElse(Double.NaN);
    double last = pulls.get(pulls.size() - 1).crank().map(power).orElse(Double.NaN);
    return first > 0 && Double.isFinite(last) ? signed(last / first - 1) : Display.NOTHING;
  }

  /** Says which ambient correction may be applied, and why not where not. */
  List<String> corrections() {
    if (!hasPower()) {
      return List.of();
    }
    Day day = outcome.scenario().day();
    double vapour = day.humidity() * MoistAir.saturationPressure(day.temperature());
    List<String> lines = new ArrayList<>();
    for (AmbientCorrection rule : AmbientCorrection.values()) {
      String name = rule.name().replace('_', ' ');
      AmbientCorrection.Outcome found =
          rule.correct(day.pressure() - vapour, day.temperature(), isHeld());
      lines.add(
          found instanceof AmbientCorrection.Applied applied
              ? String.format(
                  Locale.ROOT,
                  "%s (as remembered, the standard was not seen): multiply by %.3f for the reference"
                      + " day.",
                  name,
                  applied.factor())
              : name + ": not applied, " + ((AmbientCorrection.Refused) found).reason() + ".");
    }
    return lines;
  }

  /** Returns whether manifold pressure is stated, or logged, rather than made. */
  private boolean isHeld() {
    return outcome.scenario().rig().boost().isPresent()
        || outcome.scenario().session().phases().stream()
            .filter(phase -> phase.kind().isCounted())
            .anyMatch(
                phase ->
                    phase.drive() instanceof Drive.Replay replay && replay.boost().isPresent());
  }

  private String power(double watt) {
    return display.number(watt, Dimension.POWER, 0);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, share < 0.095 ? "%.1f %%" : "%.0f %%", 100 * share);
  }

  private static String signed(double share) {
    return String.format(Locale.ROOT, "%+.1f %%", 100 * share);
  }
}
