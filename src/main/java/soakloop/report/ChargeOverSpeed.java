package soakloop.report;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Comparison;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * The charge sensor over engine speed, all pulls over each other: as a dyno sheet is read.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record ChargeOverSpeed(Outcome outcome, Display display) implements Chart {
  /** About how many pulls are named. */
  private static final int NAMED = 7;

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
    return "Each pull over the last, darker as they go by."
        + (outcome.comparison().isPresent() ? " Dots are logged." : "");
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.plain(style, "Engine speed" + kit.in(Dimension.ROTATION));
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge sensor" + kit.in(Dimension.TEMPERATURE));
    int count = outcome.pulls().size();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      PullResult pull = outcome.pulls().get(i);
      Color color = Palette.step(i, count);
      double[][] curve = modelled(kit, pull);
      for (double speed : curve[0]) {
        low = Math.min(low, speed);
        high = Math.max(high, speed);
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
  private static boolean named(int index, int count) {
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

  private static double[][] modelled(ChartKit kit, PullResult pull) {
    Trace trace = kit.trace();
    int first = trace.firstFrom(pull.startTime());
    int end = first;
    while (end < trace.size() && trace.time(end) <= pull.endTime() + 1e-9) {
      end++;
    }
    double[][] curve = new double[2][end - first];
    for (int i = first; i < end; i++) {
      curve[0][i - first] = kit.shown(trace.value(Channel.ENGINE_SPEED, i), Dimension.ROTATION);
      curve[1][i - first] = kit.shown(trace.value(Channel.SENSOR, i), Dimension.TEMPERATURE);
    }
    return withoutGearChange(curve);
  }

  /**
   * Leaves out the samples at a pull's very edge that still show the idle before or the idle after:
   * at a phase's end two samples share one instant.
   */
  private static double[][] withoutGearChange(double[][] curve) {
    int n = curve[0].length;
    int first = n > 2 && Math.abs(curve[0][1] - curve[0][0]) > EDGE ? 1 : 0;
    int last = n > 2 && Math.abs(curve[0][n - 1] - curve[0][n - 2]) > EDGE ? n - 1 : n;
    return new double[][] {
      Arrays.copyOfRange(curve[0], first, last), Arrays.copyOfRange(curve[1], first, last)
    };
  }

  /** A jump between two samples that no engine makes, rpm. */
  private static final double EDGE = 600;

  /** Returns how many readings there are up to the highest speed: the rest is after the lift. */
  private static int uptoHighest(double[] speed, int count) {
    int highest = 0;
    for (int i = 1; i < count; i++) {
      highest = speed[i] >= speed[highest] ? i : highest;
    }
    return Math.min(count, highest + 1);
  }

  private static double[][] logged(ChartKit kit, Comparison beside, PullResult pull) {
    Log log = beside.log();
    Optional<Curve> speeds = log.curve(Signal.ENGINE_SPEED);
    double[] x = new double[log.size()];
    double[] y = new double[log.size()];
    int n = 0;
    for (int i = 0; i < log.size(); i++) {
      double t = log.time(i) - beside.offset();
      double value = log.value(Signal.CHARGE_TEMPERATURE, i);
      if (t > pull.startTime() && t < pull.endTime() && Double.isFinite(value)) {
        double speed =
            speeds.isPresent()
                ? speeds.get().at(log.time(i))
                : kit.trace().at(Channel.ENGINE_SPEED, t);
        x[n] = kit.shown(speed, Dimension.ROTATION);
        y[n++] = kit.shown(value, Dimension.TEMPERATURE);
      }
    }
    int end = uptoHighest(x, n);
    return new double[][] {Arrays.copyOf(x, end), Arrays.copyOf(y, end)};
  }
}
