package soakloop.report;

import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.FitResult;
import soakloop.fit.HeldOut;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * The charge sensor of one case over its session: before the fit, after it and logged, with the
 * pull that was held out and what was foretold of it.
 *
 * @param result what a fit gave
 * @param display how numbers are shown
 * @param index of the case, from 0
 */
record FitOverTime(FitResult result, Display display, int index) implements Chart {
  @Override
  public String name() {
    return fileName(index);
  }

  static String fileName(int index) {
    return "fit-over-time-" + (index + 1);
  }

  @Override
  public String title() {
    return "Charge sensor over the session" + FitFiles.of(result, index);
  }

  @Override
  public String caption() {
    String caption =
        "Dots are logged; the grey line is the scenario as it was, the thick one the fitted car,"
            + " its sensor's own error counted. Pulls are shaded.";
    return held().isEmpty()
        ? caption
        : caption
            + " The bar is the peak foretold for the held-out pull from the pulls before it, nine"
            + " times in ten.";
  }

  private Optional<HeldOut> held() {
    String label = result.plan().cases().get(index).label();
    return result.heldOut().stream().filter(h -> h.label().equals(label)).findFirst();
  }

  @Override
  public Figure figure(ChartStyle style) {
    Outcome after = result.after().get(index);
    ChartKit kit = new ChartKit(after, display);
    ChartKit old = new ChartKit(result.before().get(index), display);
    NumberAxis level = Axes.time(style, kit.time());
    String label = style.narrow() ? "Charge sensor" : "Charge sensor reading";
    PanelBuilder panel = new PanelBuilder(style, level, label + kit.in(Dimension.TEMPERATURE));
    shade(panel, kit, after, style);
    panel.line("before", old.line(Channel.SENSOR), Palette.QUIET, 1.4f);
    panel.line("fitted", shifted(kit), Palette.HOT, 2.4f);
    double[][] logged = kit.logged(Signal.CHARGE_TEMPERATURE, style);
    panel.points("logged", logged, Palette.INK, 2.8).ending("logged", logged, Palette.INK);
    held().ifPresent(h -> foretold(panel, kit, after, h));
    kit.drawLimit(panel);
    return new Figure(
        style, title(), after.scenario().title(), level, List.of(panel.build(1, kit.degrees(10))));
  }

  private double[][] shifted(ChartKit kit) {
    double bias = kit.degrees(result.bias(index, Signal.CHARGE_TEMPERATURE));
    double[][] line = kit.line(Channel.SENSOR);
    for (int i = 0; i < line[1].length; i++) {
      line[1][i] += bias;
    }
    return line;
  }

  private void shade(PanelBuilder panel, ChartKit kit, Outcome outcome, ChartStyle style) {
    Optional<String> held = held().map(HeldOut::pull);
    for (PullResult pull : outcome.pulls()) {
      boolean out = held.filter(pull.name()::equals).isPresent();
      String mark = style.narrow() ? " held" : ", held out";
      panel.band(
          kit.time().of(pull.startTime()),
          kit.time().of(pull.endTime()),
          Counted.of(outcome).number(pull.name()) + (out ? mark : ""));
    }
  }

  private static void foretold(PanelBuilder panel, ChartKit kit, Outcome outcome, HeldOut held) {
    outcome.pulls().stream()
        .filter(p -> p.name().equals(held.pull()))
        .findFirst()
        .ifPresent(
            pull -> {
              double at = kit.time().of(pull.endTime());
              double low = kit.shown(held.foretold().low(), Dimension.TEMPERATURE);
              double high = kit.shown(held.foretold().high(), Dimension.TEMPERATURE);
              panel.line("", new double[][] {{at, at}, {low, high}}, Palette.BLUE, 5);
              panel.above(at, high, "foretold", Palette.BLUE);
            });
  }
}
