package soakloop.report;

import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.axis.NumberAxis;
import soakloop.quantity.Dimension;
import soakloop.study.KeyRange;
import soakloop.study.LimitLine;
import soakloop.study.Measure;
import soakloop.study.Variation;

/**
 * One result over one key, with the limit, where it is crossed, and the logged run.
 *
 * @param variation the results
 * @param measure which of them
 * @param words how they are shown
 */
record VaryCurve(Variation variation, Measure measure, VaryWords words) implements Chart {
  /** Most runs that are told apart by dots. */
  private static final int MOST_DOTS = 80;

  @Override
  public String name() {
    return VaryFiles.chart(measure);
  }

  @Override
  public String title() {
    return measure.label() + " over " + range().key();
  }

  @Override
  public String caption() {
    String caption =
        range().size() <= MOST_DOTS ? "Every dot is a run." : range().size() + " runs.";
    if (range().coversOwn()) {
      caption += " The upright line is the scenario as it is.";
    }
    if (variation.logged(measure).isPresent()) {
      caption += " The ring is the logged run.";
    }
    return caption;
  }

  private KeyRange range() {
    return variation.plan().keys().get(0);
  }

  @Override
  public Figure figure(ChartStyle style) {
    KeyRange range = range();
    NumberAxis level = Axes.plain(style, words.axis(range, style.narrow()));
    double edge = 0.03 * (range.last() - range.first());
    level.setRange(range.first() - edge, range.last() + edge);
    PanelBuilder panel = new PanelBuilder(style, level, words.brief(measure) + words.unit(measure));
    if (range.coversOwn()) {
      double own = range.own().getAsDouble();
      // A time lies along zero for much of its range, where the name would stand.
      boolean room = measure.dimension() != Dimension.TIME;
      panel.place(own, room ? "scenario " + words.value(range, own) : "");
    }
    double[][] curve = curve();
    if (range.size() <= MOST_DOTS) {
      panel.beaded("", curve, Palette.HOT);
    } else {
      panel.line("", Thinning.line(curve[0], curve[1]), Palette.HOT, 2.4f);
    }
    if (variation.logged(measure).isPresent()) {
      drawLogged(panel, variation.logged(measure).getAsDouble());
    }
    OptionalDouble limit = variation.plan().limit(measure);
    if (limit.isPresent()) {
      double shown = words.shown(measure, limit.getAsDouble());
      panel.limit(shown, "limit " + words.limit(measure, limit.getAsDouble()), least());
      crossings().forEach(c -> drawCrossing(panel, c, shown));
    }
    return new Figure(
        style,
        title(),
        variation.plan().scenario().title(),
        level,
        List.of(
            measure.dimension() == Dimension.TIME ? upFromZero(panel) : panel.build(1, least())));
  }

  /** Ends the panel of a time, which is never below zero. */
  private Panel upFromZero(PanelBuilder panel) {
    double top = Math.max(panel.highest(), least());
    return panel.exactly(-0.04 * top, 1.08 * top);
  }

  private void drawLogged(PanelBuilder panel, double logged) {
    double shown = words.shown(measure, logged);
    panel.level(shown, "logged " + words.show(measure, logged), Palette.INK);
    if (range().coversOwn()) {
      panel.rings(new double[][] {{range().own().getAsDouble()}, {shown}}, Palette.INK);
    }
  }

  private List<LimitLine.Crossing> crossings() {
    return variation.lines().stream()
        .filter(line -> line.measure() == measure)
        .flatMap(line -> line.crossings().stream())
        .toList();
  }

  private void drawCrossing(PanelBuilder panel, LimitLine.Crossing crossing, double limit) {
    double at = crossing.under();
    panel.points("", new double[][] {{at}, {limit}}, Palette.LIMIT, 11);
    String text = words.foundValue(range(), at);
    // On the side of the limit that the curve leaves free.
    if (crossing.rises()) {
      panel.below(at, limit, text, Palette.LIMIT);
    } else {
      panel.above(at, limit, text, Palette.LIMIT);
    }
  }

  /** Returns the results in shown units; NaN, a gap, where a run failed. */
  double[][] curve() {
    double[][] xy = new double[2][range().size()];
    for (int i = 0; i < range().size(); i++) {
      xy[0][i] = range().values().get(i);
      xy[1][i] = words.shown(measure, variation.value(i, measure));
    }
    return xy;
  }

  private double least() {
    return measure.dimension() == Dimension.TIME
        ? 4
        : words.display().units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(4);
  }
}
