package soakloop.report;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.plan.SameStartAnswer;
import soakloop.quantity.Dimension;

/**
 * How far apart pulls start over the interval between them, a line for each way of waiting.
 *
 * @param answer what a plan gave
 * @param display how numbers are shown
 */
record SameStartCurves(SameStartAnswer answer, Display display) implements Chart {
  private static final int HUES = 6;

  @Override
  public String name() {
    return SameStartFiles.CHART;
  }

  @Override
  public String title() {
    return "How far apart the pulls start";
  }

  @Override
  public String caption() {
    return "Coolant into the core or charge sensor, whichever is further apart, highest less lowest"
        + " of all pulls that count; what "
        + new WaitWords(display).percent(answer.plan().confidence())
        + " of the cars stay under. Alike is under the dashed line.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    NumberAxis level = Axes.plain(style, "From one pull's end to the next one's start [min]");
    level.setRange(0, answer.plan().horizon() / 60);
    PanelBuilder panel =
        new PanelBuilder(
            style, level, "Apart [" + display.symbol(Dimension.TEMPERATURE_DIFFERENCE) + "]");
    WaitWords words = new WaitWords(display);
    for (int w = 0; w < answer.ways().size(); w++) {
      List<SameStartAnswer.Apart> curve = answer.ways().get(w).curve();
      double[][] line = new double[2][curve.size()];
      for (int i = 0; i < curve.size(); i++) {
        line[0][i] = curve.get(i).seconds() / 60;
        line[1][i] = shown(curve.get(i).start());
      }
      panel.line(words.brief(answer.ways().get(w).way()), line, Palette.hue(w % HUES), 2.2f);
    }
    panel.limit(
        shown(answer.plan().within()),
        "within " + display.fineSize(answer.plan().within()),
        panel.highest());
    return new Figure(
        style,
        title(),
        answer.plan().scenario().title(),
        level,
        List.of(panel.covering(0).build(1, 2)));
  }

  private double shown(double kelvin) {
    return display.units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(kelvin);
  }
}
