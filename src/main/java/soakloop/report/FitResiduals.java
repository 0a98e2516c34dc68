package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.FitResult;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.study.Outcome;

/**
 * How far the model is from every logged signal of one case over time, before and after the fit.
 *
 * @param result what a fit gave
 * @param display how numbers are shown
 * @param index of the case, from 0
 */
record FitResiduals(FitResult result, Display display, int index) implements Chart {
  @Override
  public String name() {
    return fileName(index);
  }

  static String fileName(int index) {
    return "fit-residuals-" + (index + 1);
  }

  @Override
  public String title() {
    return "Model less log, signal by signal" + FitFiles.of(result, index);
  }

  @Override
  public String caption() {
    return "Grey before the fit, coloured after it; above zero the model reads hot. What is left"
        + " should wander about zero and look alike in every pull. What comes back in each pull,"
        + " or leans one way as the session goes on, is something that the model lacks.";
  }

  @Override
  public Figure figure(ChartStyle plain) {
    String label = result.plan().cases().get(index).label();
    List<FitResult.SignalFit> fits =
        result.signals().stream().filter(f -> f.label().equals(label)).toList();
    ChartStyle style = plain.tall(0.25 + 0.3 * fits.size());
    Outcome outcome = result.after().get(index);
    ChartKit kit = new ChartKit(outcome, display);
    NumberAxis level = Axes.time(style, kit.time());
    List<Panel> panels = new ArrayList<>();
    for (FitResult.SignalFit fit : fits) {
      PanelBuilder panel =
          new PanelBuilder(
              style, level, words(fit.signal()) + kit.in(Dimension.TEMPERATURE_DIFFERENCE));
      kit.shadePulls(panel, panels.isEmpty());
      boolean named = panels.isEmpty();
      panel.zero();
      double[][] before = course(fit, FitResult.Beside::offBefore, kit);
      double[][] after = course(fit, FitResult.Beside::offAfter, kit);
      panel.points(named ? "before" : "", before, Palette.STONE, 3);
      panel.points(named ? "fitted" : "", after, color(fit.signal()), 3.4);
      panel.ending("before", before, Palette.QUIET);
      panel.ending("fitted", after, color(fit.signal()));
      panels.add(panel.build(1, kit.degrees(2)));
    }
    return new Figure(style, title(), outcome.scenario().title(), level, panels);
  }

  private static double[][] course(
      FitResult.SignalFit fit, ToDoubleFunction<FitResult.Beside> off, ChartKit kit) {
    double[] x = fit.course().stream().mapToDouble(b -> kit.time().of(b.time())).toArray();
    double[] y =
        fit.course().stream().mapToDouble(b -> kit.degrees(off.applyAsDouble(b))).toArray();
    return new double[][] {x, y};
  }

  private static String words(Signal signal) {
    return switch (signal) {
      case CHARGE_TEMPERATURE -> "Charge";
      case CORE_AIR_IN -> "Hot air";
      case CORE_COOLANT_IN -> "Coolant in";
      case CORE_COOLANT_OUT -> "Coolant out";
      default -> Display.sentenceStart(signal.label());
    };
  }

  private static Color color(Signal signal) {
    return switch (signal) {
      case CHARGE_TEMPERATURE -> Palette.HOT;
      case CORE_AIR_IN -> Palette.EMBER;
      case CORE_COOLANT_IN -> Palette.BLUE;
      case CORE_COOLANT_OUT -> Palette.SKY;
      case RESERVOIR -> Palette.GREEN;
      default -> Palette.INK;
    };
  }
}
