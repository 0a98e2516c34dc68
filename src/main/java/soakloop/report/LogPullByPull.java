package soakloop.report;

import java.awt.Color;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import soakloop.quantity.Dimension;
import soakloop.reading.PullReading;

/**
 * What each pull starts at and reads at the counted speed, pull by pull.
 *
 * @param set what is drawn
 * @param display how numbers are shown
 */
record LogPullByPull(LogSet set, Display display) implements Chart {
  static final String NAME = "log-pull-by-pull";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String title() {
    return "Pull by pull";
  }

  @Override
  public String caption() {
    String counted =
        set.counted().isPresent()
            ? "read at " + display.speed(set.counted().getAsDouble())
            : "read";
    return (set.single()
            ? "Where the charge starts, and what is " + counted
            : "In full colour what is " + counted + ", pale where each pull starts")
        + "; pulls that were lifted early are left out.";
  }

  /** Returns whether some log has two pulls to compare. */
  boolean hasSomething() {
    return set.sheets().stream()
        .anyMatch(s -> s.whole().stream().filter(r -> r.counted().isPresent()).count() > 1);
  }

  @Override
  public Figure figure(ChartStyle style) {
    LogKit kit = new LogKit(set, display);
    NumberAxis level = Axes.plain(style, "Pull");
    level.setTickUnit(new NumberTickUnit(1));
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge temperature" + kit.in(Dimension.TEMPERATURE));
    int most = 1;
    for (int s = 0; s < set.sheets().size(); s++) {
      LogSheet sheet = set.sheets().get(s);
      most = Math.max(most, sheet.reading().pulls().size());
      Color color = set.single() ? Palette.HOT : Palette.hue(s);
      Color pale = set.single() ? Palette.WARM : Palette.growing(Palette.hue(s), 0, 2);
      String read = counted();
      add(panel, kit, sheet, PullReading::start, set.single() ? "start" : "", pale);
      add(panel, kit, sheet, PullReading::counted, set.single() ? read : sheet.label(), color);
      if (set.single()) {
        add(panel, kit, sheet, PullReading::coolantStart, "coolant in", Palette.BLUE);
      }
    }
    kit.drawLimit(panel);
    level.setRange(0.7, most + 0.3);
    return new Figure(
        style, title(), kit.subtitle(), level, List.of(panel.build(1, kit.degrees(10))));
  }

  private String counted() {
    return set.counted().isPresent()
        ? "at " + display.speed(set.counted().getAsDouble())
        : "counted";
  }

  private static void add(
      PanelBuilder panel,
      LogKit kit,
      LogSheet sheet,
      Function<PullReading, OptionalDouble> value,
      String name,
      Color color) {
    List<PullReading> some =
        sheet.whole().stream().filter(r -> value.apply(r).isPresent()).toList();
    double[][] line = new double[2][some.size()];
    for (int i = 0; i < some.size(); i++) {
      line[0][i] = some.get(i).pull().number();
      line[1][i] = kit.shown(value.apply(some.get(i)).getAsDouble(), Dimension.TEMPERATURE);
    }
    if (!some.isEmpty()) {
      panel.beaded(name, line, color);
    }
  }
}
