package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import soakloop.fit.Band;
import soakloop.fit.FitKey;
import soakloop.fit.FitResult;
import soakloop.fit.KeyNews;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * {@code fit.csv}: every key in full precision, most news first, then those that the logs say
 * nothing of, which keep what was believed. Of a curve it is the first point. Temperatures in degC,
 * their differences in K, all else SI; low and high are the ends of 90 % intervals. Comma, decimal
 * point, line feed.
 */
final class FitCsv {
  private FitCsv() {}

  static String of(FitResult result) {
    StringBuilder text =
        new StringBuilder(
            "key,what it is,assumed,unit,before low,before,before high,now low,now,now high,"
                + "moved by [deviations],spread left,log tells\n");
    for (KeyNews news : result.keys()) {
      String tells = news.isNews() ? "yes" : "hardly";
      text.append(row(news.key(), news.before(), news.after(), news.shift(), news.left(), tells));
    }
    for (FitKey key : result.untold()) {
      Band before = KeyNews.untold(key).before();
      text.append(row(key, before, before, 0, 1, "no"));
    }
    return text.toString();
  }

  private static String row(
      FitKey key, Band before, Band after, double shift, double left, String tells) {
    Unit unit = unit(key.dimension());
    List<String> row =
        new ArrayList<>(
            List.of(key.name(), key.means(), String.valueOf(key.assumed()), unit.symbol()));
    for (Band band : List.of(before, after)) {
      row.add(VaryCsv.number(unit.fromSi(band.low())));
      row.add(VaryCsv.number(unit.fromSi(band.middle())));
      row.add(VaryCsv.number(unit.fromSi(band.high())));
    }
    row.add(VaryCsv.number(shift));
    row.add(VaryCsv.number(left));
    row.add(tells);
    return row.stream().map(VaryCsv::quoted).collect(Collectors.joining(",")) + "\n";
  }

  /** Returns the unit that files give a dimension in. */
  static Unit unit(Dimension dimension) {
    return dimension == Dimension.TEMPERATURE ? dimension.require("degC") : dimension.si();
  }
}
