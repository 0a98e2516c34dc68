package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.Pull;
import soakloop.reading.Updates;
import soakloop.reading.Wait;

/**
 * One log over its time: temperatures above, speed and boost below.
 *
 * @param set all logs
 * @param display how numbers are shown
 * @param index which of them is drawn, from 0
 */
record LogOverTime(LogSet set, Display display, int index) implements Chart {
  /**
   * A drawn signal.
   *
   * @param signal which
   * @param name at its line's end
   */
  private record Line(Signal signal, String name, Color color, float width) {}

  private static final List<Line> COOL =
      List.of(
          new Line(Signal.INLET_AIR, "inlet air", Palette.QUIET, 1.4f),
          new Line(Signal.RESERVOIR, "reservoir", Palette.GREEN, 1.8f),
          new Line(Signal.CORE_COOLANT_OUT, "coolant out", Palette.SKY, 1.8f),
          new Line(Signal.CORE_COOLANT_IN, "coolant in", Palette.BLUE, 2),
          new Line(Signal.CHARGE_TEMPERATURE, "charge", Palette.HOT, 2.2f));
  private static final List<Line> HOT =
      List.of(
          new Line(Signal.ENGINE_COOLANT, "engine coolant", Palette.PINK, 1.6f),
          new Line(Signal.CORE_AIR_IN, "air before core", Palette.EMBER, 1.6f));
  private static final List<Line> SPEED =
      List.of(new Line(Signal.ENGINE_SPEED, "engine", Palette.INK, 1.4f));
  private static final List<Line> ROAD =
      List.of(new Line(Signal.ROAD_SPEED, "road", Palette.INK, 1.4f));
  private static final List<Line> BOOST =
      List.of(new Line(Signal.BOOST, "boost", Palette.INK, 1.4f));

  private static final List<Line> PRESSURE =
      List.of(new Line(Signal.MANIFOLD_PRESSURE, "manifold", Palette.INK, 1.4f));

  /** Time without updates over which no line is drawn: this many times their spacing. */
  private static final double GAP = 6;

  @Override
  public String name() {
    return fileName(index);
  }

  static String fileName(int index) {
    return "log-over-time-" + (index + 1);
  }

  @Override
  public String title() {
    return set.single() ? "The log over its time" : sheet().label() + " over its time";
  }

  @Override
  public String caption() {
    String pulls = sheet().reading().pulls().isEmpty() ? "" : "Pulls are shaded and numbered. ";
    return pulls + "Only true readings are drawn: rows that repeat an older value are left out.";
  }

  private LogSheet sheet() {
    return set.sheets().get(index);
  }

  @Override
  public Figure figure(ChartStyle plain) {
    List<List<Line>> wanted = new ArrayList<>();
    boolean warm = any(COOL);
    if (warm) {
      wanted.add(COOL);
    }
    for (List<Line> lines :
        List.of(HOT, any(SPEED) ? SPEED : ROAD, any(BOOST) ? BOOST : PRESSURE)) {
      if (any(lines)) {
        wanted.add(lines);
      }
    }
    ChartStyle style = plain.tall(0.7 + 0.3 * wanted.size());
    LogKit kit = new LogKit(set, display);
    TimeScale time = new TimeScale(sheet().log().time(0), sheet().log().endTime());
    NumberAxis level = Axes.time(style, time);
    List<Panel> panels = new ArrayList<>();
    for (List<Line> lines : wanted) {
      panels.add(panel(lines, kit, time, level, style, panels.isEmpty()));
    }
    return new Figure(style, title(), kit.subtitle(), level, panels);
  }

  private boolean any(List<Line> lines) {
    return lines.stream().anyMatch(l -> sheet().has(l.signal));
  }

  private Panel panel(
      List<Line> lines,
      LogKit kit,
      TimeScale time,
      NumberAxis level,
      ChartStyle style,
      boolean first) {
    Dimension dimension = lines.get(0).signal.dimension();
    PanelBuilder panel = new PanelBuilder(style, level, label(lines, style) + kit.in(dimension));
    shade(panel, time, first);
    for (Line line : lines) {
      if (sheet().has(line.signal)) {
        panel.line(line.name, course(line.signal, kit, time), line.color, line.width);
      }
    }
    if (lines.equals(COOL)) {
      kit.drawLimit(panel);
    }
    boolean temperature = dimension == Dimension.TEMPERATURE;
    return panel.build(lines.equals(COOL) ? 3 : 1, temperature ? kit.degrees(10) : 1);
  }

  private static String label(List<Line> lines, ChartStyle style) {
    if (lines.equals(COOL)) {
      return "Temperature";
    }
    if (lines.equals(HOT)) {
      return style.narrow() ? "Hot" : "Hot side";
    }
    if (lines.equals(BOOST) || lines.equals(PRESSURE)) {
      return lines.equals(BOOST) ? "Boost" : "Pressure";
    }
    return "Speed";
  }

  private void shade(PanelBuilder panel, TimeScale time, boolean named) {
    for (Wait wait : sheet().reading().waits()) {
      if (wait.engine() == Wait.Engine.OFF) {
        panel.still(time.of(wait.from()), time.of(wait.to()), named ? "engine off" : "");
      }
    }
    for (Pull pull : sheet().reading().pulls()) {
      panel.band(time.of(pull.start()), time.of(pull.end()), named ? LogWords.number(pull) : "");
    }
  }

  /** A signal over time, broken where the log is silent. */
  private double[][] course(Signal signal, LogKit kit, TimeScale time) {
    Updates updates = sheet().reading().updates(signal);
    double[] at = updates.times();
    double gap =
        at.length < 2 ? 0 : Math.max(2, GAP * (at[at.length - 1] - at[0]) / (at.length - 1));
    double[] values = kit.shown(updates.values(), signal.dimension());
    double[] x = new double[2 * at.length];
    double[] y = new double[2 * at.length];
    int n = 0;
    for (int i = 0; i < at.length; i++) {
      if (i > 0 && at[i] - at[i - 1] > gap) {
        x[n] = time.of(at[i]);
        y[n++] = Double.NaN;
      }
      x[n] = time.of(at[i]);
      y[n++] = values[i];
    }
    return Thinning.line(java.util.Arrays.copyOf(x, n), java.util.Arrays.copyOf(y, n));
  }
}
