package soakloop.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import soakloop.fit.BandedRun;
import soakloop.quantity.Dimension;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;
import soakloop.study.Outcome;

/** {@code report.html}: one file that opens from disk, charts inside, no script. */
final class ReportPage {
  private ReportPage() {}

  /**
   * Writes the page.
   *
   * @param outcome what a run gave
   * @param version of the program
   * @param charts drawn for the page, in order
   * @param refresh seconds until an open page loads itself again; empty if it does not
   * @throws IOException if the template cannot be read or filled
   */
  static String of(Outcome outcome, String version, List<DrawnChart> charts, OptionalInt refresh)
      throws IOException {
    return of(BandedRun.plain(outcome), version, charts, refresh);
  }

  /** Writes the page of a run with its bands. */
  static String of(BandedRun run, String version, List<DrawnChart> charts, OptionalInt refresh)
      throws IOException {
    Outcome outcome = run.outcome();
    Display display = new Display(outcome.scenario().units(), false);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    refresh.ifPresent(seconds -> model.put("refresh", seconds));
    model.put("title", outcome.scenario().title());
    model.put("about", outcome.scenario().about());
    model.put("answer", PageTemplate.model(Answer.of(run, display)));
    model.put("warnings", outcome.warnings().stream().map(Warning::message).toList());
    Tables tables = new Tables(outcome, run.bands(), display);
    if (!outcome.pulls().isEmpty()) {
      model.put("pulls", tables.pulls().model());
      model.put("pullNote", pullNote(display, outcome));
      run.bands().ifPresent(bands -> model.put("bandNote", BandWords.note(bands)));
    }
    model.put("counted", Display.sentenceStart(Counted.of(outcome).many()));
    PassTables passes = new PassTables(outcome, display);
    if (passes.hasSomething()) {
      model.put("passes", passes.times().model());
      model.put("passNote", passes.note());
    }
    model.put("charts", PageTemplate.models(charts));
    Optional<String> agreement = new Sentences(outcome, display).agreement();
    if (!tables.misfits().rows().isEmpty()) {
      model.put("misfits", tables.misfits().model());
      model.put("errors", tables.errors().model());
      model.put("agreement", agreement.orElse("The log has no charge temperature to compare."));
    }
    PowerTables power = PowerTables.of(outcome, display);
    if (power.hasSomething()) {
      model.put("power", power.pullByPull().model());
      model.put("powerNote", power.note());
      power.rules().ifPresent(rules -> model.put("powerRules", rules.model()));
      model.put("corrections", power.corrections());
    }
    model.put("heat", new HeatBars(outcome.trace().energy(), display).groups());
    model.put("closing", closing(outcome.trace()));
    outcome.hydraulics().ifPresent(h -> model.put("hydraulics", LoopTable.of(h, display).model()));
    model.put("assumed", tables.assumed().model());
    Conditions conditions = new Conditions(outcome, display);
    model.put("conditions", conditions.lines());
    model.put("session", conditions.session().model());
    model.put("events", tables.events().model());
    model.put("effort", effort(outcome.trace().effort()));
    return PageTemplate.fill("report.ftlh", model);
  }

  private static String pullNote(Display display, Outcome outcome) {
    String degrees = display.symbol(Dimension.TEMPERATURE);
    String differences = display.symbol(Dimension.TEMPERATURE_DIFFERENCE);
    String one = Counted.of(outcome).one();
    String note =
        "What the charge sensor shows, in "
            + degrees
            + (degrees.equals(differences) ? "" : "; rise in " + differences)
            + ". End is where the "
            + one
            + " is counted, peak the highest until the next "
            + one
            + " or until the engine is switched off, coolant in what enters the core as the "
            + one
            + " starts.";
    boolean logged = outcome.pulls().stream().anyMatch(p -> p.logged().isPresent());
    return logged ? note + " Error is modelled end less logged end." : note;
  }

  private static String closing(Trace trace) {
    return String.format(
        Locale.ROOT,
        "What came in, less what went out, is what stays. The sum is off by %.0e of all heat moved.",
        trace.energy().residualFraction());
  }

  private static String effort(Trace.Effort effort) {
    return effort.states()
        + " states, "
        + effort.steps()
        + " steps, "
        + effort.evaluations()
        + " evaluations";
  }
}
