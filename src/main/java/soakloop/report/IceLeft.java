package soakloop.report;

import java.util.Arrays;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * Ice left in the tank over the session.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record IceLeft(Outcome outcome, Display display) implements Chart {
  /** Least mass that the scale shows, kg. */
  private static final double LEAST = 0.5;

  /** Shortest time into a phase: both ends of the step at its start have the same time, s. */
  private static final double INTO = 1e-6;

  @Override
  public String name() {
    return NAMES.get(6);
  }

  @Override
  public String title() {
    return "Ice left in the tank";
  }

  @Override
  public String caption() {
    return "It melts as quickly as the coolant brings heat; the less is left, the less surface it"
        + " has and the warmer the coolant gets.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.time(style, kit.time());
    PanelBuilder panel = new PanelBuilder(style, level, "Ice" + kit.in(Dimension.MASS));
    kit.shadePulls(panel, true);
    panel.line("ice left", kit.line(Channel.ICE_LEFT), Palette.SKY, 2.4f).covering(0);
    return new Figure(
        style,
        title(),
        outcome.scenario().title(),
        level,
        List.of(panel.build(1, kit.shown(LEAST, Dimension.MASS))));
  }

  boolean hasSomething() {
    return hasSomething(outcome.trace());
  }

  /** Returns whether there is ever any ice. */
  static boolean hasSomething(Trace trace) {
    return Arrays.stream(trace.values(Channel.ICE_LEFT)).anyMatch(mass -> mass > 0);
  }

  /** Returns the ice left just after an instant, kg: after ice that goes in then. */
  static double at(Trace trace, double time) {
    return trace.at(Channel.ICE_LEFT, time + INTO);
  }
}
