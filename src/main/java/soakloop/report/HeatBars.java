package soakloop.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import soakloop.quantity.Dimension;
import soakloop.simulate.EnergyLedger;

/**
 * The energy ledger as groups of bars.
 *
 * @param energy the ledger
 * @param display how numbers are shown
 */
record HeatBars(EnergyLedger energy, Display display) {
  /** Returns what a template needs: groups with a name, a total and rows. */
  List<Map<String, Object>> groups() {
    HeatBalance balance = HeatBalance.of(energy);
    double longest =
        Stream.of(balance.in(), balance.out(), balance.stays())
            .flatMap(List::stream)
            .mapToDouble(b -> Math.abs(b.joule()))
            .max()
            .orElse(1);
    return List.of(
        group("Came in", "in", balance.in(), longest),
        group("Went out", "out", balance.out(), longest),
        group(
            balance.stay() < 0 ? "Change in the loop" : "Stays in the loop",
            "stays",
            balance.stays(),
            longest));
  }

  private Map<String, Object> group(
      String name, String kind, List<HeatBalance.Entry> bars, double longest) {
    double total = bars.stream().mapToDouble(HeatBalance.Entry::joule).sum();
    return Map.of(
        "name",
        name,
        "kind",
        kind,
        "total",
        display.show(total, Dimension.ENERGY, 0),
        "rows",
        bars.stream().map(b -> row(b, longest)).toList());
  }

  private Map<String, Object> row(HeatBalance.Entry bar, double longest) {
    double share = longest > 0 ? Math.abs(bar.joule()) / longest : 0;
    return Map.of(
        "where",
        bar.where(),
        "value",
        display.number(bar.joule(), Dimension.ENERGY, 0),
        "minus",
        bar.joule() < 0,
        "bar",
        String.format(Locale.ROOT, "%.1f", 100 * share));
  }
}
