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
  private static final List<Channel> IN =
      List.of(
          Channel.HEAT_CORE,
          Channel.HEAT_DUCTS,
          Channel.HEAT_ENGINE,
          Channel.HEAT_PUMP,
          Channel.HEAT_UNDERHOOD);

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
    return "Added up from the start. In: from charge air, engine, pump and underhood air. Out: to"
        + " the outside air. The shaded gap between them is heat soak: it is still in coolant"
        + " and metal.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    TimeScale time = kit.time();
    NumberAxis level = Axes.time(style, time);
    PanelBuilder panel = new PanelBuilder(style, level, "Heat" + kit.in(Dimension.ENERGY));
    double[][] in = time.line(kit.trace(), sum(kit, IN));
    double[][] out = time.line(kit.trace(), sum(kit, List.of(Channel.HEAT_AMBIENT)));
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

  /** Integrates channels from the first time shown, in shown units, by the trapezoidal rule. */
  private static double[] sum(ChartKit kit, List<Channel> channels) {
    Trace trace = kit.trace();
    double[] sum = new double[trace.size()];
    for (int i = trace.firstFrom(kit.time().from()) + 1; i < sum.length; i++) {
      double step = trace.time(i) - trace.time(i - 1);
      double mean = 0;
      for (Channel channel : channels) {
        mean += (trace.value(channel, i) + trace.value(channel, i - 1)) / 2;
      }
      sum[i] = sum[i - 1] + kit.shown(step * mean, Dimension.ENERGY);
    }
    return sum;
  }
}
