package soakloop.report;

import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.reading.Updates;

/**
 * A log made clean: every signal under its own name, in SI units (shares in per cent), at the times
 * it was measured. Rows that repeat an older value, spikes and cells that could not be read are
 * empty; swapped channels are exchanged. Comma, decimal point, line feed, full precision. It can be
 * read as a log again.
 */
final class LogCsv {
  private LogCsv() {}

  static String of(LogSheet sheet) {
    Log log = sheet.log();
    List<Signal> signals =
        Arrays.stream(Signal.values())
            .filter(s -> s != Signal.TIME && (sheet.has(s) || log.has(s)))
            .toList();
    StringJoiner head = new StringJoiner(",");
    head.add(name(Signal.TIME));
    signals.forEach(s -> head.add(name(s)));
    List<double[]> columns = signals.stream().map(s -> column(sheet, s)).toList();
    StringBuilder text = new StringBuilder(log.size() * (signals.size() + 1) * 10);
    text.append(head).append('\n');
    for (int i = 0; i < log.size(); i++) {
      text.append(VaryCsv.number(log.time(i)));
      for (double[] column : columns) {
        text.append(',').append(VaryCsv.number(column[i]));
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static String name(Signal signal) {
    Unit unit = unit(signal);
    return unit.symbol().isEmpty() ? signal.key() : signal.key() + " [" + unit.symbol() + "]";
  }

  /** The SI unit; per cent for shares, since a bare 0 or 1 could be on and off too. */
  private static Unit unit(Signal signal) {
    Dimension dimension = signal.dimension();
    return dimension == Dimension.FRACTION ? dimension.require("%") : dimension.si();
  }

  /** Puts updates into the rows they were measured in. */
  private static double[] column(LogSheet sheet, Signal signal) {
    Log log = sheet.log();
    Updates updates = sheet.reading().updates(signal);
    double[] column = new double[log.size()];
    Arrays.fill(column, Double.NaN);
    int row = 0;
    for (int i = 0; i < updates.size(); i++) {
      while (row < log.size() - 1 && log.time(row) < updates.time(i)) {
        row++;
      }
      column[row] = unit(signal).fromSi(updates.value(i));
    }
    return column;
  }
}
