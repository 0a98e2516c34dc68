package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.RunBands;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * The charge temperature over the session, with what the log says and the difference below.
 *
 * @param outcome what is drawn
 * @param bands where it lies nine times in ten, if known
 * @param display how numbers are shown
 */
record ChargeOverTime(Outcome outcome, Optional<RunBands> bands, Display display) implements Chart {
  @Override
  public String name() {
    return NAMES.get(0);
  }

  @Override
  public String title() {
    return "Charge temperature over the session";
  }

  @Override
  public String caption() {
    String caption =
        "The sensor lags the air: the thin line is the charge itself, the thick one what the sensor"
            + " shows of it.";
    if (!outcome.pulls().isEmpty()) {
      caption += " " + Display.sentenceStart(Counted.of(outcome).many()) + " are shaded.";
    }
    if (!new ChartKit(outcome, display).engineOff().isEmpty()) {
      caption += " With the engine off (grey) the sensor shows soaked metal, not charge.";
    }
    if (bands.isPresent()) {
      caption += " The pale band is where nine in ten cars like this have the sensor.";
    }
    if (hasLog()) {
      caption += " Dots are logged. Below: modelled less logged; above zero the model reads hot.";
    }
    return caption;
  }

  @Override
  public Figure figure(ChartStyle plain) {
    ChartStyle style = hasLog() ? plain.tall(1.25) : plain;
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.time(style, kit.time());
    String label = style.narrow() ? "Charge" : "Charge temperature";
    PanelBuilder above = new PanelBuilder(style, level, label + kit.in(Dimension.TEMPERATURE));
    shadeEngineOff(above, kit, true);
    kit.shadePulls(above, true);
    bands.ifPresent(b -> BandKit.lay(above, kit, b, Channel.SENSOR, Palette.HOT_BAND));
    above.line("charge air", kit.airLine(Channel.CHARGE), Palette.WARM, 1.3f);
    above.line("sensor", kit.line(Channel.SENSOR), Palette.HOT, 2.6f);
    double[][] logged = kit.logged(Signal.CHARGE_TEMPERATURE, style);
    if (logged[0].length > 0) {
      above.points("logged", logged, Palette.INK, 2.8).ending("logged", logged, Palette.INK);
    }
    kit.drawLimit(above);
    List<Panel> panels = new ArrayList<>();
    panels.add(above.build(3, kit.degrees(10)));
    if (hasLog()) {
      String difference =
          (style.narrow() ? "Error" : "Model less log") + kit.in(Dimension.TEMPERATURE_DIFFERENCE);
      PanelBuilder below = new PanelBuilder(style, level, difference);
      shadeEngineOff(below, kit, false);
      kit.shadePulls(below, false);
      below.points("", kit.residuals(Signal.CHARGE_TEMPERATURE, style), Palette.INK, 2.8).zero();
      panels.add(below.build(1, kit.degrees(4)));
    }
    return new Figure(style, title(), outcome.scenario().title(), level, panels);
  }

  private static void shadeEngineOff(PanelBuilder panel, ChartKit kit, boolean named) {
    for (Trace.Span off : kit.engineOff()) {
      double from = kit.time().of(Math.max(off.start(), kit.time().from()));
      panel.still(from, kit.time().of(off.end()), named ? "engine off" : "");
    }
  }

  private boolean hasLog() {
    return outcome
        .comparison()
        .filter(c -> !c.residuals().getOrDefault(Signal.CHARGE_TEMPERATURE, List.of()).isEmpty())
        .isPresent();
  }
}
