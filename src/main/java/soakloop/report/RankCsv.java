package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.study.Moved;
import soakloop.study.Ranking;
import soakloop.study.UncertainKey;

/**
 * {@code rank.csv}: every key in full precision, furthest first; temperatures in degC, their
 * changes in K, all else SI. The points of a curve stand in one cell, apart by a space. An end that
 * failed has empty results and its reason at the end. Comma, decimal point, line feed.
 */
final class RankCsv {
  private RankCsv() {}

  static String of(Ranking ranking) {
    String unit = ranking.plan().measure().dimension().ofSpread().si().symbol();
    String in = " [" + unit + "]";
    StringBuilder text = new StringBuilder();
    text.append("rank,key,assumed,unit,value,low,high,cut,change at low").append(in);
    text.append(",change at high").append(in).append(",swing").append(in);
    text.append(",variance share alone,variance share with others,failed\n");
    int rank = 0;
    for (Moved moved : ranking.keys()) {
      UncertainKey key = moved.key();
      List<String> row = new ArrayList<>();
      row.add(String.valueOf(++rank));
      row.add(key.key());
      row.add(String.valueOf(key.assumed()));
      row.add(unit(key).symbol());
      row.add(cell(key, UncertainKey.Part::value));
      row.add(cell(key, UncertainKey.Part::low));
      row.add(cell(key, UncertainKey.Part::high));
      row.add(String.valueOf(key.clipped()));
      row.add(number(moved.low().change()));
      row.add(number(moved.high().change()));
      row.add(VaryCsv.number(moved.swing()));
      row.add(moved.indices().map(t -> VaryCsv.number(t.alone())).orElse(""));
      row.add(moved.indices().map(t -> VaryCsv.number(t.total())).orElse(""));
      row.add(failures(moved));
      text.append(row.stream().map(VaryCsv::quoted).collect(Collectors.joining(","))).append('\n');
    }
    return text.toString();
  }

  /** Returns the unit that files give a key in. */
  static Unit unit(UncertainKey key) {
    return key.dimension() == Dimension.TEMPERATURE
        ? Dimension.TEMPERATURE.require("degC")
        : key.dimension().si();
  }

  /** Returns why ends failed; empty if none did. */
  static String failures(Moved moved) {
    List<String> reasons = new ArrayList<>();
    for (Moved.End end : List.of(moved.low(), moved.high())) {
      if (end instanceof Moved.Failed failed && !reasons.contains(failed.reason())) {
        reasons.add(failed.reason());
      }
    }
    return String.join("; ", reasons);
  }

  private static String cell(UncertainKey key, ToDoubleFunction<UncertainKey.Part> value) {
    return key.parts().stream()
        .map(p -> VaryCsv.number(unit(key).fromSi(value.applyAsDouble(p))))
        .collect(Collectors.joining(" "));
  }

  private static String number(OptionalDouble change) {
    return VaryCsv.number(change.orElse(Double.NaN));
  }
}
