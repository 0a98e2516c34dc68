package soakloop.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * {@code trace.csv}: every channel at every sample in full precision. Temperatures are degC, engine
 * speed rpm, all else SI; a cell without a value is empty. Comma, decimal point, line feed.
 */
final class TraceCsv {
  private TraceCsv() {}

  static String of(Trace trace) {
    StringJoiner head = new StringJoiner(",");
    head.add("time [s]");
    List<double[]> columns = new ArrayList<>();
    for (Channel channel : Channel.values()) {
      Unit unit = unit(channel.dimension());
      String symbol = unit.symbol().isEmpty() ? "-" : unit.symbol();
      head.add(quoted(channel.label() + " [" + symbol + "]"));
      columns.add(Arrays.stream(trace.values(channel)).map(unit::fromSi).toArray());
    }
    StringBuilder text = new StringBuilder(trace.size() * (columns.size() + 1) * 16);
    text.append(head).append('\n');
    for (int i = 0; i < trace.size(); i++) {
      append(text, trace.time(i));
      for (double[] column : columns) {
        text.append(',');
        append(text, column[i]);
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static Unit unit(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> dimension.require("degC");
      case ROTATION -> dimension.require("rpm");
      default -> dimension.si();
    };
  }

  /** Appends a number as Java reads it back, whole ones without a point. */
  private static void append(StringBuilder text, double value) {
    if (!Double.isFinite(value)) {
      return;
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      text.append((long) value);
    } else {
      text.append(value);
    }
  }

  private static String quoted(String cell) {
    boolean needed = cell.contains(",") || cell.contains("\"") || cell.contains("\n");
    return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
