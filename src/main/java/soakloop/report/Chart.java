package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.study.CoreTrade;
import soakloop.study.Outcome;

/** A chart of results, drawn anew for every use. */
sealed interface Chart
    permits ChargeOverTime,
        CoolantOverTime,
        ChargeOverSpeed,
        Creep,
        HeatMoved,
        CoreTradeBars,
        VaryCurve,
        VaryMap,
        LastPullCourses,
        RankBars,
        LogOverTime,
        LogOverSpeed,
        LogFromStart,
        LogPullByPull {
  /** Every name that the file of a run's chart can have. */
  List<String> NAMES =
      List.of(
          "charge-over-time",
          "coolant-over-time",
          "charge-over-speed",
          "pull-by-pull",
          "heat-moved",
          "core-cost-and-gain");

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
    List<Chart> charts = new ArrayList<>();
    charts.add(new ChargeOverTime(outcome, display));
    if (outcome.pulls().size() > 1) {
      charts.add(new Creep(outcome, display));
    }
    ChargeOverSpeed overSpeed = new ChargeOverSpeed(outcome, display);
    if (overSpeed.hasSomething()) {
      charts.add(overSpeed);
    }
    charts.add(new CoolantOverTime(outcome, display));
    charts.add(new HeatMoved(outcome, display));
    CoreTrade.of(outcome)
        .ifPresent(
            trade -> charts.add(new CoreTradeBars(trade, outcome.scenario().title(), display)));
    return charts;
  }
}
