package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.fit.BandedRun;
import soakloop.study.CoreTrade;
import soakloop.study.Outcome;

/** A chart of results, drawn anew for every use. */
sealed interface Chart
    permits ChargeOverTime,
        CoolantOverTime,
        ChargeOverSpeed,
        Creep,
        HeatMoved,
        IceLeft,
        ChargeOverPass,
        PumpAgainstLoop,
        CoreTradeBars,
        VaryCurve,
        VaryMap,
        LastPullCourses,
        RankBars,
        WaitCurves,
        SameStartCurves,
        FitOverTime,
        FitResiduals,
        FitIntervals,
        LogOverTime,
        LogOverSpeed,
        LogFromStart,
        LogPullByPull,
        VersusOverSpeed,
        VersusWaterfall,
        VersusElsewhere,
        VersusMap {
  /** Every name that the file of a run's chart can have. */
  List<String> NAMES =
      List.of(
          "charge-over-time",
          "coolant-over-time",
          "charge-over-speed",
          "pull-by-pull",
          "heat-moved",
          "pump-against-loop",
          "ice-left",
          "core-cost-and-gain",
          "charge-over-pass");

  /** Returns the name of its file, without the ending. */
  String name();

  /** Returns what it shows. */
  String title();

  /** Returns how to read it. */
  String caption();

  /** Makes the drawing. */
  Figure figure(ChartStyle style);

  /** Returns the charts that an outcome has something for, in the order they are read. */
  static List<Chart> all(Outcome outcome, Display display) {
    return all(BandedRun.plain(outcome), display);
  }

  /** Returns the same with bands behind the lines. */
  static List<Chart> all(BandedRun run, Display display) {
    Outcome outcome = run.outcome();
    List<Chart> charts = new ArrayList<>();
    charts.add(new ChargeOverTime(outcome, run.bands(), display));
    if (outcome.pulls().size() > 1) {
      charts.add(new Creep(outcome, display));
    }
    ChargeOverSpeed overSpeed = new ChargeOverSpeed(outcome, run.bands(), display);
    if (overSpeed.hasSomething()) {
      charts.add(overSpeed);
    }
    ChargeOverPass overPass = new ChargeOverPass(outcome, display);
    if (overPass.hasSomething()) {
      charts.add(overPass);
    }
    charts.add(new CoolantOverTime(outcome, run.bands(), display));
    IceLeft ice = new IceLeft(outcome, display);
    if (ice.hasSomething()) {
      charts.add(ice);
    }
    charts.add(new HeatMoved(outcome, display));
    outcome.hydraulics().ifPresent(h -> charts.add(new PumpAgainstLoop(outcome, display, h)));
    CoreTrade.of(outcome)
        .ifPresent(
            trade -> charts.add(new CoreTradeBars(trade, outcome.scenario().title(), display)));
    return charts;
  }
}
