package soakloop.report;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.plan.Go;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WayAnswer;
import soakloop.plan.Window;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * The next pull's peak over the wait, a line for each way, with the limit.
 *
 * @param answer what a plan gave
 * @param words how it is shown
 */
record WaitCurves(WaitAnswer answer, WaitWords words) implements Chart {
  private static final int PLACES = 120;
  private static final List<Color> HUES =
      List.of(Palette.HOT, Palette.BLUE, Palette.GREEN, Palette.INK, Palette.PINK, Palette.WARM);

  @Override
  public String name() {
    return WaitFiles.CHART;
  }

  @Override
  public String title() {
    return "Peak charge of the next pull over the wait";
  }

  @Override
  public String caption() {
    return "Lines: what "
        + words.percent(answer.plan().confidence())
        + " of the cars stay under. Shaded: where nine in ten lie, "
        + words.way(answer.best().way())
        + ". A window is where a line is under the limit.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    NumberAxis level = Axes.plain(style, "Wait from pull to pull [min]");
    level.setRange(0, answer.plan().horizon() / 60);
    PanelBuilder panel =
        new PanelBuilder(
            style, level, "Peak charge [" + words.display().symbol(Dimension.TEMPERATURE) + "]");
    WayAnswer best = answer.best();
    panel.between(
        shown(best.course(Go::charge, 0.95, PLACES)),
        shown(best.course(Go::charge, 0.05, PLACES)),
        Palette.HOT_BAND);
    int hue = 1;
    for (WayAnswer way : answer.ways()) {
      boolean isBest = way.way().equals(best.way());
      Color color = isBest ? HUES.get(0) : HUES.get(hue % HUES.size());
      hue += isBest ? 0 : 1;
      panel.line(
          words.brief(way.way()),
          shown(way.course(Go::charge, answer.plan().confidence(), PLACES)),
          color,
          isBest ? 3f : 2f);
    }
    double limit = shown(answer.plan().limit());
    panel.limit(limit, "limit " + words.display().temperature(answer.plan().limit()), degrees(10));
    for (Window window : best.windows()) {
      if (window.from() > 0) {
        panel.points("", new double[][] {{window.from() / 60}, {limit}}, Palette.LIMIT, 11);
        panel.below(window.from() / 60, limit, "go from " + words.from(window), Palette.LIMIT);
      }
    }
    return new Figure(
        style,
        title(),
        answer.plan().scenario().title(),
        level,
        List.of(panel.build(1, degrees(8))));
  }

  private double degrees(double kelvin) {
    return words.display().units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(kelvin);
  }

  private double shown(double kelvin) {
    return words.display().units().unit(Dimension.TEMPERATURE).fromSi(kelvin);
  }

  private double[][] shown(double[][] course) {
    Unit unit = words.display().units().unit(Dimension.TEMPERATURE);
    double[][] shown = new double[2][course[0].length];
    for (int i = 0; i < course[0].length; i++) {
      shown[0][i] = course[0][i] / 60;
      shown[1][i] = unit.fromSi(course[1][i]);
    }
    return shown;
  }
}
