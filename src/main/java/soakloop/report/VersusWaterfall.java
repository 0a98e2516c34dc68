package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.Origin;
import soakloop.versus.VersusResult;

/**
 * From one logged rise to the other, step by step.
 *
 * @param result what is drawn
 * @param pairing index of the pairing; it has logs
 * @param display how numbers are shown
 */
record VersusWaterfall(VersusResult result, int pairing, Display display) implements Chart {
  /** One step; K. */
  private record Step(String what, double from, double to, boolean whole) {}

  @Override
  public String name() {
    return "versus-where-from" + (pairing == 0 ? "" : "-" + (pairing + 1));
  }

  @Override
  public String title() {
    return "Where the logged difference comes from, " + raw().pull();
  }

  @Override
  public String caption() {
    return "From the rise that one log shows to the one that the other shows. Only the bar of what"
        + " was swapped is its merit; the others are what was not alike. The last step is what the"
        + " model does not explain.";
  }

  private VersusResult.Raw raw() {
    return result.pairings().get(pairing).logged().get(0);
  }

  private List<Step> steps() {
    VersusWords words = new VersusWords(result, display);
    VersusResult.Raw raw = raw();
    List<Step> steps = new ArrayList<>();
    double at = raw.one().rise();
    String one = words.label(result.pairings().get(pairing).one());
    String other = words.label(result.pairings().get(pairing).other());
    steps.add(new Step("Rise, " + one, 0, at, true));
    for (Origin origin : Origin.values()) {
      if (raw.parts().containsKey(origin)) {
        double part = raw.parts().getOrDefault(origin, new Band(0, 0, 0)).middle();
        steps.add(new Step(Display.sentenceStart(origin.label()), at, at + part, false));
        at += part;
      }
    }
    steps.add(new Step("Not explained", at, at + raw.rest(), false));
    steps.add(new Step("Rise, " + other, 0, raw.other().rise(), true));
    return steps;
  }

  @Override
  public Figure figure(ChartStyle style) {
    List<Step> steps = steps();
    double low = 0;
    double high = 0;
    for (Step step : steps) {
      low = Math.min(low, Math.min(shown(step.from()), shown(step.to())));
      high = Math.max(high, Math.max(shown(step.from()), shown(step.to())));
    }
    String label = "Rise [" + display.symbol(Dimension.TEMPERATURE_DIFFERENCE) + "]";
    RowPlot plot = new RowPlot(style, label, steps.size(), low, high).through(0);
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      double by = step.to() - step.from();
      String number = step.whole() ? display.fineSize(by) : display.fineDifference(by);
      plot.words(i, step.what(), number);
      Color color = step.whole() ? Palette.STONE : by < 0 ? Palette.BLUE : Palette.HOT;
      plot.bar(i, shown(step.from()), shown(step.to()), color);
      if (i + 1 < steps.size()) {
        plot.joined(i, shown(step.to()));
      }
    }
    return plot.figure(title(), "Charge sensor, start to counted end");
  }

  private double shown(double kelvin) {
    return display.units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(kelvin);
  }
}
