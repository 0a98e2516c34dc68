package soakloop.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.RunBands;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.study.Outcome;

/**
 * Coolant and metal over the session.
 *
 * @param outcome what is drawn
 * @param bands where it lies nine times in ten, if known
 * @param display how numbers are shown
 */
record CoolantOverTime(Outcome outcome, Optional<RunBands> bands, Display display)
    implements Chart {
  /** How much taller an extra line may make the chart before it is left out. */
  private static final double SQUASHED = 1.6;

  @Override
  public String name() {
    return NAMES.get(1);
  }

  @Override
  public String title() {
    return "Coolant and metal over the session";
  }

  @Override
  public String caption() {
    String dots = loggedAny() ? " Dots are logged, in the colour of their line." : "";
    String left =
        shows(Channel.PLENUM_METAL)
            ? ""
            : " Plenum metal is much hotter (" + plenumRange() + ") and left off the scale.";
    String point =
        outcome.pulls().isEmpty()
            ? "The core can cool the charge no further than to the coolant that enters it."
            : "Where the loop starts each "
                + Counted.of(outcome).one()
                + " is what the core has to work with.";
    String band =
        bands.isPresent() ? " The pale band is where nine in ten cars like this have core in." : "";
    return point + dots + band + left;
  }

  @Override
  public Figure figure(ChartStyle style) {
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.time(style, kit.time());
    String label = style.narrow() ? "Coolant, metal" : "Coolant and metal";
    PanelBuilder panel = new PanelBuilder(style, level, label + kit.in(Dimension.TEMPERATURE));
    kit.shadePulls(panel, true);
    bands.ifPresent(b -> BandKit.lay(panel, kit, b, Channel.CORE_COOLANT_IN, Palette.BLUE_BAND));
    if (shows(Channel.PLENUM_METAL)) {
      panel.line("plenum metal", kit.line(Channel.PLENUM_METAL), Palette.QUIET, 1.6f);
    }
    panel.line("core metal", kit.line(Channel.CORE_METAL), Palette.PINK, 1.6f);
    if (shows(Channel.RESERVOIR)) {
      panel.line("reservoir", kit.line(Channel.RESERVOIR), Palette.GREEN, 2.4f);
    }
    panel.line("core out", kit.line(Channel.CORE_COOLANT_OUT), Palette.SKY, 1.8f);
    panel.line("core in", kit.line(Channel.CORE_COOLANT_IN), Palette.BLUE, 2.4f);
    dots(panel, kit, style, Signal.RESERVOIR, Palette.GREEN);
    dots(panel, kit, style, Signal.CORE_COOLANT_OUT, Palette.SKY);
    dots(panel, kit, style, Signal.CORE_COOLANT_IN, Palette.BLUE);
    return new Figure(
        style, title(), outcome.scenario().title(), level, List.of(panel.build(1, kit.degrees(5))));
  }

  private static void dots(
      PanelBuilder panel, ChartKit kit, ChartStyle style, Signal signal, java.awt.Color color) {
    double[][] logged = kit.logged(signal, style);
    if (logged[0].length > 0) {
      panel.points("", logged, color, 2.8);
    }
  }

  private boolean loggedAny() {
    return outcome
        .comparison()
        .filter(
            c ->
                c.reading().log().has(Signal.CORE_COOLANT_IN)
                    || c.reading().log().has(Signal.CORE_COOLANT_OUT)
                    || c.reading().log().has(Signal.RESERVOIR))
        .isPresent();
  }

  /** Returns whether a channel has values, and none so far off that the others are squashed. */
  private boolean shows(Channel channel) {
    double[] its = range(channel);
    double[] loop = range(Channel.CORE_COOLANT_IN);
    double[] metal = range(Channel.CORE_METAL);
    double low = Math.min(loop[0], metal[0]);
    double high = Math.max(loop[1], metal[1]);
    double with = Math.max(high, its[1]) - Math.min(low, its[0]);
    return its[0] <= its[1] && with <= SQUASHED * Math.max(high - low, 5);
  }

  private String plenumRange() {
    double[] range = range(Channel.PLENUM_METAL);
    return display.number(range[0], Dimension.TEMPERATURE, 0)
        + " to "
        + display.temperature(range[1]);
  }

  private double[] range(Channel channel) {
    double[] values = outcome.trace().values(channel);
    int first = outcome.trace().firstFrom(TimeScale.of(outcome.trace()).from());
    double[] finite =
        Arrays.stream(values, first, values.length).filter(Double::isFinite).toArray();
    return new double[] {
      Arrays.stream(finite).min().orElse(Double.POSITIVE_INFINITY),
      Arrays.stream(finite).max().orElse(Double.NEGATIVE_INFINITY)
    };
  }
}
