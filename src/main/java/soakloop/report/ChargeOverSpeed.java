package soakloop.report;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.RunBands;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.reading.Updates;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Comparison;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * The charge sensor over engine speed, all pulls over each other: as a dyno sheet is read.
 *
 * @param outcome what is drawn
 * @param bands where it lies nine times in ten, if known
 * @param display how numbers are shown
 */
record ChargeOverSpeed(Outcome outcome, Optional<RunBands> bands, Display display)
    implements Chart {
  /** About how many pulls are named. */
  private static final int NAMED = 7;

  /** What two times of the same instant may differ by, s. */
  private static final double INSTANT = 1e-9;

  @Override
  public String name() {
    return NAMES.get(2);
  }

  @Override
  public String title() {
    return "Charge sensor over engine speed";
  }

  @Override
  public String caption() {
    String pulls =
        outcome.pulls().size() > 1
            ? "Each pull over the last, darker as they go by."
            : "The pull as a dyno sheet shows it.";
    String band =
        bands.isEmpty()
            ? ""
            : " The pale band is where nine in ten cars like this have "
                + (outcome.pulls().size() > 1 ? "the last." : "it.");
    return pulls + band + (outcome.comparison().isPresent() ? " Dots are logged." : "");
  }

  /**
   * Returns whether the engine speed rises in any pull: only then is there a line to draw. Passes
   * go through every gear and have a chart of their own.
   */
  boolean hasSomething() {
    if (!Counted.of(outcome).equals(Counted.PULLS)) {
      return false;
    }
    ChartKit kit = new ChartKit(outcome, display);
    return outcome.pulls().stream()
        .map(pull -> modelled(kit, pull)[1])
        .anyMatch(shown -> Arrays.stream(shown).anyMatch(Double::isFinite));
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.plain(style, "Engine speed" + kit.in(Dimension.ROTATION));
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge sensor" + kit.in(Dimension.TEMPERATURE));
    int count = outcome.pulls().size();
    bands.ifPresent(b -> layBands(panel, kit, b));
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      PullResult pull = outcome.pulls().get(i);
      Color color = Palette.step(i, count);
      double[][] curve = modelled(kit, pull);
      for (int k = 0; k < curve[0].length; k++) {
        if (Double.isFinite(curve[1][k])) {
          low = Math.min(low, curve[0][k]);
          high = Math.max(high, curve[0][k]);
        }
      }
      panel.line(named(i, count) ? pull.name() : "", curve, color, 2.2f);
      outcome.comparison().ifPresent(c -> panel.points("", logged(kit, c, pull), color, 3.4));
    }
    markCounted(panel, kit);
    kit.drawLimit(panel);
    double room = Math.max(100, 0.02 * (high - low));
    level.setRange(low - room, high + room);
    return new Figure(
        style,
        title(),
        outcome.scenario().title(),
        level,
        List.of(panel.build(1, kit.degrees(10))));
  }

  /**
   * Returns whether a pull is named: all of a few, of many the first, the last and some between.
   */
  static boolean named(int index, int count) {
    int step = (count + NAMED - 1) / NAMED;
    return index == count - 1 || (index % step == 0 && count - 1 - index >= step);
  }

  /** Marks the counted speed if it is the same for every pull. */
  private void markCounted(PanelBuilder panel, ChartKit kit) {
    double counted = outcome.pulls().get(0).countedTo();
    boolean same = outcome.pulls().stream().allMatch(p -> Math.abs(p.countedTo() - counted) < 0.5);
    if (Double.isFinite(counted) && same) {
      panel.place(kit.shown(counted, Dimension.ROTATION), "counted at " + display.speed(counted));
    }
  }

  /** Lays the band of the last pull behind the lines: those of all would hide one another. */
  private void layBands(PanelBuilder panel, ChartKit kit, RunBands all) {
    int last = outcome.pulls().size() - 1;
    PullResult pull = outcome.pulls().get(last);
    List<soakloop.fit.Band> sensor = all.pulls().get(last).sensor();
    Sweep low = new Sweep();
    Sweep high = new Sweep();
    for (int i = 0; i < sensor.size(); i++) {
      double time =
          pull.startTime() + (pull.endTime() - pull.startTime()) * i / (sensor.size() - 1);
      double speed = kit.shown(kit.trace().at(Channel.ENGINE_SPEED, time), Dimension.ROTATION);
      low.add(time, speed, kit.shown(sensor.get(i).low(), Dimension.TEMPERATURE));
      high.add(time, speed, kit.shown(sensor.get(i).high(), Dimension.TEMPERATURE));
    }
    BandKit.lay(panel, high.rising(), low.rising(), Palette.HOT_BAND);
  }

  private static double[][] modelled(ChartKit kit, PullResult pull) {
    Trace trace = kit.trace();
    Sweep sweep = new Sweep();
    for (int i = trace.firstFrom(pull.startTime()); i < trace.size(); i++) {
      if (trace.time(i) > pull.endTime() + INSTANT) {
        break;
      }
      sweep.add(
          trace.time(i),
          kit.shown(trace.value(Channel.ENGINE_SPEED, i), Dimension.ROTATION),
          kit.shown(trace.value(Channel.SENSOR, i), Dimension.TEMPERATURE));
    }
    return sweep.rising();
  }

  private static double[][] logged(ChartKit kit, Comparison beside, PullResult pull) {
    Updates charge = beside.reading().updates(Signal.CHARGE_TEMPERATURE);
    Optional<Curve> speeds = beside.reading().curve(Signal.ENGINE_SPEED);
    Sweep sweep = new Sweep();
    for (int i = 0; i < charge.size(); i++) {
      double t = charge.time(i) - beside.offset();
      if (t > pull.startTime() && t < pull.endTime()) {
        double speed =
            speeds.isPresent()
                ? speeds.get().at(charge.time(i))
                : kit.trace().at(Channel.ENGINE_SPEED, t);
        sweep.add(
            t,
            kit.shown(speed, Dimension.ROTATION),
            kit.shown(charge.value(i), Dimension.TEMPERATURE));
      }
    }
    return sweep.rising();
  }
}
