package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import soakloop.plan.AfterWait;
import soakloop.plan.Go;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WayAnswer;

/**
 * {@code wait.csv}: every wait that was run, in full precision: what 5, 50 and 95 in a hundred cars
 * stay under, and what the asked share does. Temperatures in degC. Comma, decimal point, line feed.
 */
final class WaitCsv {
  private static final double ZERO = 273.15;
  private static final List<ToDoubleFunction<Go>> OF = List.of(Go::charge, Go::sensor, Go::reading);
  private static final List<String> NAMES = List.of("charge peak", "sensor peak", "coolant gauge");

  private WaitCsv() {}

  static String of(WaitAnswer answer) {
    double asked = answer.plan().confidence();
    StringBuilder text = new StringBuilder("engine,pump,fans,hood,ice [kg],wait [s]");
    for (String name : NAMES) {
      for (String share : List.of("5 %", "50 %", "95 %", Math.round(100 * asked) + " % asked")) {
        text.append(',').append(name).append(' ').append(share).append(" [degC]");
      }
    }
    text.append(",keeps the limit\n");
    for (WayAnswer way : answer.ways()) {
      for (AfterWait after : way.curve()) {
        List<String> row = new ArrayList<>();
        row.add(way.way().idles() ? "idle" : "off");
        row.add(way.way().pump() ? "on" : "off");
        row.add(way.way().fans() ? "on" : "off");
        row.add(way.way().hood() ? "open" : "shut");
        row.add(VaryCsv.number(way.way().ice()));
        row.add(VaryCsv.number(after.seconds()));
        for (ToDoubleFunction<Go> of : OF) {
          for (double share : new double[] {0.05, 0.5, 0.95, asked}) {
            row.add(VaryCsv.number(after.quantile(of, share) - ZERO));
          }
        }
        row.add(String.valueOf(after.charge(asked) <= answer.plan().limit()));
        text.append(row.stream().collect(Collectors.joining(","))).append('\n');
      }
    }
    return text.toString();
  }
}
