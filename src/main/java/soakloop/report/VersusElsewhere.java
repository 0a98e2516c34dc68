package soakloop.report;

import java.awt.Color;
import java.util.List;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.VersusResult;

/**
 * The difference of two under other conditions.
 *
 * @param result what is drawn
 * @param pairing index of the pairing
 * @param display how numbers are shown
 */
record VersusElsewhere(VersusResult result, int pairing, Display display) implements Chart {
  @Override
  public String name() {
    return "versus-elsewhere" + (pairing == 0 ? "" : "-" + (pairing + 1));
  }

  private VersusResult.Pairing pair() {
    return result.pairings().get(pairing);
  }

  @Override
  public String title() {
    VersusWords words = new VersusWords(result, display);
    return "Elsewhere: " + words.label(pair().other()) + " less " + words.label(pair().one());
  }

  @Override
  public String caption() {
    return "How much "
        + new VersusWords(result, display).deciding()
        + " differs. Left of the line "
        + new VersusWords(result, display).label(pair().other())
        + " is cooler; grey bars cannot be told from no difference.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    List<VersusResult.Elsewhere> all = pair().elsewhere();
    double low = 0;
    double high = 0;
    for (VersusResult.Elsewhere there : all) {
      low = Math.min(low, shown(there.difference().by().low()));
      high = Math.max(high, shown(there.difference().by().high()));
    }
    String label = "Difference [" + display.symbol(Dimension.TEMPERATURE_DIFFERENCE) + "]";
    RowPlot plot = new RowPlot(style, label, all.size(), low, high).through(0);
    VersusWords words = new VersusWords(result, display);
    double confidence = result.plan().confidence();
    for (int i = 0; i < all.size(); i++) {
      Band by = all.get(i).difference().by();
      double better = all.get(i).difference().better();
      plot.words(
          i,
          words.conditions(all.get(i)),
          words.difference(all.get(i).difference(), result.plan().by()));
      boolean open = Math.max(better, 1 - better) < confidence;
      Color color = open ? Palette.STONE : by.middle() < 0 ? Palette.BLUE : Palette.HOT;
      plot.interval(i, shown(by.low()), shown(by.middle()), shown(by.high()), color);
    }
    return plot.figure(title(), new VersusWords(result, display).deciding());
  }

  private double shown(double kelvin) {
    return display.units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(kelvin);
  }
}
