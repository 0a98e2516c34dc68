package soakloop.report;

import java.awt.Color;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import soakloop.quantity.Dimension;
import soakloop.study.Outcome;
import soakloop.study.PullResult;
import soakloop.study.Readings;

/**
 * Start, counted end and peak of every pull: how heat soak creeps up.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record Creep(Outcome outcome, Display display) implements Chart {
  @Override
  public String name() {
    return NAMES.get(3);
  }

  @Override
  public String title() {
    String one = Counted.of(outcome).one();
    return "Charge sensor, " + one + " by " + one;
  }

  @Override
  public String caption() {
    boolean logged = outcome.pulls().stream().anyMatch(p -> p.logged().isPresent());
    Counted counted = Counted.of(outcome);
    return "If the lines climb, the loop does not recover between "
        + counted.many()
        + "; once they level out it has found its balance. Peak is the highest reading until the"
        + " next "
        + counted.one()
        + " or engine off."
        + (logged ? " Rings are logged." : "");
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    int count = outcome.pulls().size();
    NumberAxis level = Axes.plain(style, Counted.of(outcome).head());
    level.setRange(1 - 0.05 * count, count + Math.max(0.08, 0.025 * count));
    level.setTickUnit(new NumberTickUnit(Math.max(1, Math.ceil(count / 12.0))));
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge sensor" + kit.in(Dimension.TEMPERATURE));
    draw(panel, kit, "peak", Readings::peakToNextPull, Palette.EMBER);
    draw(panel, kit, "counted end", Readings::end, Palette.HOT);
    draw(panel, kit, "start", Readings::start, Palette.WARM);
    kit.drawLimit(panel);
    return new Figure(
        style,
        title(),
        outcome.scenario().title(),
        level,
        List.of(panel.build(1, kit.degrees(10))));
  }

  private void draw(
      PanelBuilder panel,
      ChartKit kit,
      String name,
      ToDoubleFunction<Readings> reading,
      Color color) {
    List<PullResult> pulls = outcome.pulls();
    double[][] modelled = new double[2][pulls.size()];
    double[][] logged = new double[2][pulls.size()];
    for (int i = 0; i < pulls.size(); i++) {
      PullResult pull = pulls.get(i);
      modelled[0][i] = i + 1;
      logged[0][i] = i + 1;
      modelled[1][i] = kit.shown(reading.applyAsDouble(pull.sensor()), Dimension.TEMPERATURE);
      logged[1][i] =
          pull.logged()
              .map(l -> kit.shown(reading.applyAsDouble(l.sensor()), Dimension.TEMPERATURE))
              .orElse(Double.NaN);
    }
    panel.rings(logged, color).beaded(name, modelled, color);
  }
}
