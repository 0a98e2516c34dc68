package soakloop.report;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * Heat that came in and heat that went out, added up over the session; between them lies what the
 * loop and its metal hold.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record HeatMoved(Outcome outcome, Display display) implements Chart {
  @Override
  public String name() {
    return NAMES.get(4);
  }

  @Override
  public String title() {
    return "Heat in, heat out";
  }

  @Override
  public String caption() {
    boolean gained = outcome.trace().energy().stored() >= 0;
    return "Added up from the start: all that comes in, and all that goes out to the air. The shaded"
        + " gap between them is "
        + (gained
            ? (outcome.trace().energy().storedIce() > 0
                ? "in coolant, metal and melted ice."
                : "heat soak: it is still in coolant and metal.")
            : "what coolant and metal have given up.");
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    TimeScale time = kit.time();
    NumberAxis level = Axes.time(style, time);
    PanelBuilder panel = new PanelBuilder(style, level, "Heat" + kit.in(Dimension.ENERGY));
    double[][] in = time.line(kit.trace(), sum(kit, true));
    double[][] out = time.line(kit.trace(), sum(kit, false));
    kit.shadePulls(panel, true);
    panel
        .between(in, out, Palette.STORED)
        .line("heat in", in, Palette.HOT, 2.4f)
        .line("heat out", out, Palette.BLUE, 2.4f)
        .covering(0);
    return new Figure(
        style,
        title(),
        outcome.scenario().title(),
        level,
        List.of(panel.build(1, kit.shown(1e4, Dimension.ENERGY))));
  }

  /**
   * Integrates the flows that are inward over the session, or those that are outward, from the
   * first time shown, in shown units, by the trapezoidal rule.
   */
  private static double[] sum(ChartKit kit, boolean inward) {
    Trace trace = kit.trace();
    List<Channel> flows =
        HeatBalance.flows().stream()
            .filter(c -> HeatBalance.isInward(trace.energy(), c) == inward)
            .toList();
    double[] sum = new double[trace.size()];
    for (int i = trace.firstFrom(kit.time().from()) + 1; i < sum.length; i++) {
      double step = trace.time(i) - trace.time(i - 1);
      double mean = 0;
      for (Channel channel : flows) {
        double sign = inward == HeatBalance.countsOutward(channel) ? -1 : 1;
        mean += sign * (trace.value(channel, i) + trace.value(channel, i - 1)) / 2;
      }
      sum[i] = sum[i - 1] + kit.shown(step * mean, Dimension.ENERGY);
    }
    return sum;
  }
}
