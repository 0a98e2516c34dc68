package soakloop.report;

import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.Pull;

/**
 * A logged signal over engine speed, the pulls of all logs over each other.
 *
 * @param set what is drawn
 * @param display how numbers are shown
 * @param shown which signal
 */
record LogOverSpeed(LogSet set, Display display, Shown shown) implements Chart {
  /** What can be shown over engine speed. */
  enum Shown {
    CHARGE(Signal.CHARGE_TEMPERATURE, "charge", "Charge temperature", 10),
    BOOST(Signal.BOOST, "boost", "Boost", 20e3),
    PRESSURE(Signal.MANIFOLD_PRESSURE, "pressure", "Manifold pressure", 20e3),
    POWER(Signal.WHEEL_POWER, "power", "Power", 50e3),
    TORQUE(Signal.TORQUE, "torque", "Torque", 100);

    private final Signal signal;
    private final String file;
    private final String label;
    private final double least;

    Shown(Signal signal, String file, String label, double least) {
      this.signal = signal;
      this.file = file;
      this.label = label;
      this.least = least;
    }

    Signal signal() {
      return signal;
    }

    String file() {
      return "log-" + file + "-over-speed";
    }
  }

  @Override
  public String name() {
    return shown.file();
  }

  @Override
  public String title() {
    return shown.label
        + " over "
        + (across() == Signal.ENGINE_SPEED ? "engine" : "road")
        + " speed";
  }

  @Override
  public String caption() {
    boolean several = set.sheets().stream().anyMatch(s -> s.reading().pulls().size() > 1);
    String order = several ? "Each pull over the last, darker as they go by." : "As logged.";
    return set.single() ? order : order + " Each log in its own colour.";
  }

  private Signal across() {
    return LogKit.across(set.first());
  }

  /** Returns whether any pull has something to draw over the same speed as the first log's. */
  boolean hasSomething() {
    return set.sheets().stream()
        .anyMatch(s -> drawn(s) && s.reading().pulls().stream().anyMatch(p -> readings(s, p) > 1));
  }

  /** Returns whether a log's pulls are drawn: manifold pressure only where there is no boost. */
  private boolean drawn(LogSheet sheet) {
    if (shown == Shown.PRESSURE && set.sheets().stream().anyMatch(s -> s.has(Signal.BOOST))) {
      return false;
    }
    return sheet.has(shown.signal) && sheet.has(across());
  }

  private int readings(LogSheet sheet, Pull pull) {
    return sheet.reading().updates(shown.signal).between(pull.start(), pull.end()).size();
  }

  @Override
  public Figure figure(ChartStyle style) {
    LogKit kit = new LogKit(set, display);
    String speed = across() == Signal.ENGINE_SPEED ? "Engine speed" : "Road speed";
    NumberAxis level = Axes.plain(style, speed + kit.in(across().dimension()));
    PanelBuilder panel =
        new PanelBuilder(style, level, shown.label + kit.in(shown.signal.dimension()));
    for (int s = 0; s < set.sheets().size(); s++) {
      LogSheet sheet = set.sheets().get(s);
      List<Pull> pulls = sheet.reading().pulls();
      for (int i = 0; i < pulls.size() && drawn(sheet); i++) {
        double[][] line = kit.overSpeed(sheet, shown.signal, pulls.get(i));
        kit.draw(panel, kit.name(s, i, pulls.size()), line, kit.color(s, i, pulls.size()));
      }
    }
    if (across() == Signal.ENGINE_SPEED) {
      set.counted()
          .ifPresent(
              c -> panel.place(kit.shown(c, Dimension.ROTATION), "counted at " + display.speed(c)));
    }
    if (shown == Shown.CHARGE) {
      kit.drawLimit(panel);
    }
    double least = leastHeight(kit);
    return new Figure(style, title(), kit.subtitle(), level, List.of(panel.build(1, least)));
  }

  private double leastHeight(LogKit kit) {
    Dimension dimension = shown.signal.dimension();
    return kit.shown(
        shown.least,
        dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension);
  }

  /** Returns a chart if there is something for it. */
  static Optional<Chart> of(LogSet set, Display display, Shown shown) {
    LogOverSpeed chart = new LogOverSpeed(set, display, shown);
    return chart.hasSomething() ? Optional.of(chart) : Optional.empty();
  }
}
