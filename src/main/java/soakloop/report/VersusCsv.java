package soakloop.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import soakloop.fit.Band;
import soakloop.quantity.Unit;
import soakloop.versus.PullFigure;
import soakloop.versus.VersusResult;

/**
 * {@code versus.csv}: every figure of every pull of every contender under the common conditions, in
 * full precision. Temperatures in degC, their differences in K, all else SI; low and high are the
 * ends of 90 % intervals. Comma, decimal point, line feed.
 */
final class VersusCsv {
  private VersusCsv() {}

  static String of(VersusResult result) {
    StringBuilder text = new StringBuilder("contender,pull,figure,unit,low,middle,high\n");
    for (VersusResult.Ran ran : result.contenders()) {
      for (int p = 0; p < ran.pulls().size(); p++) {
        Map<PullFigure, Band> figures = ran.figures().get(p);
        for (PullFigure figure : PullFigure.values()) {
          Band band = figures.get(figure);
          if (band != null) {
            Unit unit = FitCsv.unit(figure.dimension());
            List<String> row =
                List.of(
                    ran.label(),
                    ran.pulls().get(p),
                    figure.key(),
                    unit.symbol(),
                    VaryCsv.number(unit.fromSi(band.low())),
                    VaryCsv.number(unit.fromSi(band.middle())),
                    VaryCsv.number(unit.fromSi(band.high())));
            text.append(row.stream().map(VaryCsv::quoted).collect(Collectors.joining(",")))
                .append('\n');
          }
        }
      }
    }
    return text.toString();
  }
}
