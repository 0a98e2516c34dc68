package soakloop.report;

import java.util.List;
import soakloop.plan.EveningAnswer;
import soakloop.plan.EveningRound;
import soakloop.plan.Way;

/**
 * {@code rounds.csv}: every round in full precision. Temperatures in degC; a battery that is not
 * counted is left empty. Comma, decimal point, line feed.
 */
final class RoundsCsv {
  private static final double ZERO = 273.15;

  private RoundsCsv() {}

  static String of(EveningAnswer answer) {
    double limit = answer.plan().question().limit();
    StringBuilder text =
        new StringBuilder(
            "round,engine,pump,fans,hood,ice put in [kg],pit [s],actions,ice left [kg],"
                + "battery left [J],ice in tank at start [kg],peak asked share [degC],"
                + "peak 50 % [degC],margin [K],share that keeps the limit\n");
    for (EveningRound round : answer.rounds()) {
      text.append(round.number()).append(',');
      text.append(round.way().map(RoundsCsv::way).orElse(",,,")).append(',');
      for (double value :
          List.of(round.iceUsed(), round.pit(), (double) round.actions(), round.iceLeft())) {
        text.append(VaryCsv.number(value)).append(',');
      }
      boolean counted = Double.isFinite(round.batteryLeft());
      text.append(counted ? VaryCsv.number(round.batteryLeft()) : "").append(',');
      text.append(VaryCsv.number(round.iceInTank())).append(',');
      text.append(VaryCsv.number(round.peak() - ZERO)).append(',');
      text.append(VaryCsv.number(round.middle() - ZERO)).append(',');
      text.append(VaryCsv.number(limit - round.peak())).append(',');
      text.append(VaryCsv.number(round.keeps())).append('\n');
    }
    return text.toString();
  }

  private static String way(Way way) {
    return String.join(
        ",",
        way.idles() ? "idle" : "off",
        way.pump() ? "on" : "off",
        way.fans() ? "on" : "off",
        way.hood() ? "open" : "shut");
  }
}
