package soakloop.app;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import soakloop.log.Log;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.quantity.UnitSystem;
import soakloop.rig.Branches;
import soakloop.rig.Conductance;
import soakloop.rig.Exchanger;
import soakloop.rig.GeometricConductance;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.PowerLawConductance;
import soakloop.scenario.Assumed;
import soakloop.scenario.FitRecord;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.session.PassCourse;
import soakloop.session.Phase;
import soakloop.simulate.LoopPoint;

/** Says in plain text what a scenario means. */
final class Explanation {
  private static final int COLUMNS = 80;

  /** Coolant of a loop at work, K. */
  private static final double WARM = 313.15;

  private final Scenario scenario;
  private final UnitSystem units;
  private final StringBuilder text = new StringBuilder();

  private Explanation(Scenario scenario) {
    this.scenario = scenario;
    this.units = scenario.units();
  }

  static String of(Scenario scenario) {
    Explanation explanation = new Explanation(scenario);
    explanation.write();
    return explanation.text.toString();
  }

  private void write() {
    line(scenario.title());
    line("");
    loop();
    session();
    scenario.logged().ifPresent(this::log);
    scenario.fitted().ifPresent(this::fitted);
    assumed();
  }

  private void loop() {
    Loop loop = scenario.rig().loop();
    wrapped(
        "Loop",
        loop.elements().stream().map(Explanation::shown).collect(Collectors.joining(" -> ")));
    item("Coolant in the loop", units.show(loop.coolantVolume(), Dimension.VOLUME, 1));
    flow(loop);
    exchanger("Core", loop.core().exchanger());
    for (LoopElement element : loop.pieces()) {
      if (element instanceof HeatExchanger x) {
        exchanger(x.name(), x.exchanger());
      }
    }
  }

  private static String shown(LoopElement element) {
    return element instanceof Branches b
        ? b.ways().stream()
            .map(way -> way.stream().map(LoopElement::name).collect(Collectors.joining(" -> ")))
            .collect(Collectors.joining(" beside ", "(", ")"))
        : element.name();
  }

  /** Says the flow, and how a cold loop changes it where that is worked out. */
  private void flow(Loop loop) {
    LoopPoint warm = LoopPoint.of(loop, scenario.rig().coolant(), WARM);
    String flow = units.show(warm.flow(), Dimension.VOLUME_FLOW, 1);
    if (warm.point().isEmpty() || loop.plumbing().isPresent()) {
      item("Flow with the pump on", flow);
      return;
    }
    double day = scenario.day().temperature();
    LoopPoint cold = LoopPoint.of(loop, scenario.rig().coolant(), day);
    wrapped(
        "Flow with the pump on",
        flow
            + " at "
            + units.show(WARM, Dimension.TEMPERATURE, 0)
            + ", "
            + units.show(cold.flow(), Dimension.VOLUME_FLOW, 1)
            + " at "
            + units.show(cold.temperature(), Dimension.TEMPERATURE, 0)
            + "; the loop takes "
            + units.show(warm.loss(), Dimension.PRESSURE_DIFFERENCE, 1));
  }

  private void exchanger(String name, Exchanger exchanger) {
    Conductance conductance = exchanger.conductance();
    String known =
        conductance instanceof PowerLawConductance stated
            ? at(conductance(stated.value()), stated.airFlow())
            : fromGeometry((GeometricConductance) conductance);
    item(
        name,
        known
            + ", "
            + exchanger.passes().count()
            + (exchanger.passes().count() == 1 ? " pass" : " passes"));
  }

  private String fromGeometry(GeometricConductance conductance) {
    double air = conductance.usualAirFlow();
    double coolant = LoopPoint.of(scenario.rig().loop(), scenario.rig().coolant(), WARM).flow();
    double value = conductance.overall(air, coolant, scenario.rig().coolant());
    return at(conductance(value), air) + " and the pump on";
  }

  private String at(String conductance, double airFlow) {
    return conductance + " at " + units.show(airFlow, Dimension.MASS_FLOW, 0) + " of air";
  }

  /** Shows three digits: a conductance is seldom known to more. */
  private String conductance(double value) {
    Unit unit = units.unit(Dimension.CONDUCTANCE);
    double shown = unit.fromSi(value);
    int decimals = 2 - (int) Math.floor(Math.log10(shown));
    double grain = Math.pow(10, -decimals);
    return units.show(
        unit.toSi(Math.rint(shown / grain) * grain), Dimension.CONDUCTANCE, Math.max(0, decimals));
  }

  /** Says what a fit left, and what was edited since. */
  private void fitted(FitRecord fitted) {
    List<String> edited = fitted.edited();
    wrapped(
        "Fitted",
        fitted.keys().size()
            + " keys to "
            + fitted.log()
            + " on "
            + fitted.date()
            + (edited.isEmpty() ? "" : "; edited since: " + String.join(", ", edited)));
  }

  private void pass(PassCourse course) {
    item(
        "First pass",
        String.format(
            Locale.ROOT,
            "60 ft in %.2f s, %.2f s, %s in the traps, %s",
            course.times().sixtyFoot(),
            course.times().elapsed(),
            units.show(course.times().trapSpeed(), Dimension.SPEED, 1),
            course.measured() ? "as measured" : "an estimate"));
  }

  private void session() {
    List<Phase> phases = scenario.session().phases();
    List<PassCourse> passes =
        phases.stream()
            .map(Phase::drive)
            .filter(Drive.Pass.class::isInstance)
            .map(drive -> ((Drive.Pass) drive).course())
            .toList();
    long pulls = phases.stream().filter(p -> p.kind() == Phase.Kind.PULL).count();
    item(
        "Session",
        String.format(
            Locale.ROOT,
            "%d steps, %d of them pulls%s, %.0f s",
            phases.size(),
            pulls,
            passes.isEmpty() ? "" : " and " + passes.size() + " passes",
            scenario.session().endTime()));
    passes.stream().findFirst().ifPresent(this::pass);
    scenario
        .limits()
        .chargeTemperature()
        .ifPresent(limit -> item("Charge limit", units.show(limit, Dimension.TEMPERATURE, 0)));
  }

  private void log(Scenario.Logged logged) {
    Log log = logged.log();
    item(
        "Log",
        String.format(
            Locale.ROOT,
            "%s, %d rows, %.1f s to %.1f s",
            log.name(),
            log.size(),
            log.time(0),
            log.endTime()));
    for (Log.Column column : log.columns()) {
      wrapped("  " + column.header(), meaning(column));
    }
    log.remarks().forEach(r -> wrapped("  Note", r.text()));
    LogInShort.pulls(logged.reading()).ifPresent(w -> wrapped("  Shows", w));
    LogInShort.findings(logged.reading()).ifPresent(w -> wrapped("  To know", w));
  }

  private static String meaning(Log.Column column) {
    String remark = column.remark();
    if (column.signal().isEmpty()) {
      return "not read" + (remark.isEmpty() ? "" : ": " + remark);
    }
    String unit = column.unit();
    String what = column.signal().get().key() + (unit.isEmpty() ? "" : " in " + unit);
    return switch (column.confidence()) {
      case SURE -> what;
      case LIKELY -> what + ", likely: " + remark;
      case GUESSED -> what + ", a guess: " + remark;
    };
  }

  private void assumed() {
    line("");
    line("Assumed, because the scenario does not say (" + scenario.assumed().size() + "):");
    for (Assumed a : scenario.assumedAsShown()) {
      line("  " + a.key() + ": " + (a.value() + " " + a.spread()).strip());
    }
  }

  private void item(String name, String value) {
    line(String.format(Locale.ROOT, "%-23s %s", name, value));
  }

  private void wrapped(String name, String value) {
    StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-23s", name));
    for (String word : value.split(" ")) {
      if (row.length() + 1 + word.length() > COLUMNS) {
        line(row.toString());
        row = new StringBuilder(" ".repeat(23));
      }
      row.append(' ').append(word);
    }
    line(row.toString());
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }
}
