package soakloop.report;

import java.util.List;
import java.util.StringJoiner;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.study.KeyRange;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;

/**
 * {@code vary.csv}: every point in full precision, keys in the unit they were asked in,
 * temperatures in degC, all else SI. A run that failed has empty results and its reason at the end.
 * Comma, decimal point, line feed.
 */
final class VaryCsv {
  private VaryCsv() {}

  static String of(Variation variation) {
    VaryPlan plan = variation.plan();
    StringJoiner head = new StringJoiner(",");
    for (KeyRange range : plan.keys()) {
      head.add(quoted(range.key() + in(range.unit())));
    }
    for (Measure measure : plan.measures()) {
      head.add(quoted(measure.key() + in(unit(measure))));
    }
    head.add("failed");
    StringBuilder text = new StringBuilder(head + "\n");
    for (VaryPoint point : variation.points()) {
      StringJoiner row = new StringJoiner(",");
      plan.values(point.index()).forEach(value -> row.add(number(value)));
      for (Measure measure : plan.measures()) {
        row.add(number(unit(measure).fromSi(variation.value(point.index(), measure))));
      }
      row.add(point instanceof VaryPoint.Hole hole ? quoted(hole.reason()) : "");
      text.append(row).append('\n');
    }
    return text.toString();
  }

  /** Returns the unit that files give a measure in. */
  static Unit unit(Measure measure) {
    return measure.dimension() == Dimension.TEMPERATURE
        ? Dimension.TEMPERATURE.require("degC")
        : measure.dimension().si();
  }

  private static String in(Unit unit) {
    return unit.symbol().isEmpty() ? "" : " [" + unit.symbol() + "]";
  }

  static String number(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  static String quoted(String cell) {
    List<String> special = List.of(",", "\"", "\n", "\r");
    return special.stream().anyMatch(cell::contains)
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }
}
