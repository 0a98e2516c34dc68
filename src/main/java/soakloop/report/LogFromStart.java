package soakloop.report;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/**
 * The charge temperature from the start of each pull on, pulls over each other: what the pull does
 * and how it cools after.
 *
 * @param set what is drawn
 * @param display how numbers are shown
 */
record LogFromStart(LogSet set, Display display) implements Chart {
  static final String NAME = "log-from-start";

  private static final double BEFORE = 5;
  private static final double AFTER = 30;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String title() {
    return "Charge temperature from each pull's start";
  }

  @Override
  public String caption() {
    return "Every pull begins at 0 s; what follows it is shown for "
        + Math.round(AFTER)
        + " s or until the next."
        + (set.single() ? "" : " Each log in its own colour, darker as pulls go by.");
  }

  @Override
  public Figure figure(ChartStyle style) {
    LogKit kit = new LogKit(set, display);
    NumberAxis level = Axes.plain(style, "Time from the pull's start [s]");
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge temperature" + kit.in(Dimension.TEMPERATURE));
    double longest = 0;
    for (int s = 0; s < set.sheets().size(); s++) {
      LogSheet sheet = set.sheets().get(s);
      List<Pull> pulls = sheet.reading().pulls();
      for (int i = 0; i < pulls.size(); i++) {
        longest = Math.max(longest, pulls.get(i).duration());
        double[][] line = line(kit, sheet, i);
        kit.draw(panel, kit.name(s, i, pulls.size()), line, kit.color(s, i, pulls.size()));
      }
    }
    level.setRange(-BEFORE, longest + AFTER);
    panel.place(0, "start");
    kit.drawLimit(panel);
    return new Figure(
        style, title(), kit.subtitle(), level, List.of(panel.build(1, kit.degrees(10))));
  }

  private static double[][] line(LogKit kit, LogSheet sheet, int index) {
    List<Pull> pulls = sheet.reading().pulls();
    Pull pull = pulls.get(index);
    double next =
        index + 1 < pulls.size() ? pulls.get(index + 1).start() : Double.POSITIVE_INFINITY;
    double before = index > 0 ? pulls.get(index - 1).end() : Double.NEGATIVE_INFINITY;
    Updates charge =
        sheet
            .reading()
            .updates(Signal.CHARGE_TEMPERATURE)
            .between(Math.max(before, pull.start() - BEFORE), Math.min(next, pull.end() + AFTER));
    double[] x = charge.times();
    for (int i = 0; i < x.length; i++) {
      x[i] -= pull.start();
    }
    return new double[][] {x, kit.shown(charge.values(), Dimension.TEMPERATURE)};
  }
}
