package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import soakloop.flow.Mover;
import soakloop.quantity.Dimension;
import soakloop.simulate.LoopPoint;
import soakloop.study.LoopHydraulics;
import soakloop.study.Outcome;

/**
 * The pump's pressure over flow against what the loop takes, piece upon piece.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 * @param hydraulics where they meet
 */
record PumpAgainstLoop(Outcome outcome, Display display, LoopHydraulics hydraulics)
    implements Chart {
  private static final int POINTS = 80;

  /** Room above the highest pressure. */
  private static final double ROOM = 1.08;

  /** How far past the operating point the flows go at the least and at the most. */
  private static final double LEAST_BEYOND = 1.1;

  private static final double MOST_BEYOND = 2.5;

  /** Smallest flow of the axis, m3/s, for a loop that is all but shut. */
  private static final double LEAST_FLOW = 1e-6;

  /** Pieces with a share below this are put together. */
  private static final double SMALL = 0.06;

  @Override
  public String name() {
    return NAMES.get(5);
  }

  @Override
  public String title() {
    return "Pump against loop";
  }

  @Override
  public String caption() {
    return "Where the pump's line meets the loop's, that flow goes round: "
        + flow(hydraulics.running())
        + " at "
        + display.temperature(hydraulics.running().temperature())
        + ", "
        + flow(hydraulics.cold())
        + " at "
        + display.temperature(hydraulics.cold().temperature())
        + ". The shaded bands are what each piece takes of the running loop's pressure.";
  }

  private String flow(LoopPoint point) {
    return display.show(point.flow(), Dimension.VOLUME_FLOW, 1);
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    LoopPoint running = hydraulics.running();
    LoopPoint cold = hydraulics.cold();
    Mover pump = hydraulics.pump();
    double top = ROOM * Math.max(pump.rise(0), Math.max(running.loss(), cold.loss()));
    double[] flows = flows(top);
    NumberAxis level = Axes.plain(style, "Coolant flow" + kit.in(Dimension.VOLUME_FLOW));
    level.setRange(0, kit.shown(flows[POINTS], Dimension.VOLUME_FLOW));
    PanelBuilder panel =
        new PanelBuilder(style, level, "Pressure" + kit.in(Dimension.PRESSURE_DIFFERENCE));
    bands(panel, kit, flows);
    loop(panel, kit, flows, running, Palette.HOT);
    loop(panel, kit, flows, cold, Palette.BLUE);
    double[][] rises =
        line(kit, flows, q -> q <= pump.reach() ? Math.max(0, pump.rise(q)) : Double.NaN);
    panel.line("pump", rises, Palette.INK, 2.4f);
    mark(panel, kit, running, Palette.HOT);
    mark(panel, kit, cold, Palette.BLUE);
    return new Figure(
        style,
        title(),
        outcome.scenario().title(),
        level,
        List.of(panel.exactly(0, kit.shown(top, Dimension.PRESSURE_DIFFERENCE))));
  }

  /** Returns flows up to where the running loop would take all of the axis, if that is near. */
  private double[] flows(double top) {
    LoopPoint running = hydraulics.running();
    double most = LEAST_BEYOND * Math.max(running.flow(), hydraulics.cold().flow());
    double farthest = Math.max(LEAST_FLOW, MOST_BEYOND * running.flow());
    most = Math.max(most, LEAST_FLOW);
    while (most < farthest && hydraulics.loss(running, most) < top) {
      most *= 1.02;
    }
    double last = most;
    return IntStream.rangeClosed(0, POINTS).mapToDouble(i -> last * i / POINTS).toArray();
  }

  /** Shades the pieces one upon the other; small ones together at the top. */
  private void bands(PanelBuilder panel, ChartKit kit, double[] flows) {
    LoopPoint running = hydraulics.running();
    List<String> drawn = new ArrayList<>();
    double small = 0;
    for (LoopPoint.Part part : running.parts()) {
      if (part.loss() < SMALL * running.loss()) {
        small += part.loss();
      } else {
        drawn.add(part.name());
      }
    }
    double[][] lower = line(kit, flows, q -> 0);
    for (int i = 0; i < drawn.size(); i++) {
      List<String> upTo = drawn.subList(0, i + 1);
      double[][] upper = line(kit, flows, q -> hydraulics.loss(running, q, upTo));
      panel.between(upper, lower, i % 2 == 0 ? Palette.SHADE : Palette.STILL);
      String name = drawn.get(i);
      double loss =
          running.parts().stream()
              .filter(p -> p.name().equals(name))
              .mapToDouble(LoopPoint.Part::loss)
              .sum();
      panel.ending(name + " " + share(loss), middle(upper, lower), Palette.QUIET);
      lower = upper;
    }
    if (small > 0) {
      double[][] upper = line(kit, flows, q -> hydraulics.loss(running, q));
      panel.between(upper, lower, drawn.size() % 2 == 0 ? Palette.SHADE : Palette.STILL);
      panel.ending("others " + share(small), middle(upper, lower), Palette.QUIET);
    }
  }

  private String share(double loss) {
    return display.show(loss / hydraulics.running().loss(), Dimension.FRACTION, 0);
  }

  private void loop(
      PanelBuilder panel, ChartKit kit, double[] flows, LoopPoint point, Color color) {
    panel.line(
        "loop at " + display.temperature(point.temperature()),
        line(kit, flows, q -> hydraulics.loss(point, q)),
        color,
        2.4f);
  }

  private static void mark(PanelBuilder panel, ChartKit kit, LoopPoint point, Color color) {
    double[][] at = {
      {kit.shown(point.flow(), Dimension.VOLUME_FLOW)},
      {kit.shown(point.loss(), Dimension.PRESSURE_DIFFERENCE)}
    };
    panel.points("", at, color, 9);
  }

  private static double[][] line(ChartKit kit, double[] flows, DoubleUnaryOperator pressure) {
    double[] values =
        IntStream.range(0, flows.length)
            .mapToDouble(i -> pressure.applyAsDouble(flows[i]))
            .toArray();
    return new double[][] {
      kit.shown(flows, Dimension.VOLUME_FLOW), kit.shown(values, Dimension.PRESSURE_DIFFERENCE)
    };
  }

  /** Returns the right end between two lines. */
  private static double[][] middle(double[][] upper, double[][] lower) {
    int last = upper[0].length - 1;
    return new double[][] {{upper[0][last]}, {(upper[1][last] + lower[1][last]) / 2}};
  }
}
