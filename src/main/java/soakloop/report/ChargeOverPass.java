package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import soakloop.quantity.Dimension;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * The charge sensor from launch to after the traps, all passes over each other, with the speeds of
 * the last below.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record ChargeOverPass(Outcome outcome, Display display) implements Chart {
  /** Time shown after the traps, in which a lagging sensor still rises, s. */
  private static final double AFTER = 8;

  @Override
  public String name() {
    return NAMES.get(8);
  }

  @Override
  public String title() {
    return "Charge sensor from launch to the traps";
  }

  @Override
  public String caption() {
    return (passes().size() > 1 ? "Each pass over the last, darker as they go by. " : "")
        + "The line marks the traps of the last pass; what follows is the throttle closed. Below:"
        + " road and engine speed, whose dips are shifts.";
  }

  boolean hasSomething() {
    return !passes().isEmpty();
  }

  private List<Trace.Span> passes() {
    return outcome.trace().pulls().stream()
        .filter(span -> span.phase().drive() instanceof Drive.Pass)
        .toList();
  }

  @Override
  public Figure figure(ChartStyle plain) {
    ChartStyle style = plain.tall(1.5);
    ChartKit kit = new ChartKit(outcome, display);
    List<Trace.Span> passes = passes();
    Trace.Span last = passes.get(passes.size() - 1);
    double length = last.end() - last.start();
    NumberAxis level = Axes.plain(style, "Time from launch [s]");
    PanelBuilder charge =
        new PanelBuilder(style, level, "Charge sensor" + kit.in(Dimension.TEMPERATURE));
    for (int i = 0; i < passes.size(); i++) {
      Color color = Palette.step(i, passes.size());
      String name = ChargeOverSpeed.named(i, passes.size()) ? passes.get(i).phase().name() : "";
      charge.line(name, course(kit, passes.get(i), Channel.SENSOR), color, 2.2f);
    }
    charge.place(length, "traps");
    kit.drawLimit(charge);
    level.setRange(0, length + AFTER);
    List<Panel> panels = new ArrayList<>();
    panels.add(charge.build(3, kit.degrees(10)));
    panels.add(speed(kit, style, level, last, Channel.ROAD_SPEED, "Road"));
    panels.add(speed(kit, style, level, last, Channel.ENGINE_SPEED, "Engine"));
    return new Figure(style, title(), outcome.scenario().title(), level, panels);
  }

  private static Panel speed(
      ChartKit kit,
      ChartStyle style,
      NumberAxis level,
      Trace.Span pass,
      Channel channel,
      String label) {
    PanelBuilder panel = new PanelBuilder(style, level, label + kit.in(channel.dimension()));
    panel.line("", course(kit, pass, channel), Palette.BLUE, 1.8f);
    return panel.place(pass.end() - pass.start(), "").build(1, kit.shown(1, channel.dimension()));
  }

  /** Returns a channel over the time from launch, up to some time after the traps. */
  private static double[][] course(ChartKit kit, Trace.Span pass, Channel channel) {
    Trace trace = kit.trace();
    int from = trace.firstFrom(pass.start());
    // Of two samples of one instant the first still belongs to the phase before.
    while (from + 1 < trace.size() && trace.time(from + 1) <= pass.start()) {
      from++;
    }
    int to = from;
    while (to < trace.size() && trace.time(to) <= pass.end() + AFTER) {
      to++;
    }
    double[][] line = new double[2][to - from];
    for (int i = from; i < to; i++) {
      line[0][i - from] = trace.time(i) - pass.start();
      line[1][i - from] = kit.shown(trace.value(channel, i), channel.dimension());
    }
    return line;
  }
}
