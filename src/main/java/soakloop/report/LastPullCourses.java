package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.reading.Updates;
import soakloop.study.Comparison;
import soakloop.study.KeyRange;
import soakloop.study.Outcome;
import soakloop.study.PullResult;
import soakloop.study.Variation;
import soakloop.study.VaryPoint;

/**
 * The charge sensor over the last pull, a line for each of some values of the key.
 *
 * @param variation the results
 * @param words how they are shown
 */
record LastPullCourses(Variation variation, VaryWords words) implements Chart {
  @Override
  public String name() {
    return VaryFiles.LAST_PULL;
  }

  @Override
  public String title() {
    return "Charge sensor over " + words.lastPull() + ", by " + range().key();
  }

  @Override
  public String caption() {
    return "A line for each value, darker as it goes up."
        + (logged()[0].length > 0 ? " Dots are logged, with the scenario as it is." : "");
  }

  private KeyRange range() {
    return variation.plan().keys().get(0);
  }

  @Override
  public Figure figure(ChartStyle style) {
    NumberAxis level = Axes.plain(style, "Time in the pull [s]");
    Unit unit = words.display().units().unit(Dimension.TEMPERATURE);
    String label = "Charge sensor [" + words.display().symbol(Dimension.TEMPERATURE) + "]";
    PanelBuilder panel = new PanelBuilder(style, level, label);
    List<VaryPoint.Ran> drawn = drawn();
    double end = 0;
    for (int i = 0; i < drawn.size(); i++) {
      VaryPoint.Course course = drawn.get(i).lastPull().orElseThrow();
      Color color = Palette.step(i, drawn.size());
      String name = words.value(range(), range().values().get(drawn.get(i).index()));
      panel.line(name, curve(course, unit), color, 2.2f);
      end = Math.max(end, course.times().get(course.times().size() - 1));
    }
    double[][] logged = logged();
    if (logged[0].length > 0) {
      panel.points("logged", logged, Palette.INK, 3.6).ending("logged", logged, Palette.INK);
    }
    variation
        .plan()
        .scenario()
        .limits()
        .chargeTemperature()
        .ifPresent(
            k ->
                panel.limit(
                    unit.fromSi(k),
                    "limit " + words.display().temperature(k),
                    words.display().units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(10)));
    level.setRange(0, Math.max(end, 0.1));
    return new Figure(
        style,
        title(),
        variation.plan().scenario().title(),
        level,
        List.of(
            panel.build(
                1, words.display().units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(10))));
  }

  private List<VaryPoint.Ran> drawn() {
    List<VaryPoint.Ran> drawn = new ArrayList<>();
    for (VaryPoint point : variation.points()) {
      if (point instanceof VaryPoint.Ran ran && ran.lastPull().isPresent()) {
        drawn.add(ran);
      }
    }
    return drawn;
  }

  private static double[][] curve(VaryPoint.Course course, Unit unit) {
    double[] x = course.times().stream().mapToDouble(Double::doubleValue).toArray();
    double[] y = course.values().stream().mapToDouble(unit::fromSi).toArray();
    return Thinning.line(x, y);
  }

  /** Returns the logged readings within the last pull, in shown units. */
  private double[][] logged() {
    Optional<Comparison> beside = variation.own().flatMap(Outcome::comparison);
    if (beside.isEmpty()) {
      return new double[2][0];
    }
    List<PullResult> pulls = variation.own().orElseThrow().pulls();
    PullResult pull = pulls.get(pulls.size() - 1);
    Updates measured = beside.get().reading().updates(Signal.CHARGE_TEMPERATURE);
    Unit unit = words.display().units().unit(Dimension.TEMPERATURE);
    double zero = beside.get().offset() + pull.startTime();
    double[] x = Arrays.stream(measured.times()).map(t -> t - zero).toArray();
    double[] y = Arrays.stream(measured.values()).map(unit::fromSi).toArray();
    return Thinning.points(x, y, 0, pull.endTime() - pull.startTime(), 200);
  }
}
