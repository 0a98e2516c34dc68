package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Dimension;
import soakloop.study.CoreTrade;

/**
 * What a core costs and what it gives, as bars of power: to the left what it takes, to the right
 * what it brings.
 *
 * @param trade the numbers
 * @param whose title of the scenario
 * @param display how they are shown
 */
record CoreTradeBars(CoreTrade trade, String whose, Display display) implements Chart {
  /** One bar; power brought, W. */
  private record Bar(String what, double power) {}

  @Override
  public String name() {
    return NAMES.get(7);
  }

  @Override
  public String title() {
    return "What the core costs and what it gives";
  }

  @Override
  public String caption() {
    return new CoreTradeWords(trade, display).line();
  }

  private List<Bar> bars() {
    CoreTradeWords words = new CoreTradeWords(trade, display);
    List<Bar> bars = new ArrayList<>();
    bars.add(new Bar("Pressure lost, at the blower: " + words.loss(), -trade.lossPower()));
    String cooled = "Charge cooled by " + display.difference(trade.cooling());
    bars.add(
        new Bar(
            cooled + (trade.boostHeld() ? ", boost held" : ", at the blower"),
            trade.coolingPower()));
    trade
        .spark()
        .ifPresent(
            spark ->
                spark
                    .power()
                    .ifPresent(
                        watt -> bars.add(new Bar("Spark kept in: " + words.kept(spark), watt))));
    return bars;
  }

  @Override
  public Figure figure(ChartStyle style) {
    List<Bar> bars = bars();
    double low = Math.min(0, bars.stream().mapToDouble(this::shown).min().orElse(0));
    double high = Math.max(0, bars.stream().mapToDouble(this::shown).max().orElse(0));
    String label = "Power brought [" + display.symbol(Dimension.POWER) + "]";
    RowPlot plot = new RowPlot(style, label, bars.size(), low, high).through(0);
    for (int i = 0; i < bars.size(); i++) {
      double watt = bars.get(i).power();
      plot.words(
          i,
          bars.get(i).what(),
          display.signed(watt, Dimension.POWER, Math.abs(watt) < 10e3 ? 1 : 0));
      plot.bar(i, 0, shown(bars.get(i)), watt < 0 ? Palette.HOT : Palette.BLUE);
    }
    return plot.figure(title(), whose);
  }

  private double shown(Bar bar) {
    return display.units().unit(Dimension.POWER).fromSi(bar.power());
  }
}
