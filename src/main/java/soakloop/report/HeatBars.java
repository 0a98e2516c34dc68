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
  /**
   * One bar.
   *
   * @param where where the heat came from or went
   * @param joule J
   */
  private record Bar(String where, double joule) {}

  /** Returns what a template needs: groups with a name, a total and rows. */
  List<Map<String, Object>> groups() {
    List<Bar> in =
        List.of(
            new Bar("charge air, at the core", energy.fromChargeToCore()),
            new Bar("charge air, at blower case and plenum", energy.fromChargeToDucts()),
            new Bar("engine, through plenum metal", energy.fromEngine()),
            new Bar("pump", energy.fromPump()),
            new Bar("underhood air", energy.fromUnderhood()));
    List<Bar> out = List.of(new Bar("outside air, at the heat exchanger", energy.toAmbient()));
    List<Bar> stays =
        List.of(
            new Bar("coolant", energy.storedCoolant()),
            new Bar("metal of core and heat exchanger", energy.storedExchangers()),
            new Bar("hose walls", energy.storedWalls()),
            new Bar("blower case and plenum metal", energy.storedDucts()));
    double longest =
        Stream.of(in, out, stays)
            .flatMap(List::stream)
            .mapToDouble(b -> Math.abs(b.joule()))
            .max()
            .orElse(1);
    return List.of(
        group("Came in", "in", in, longest),
        group("Went out", "out", out, longest),
        group("Stays in the loop", "stays", stays, longest));
  }

  private Map<String, Object> group(String name, String kind, List<Bar> bars, double longest) {
    double total = bars.stream().mapToDouble(Bar::joule).sum();
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

  private Map<String, Object> row(Bar bar, double longest) {
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
