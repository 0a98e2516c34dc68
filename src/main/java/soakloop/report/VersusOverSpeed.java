package soakloop.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.VersusResult;

/**
 * Charge over engine speed in the pull that decides, all contenders under the same conditions.
 *
 * @param result what is drawn
 * @param display how numbers are shown
 */
record VersusOverSpeed(VersusResult result, Display display) implements Chart {
  /** Contenders that have a colour of their own. */
  static final int MOST = 6;

  @Override
  public String name() {
    return "versus-over-speed";
  }

  @Override
  public String title() {
    return "Charge over engine speed, " + new VersusWords(result, display).lastPull();
  }

  @Override
  public String caption() {
    return "Same start, day and boost for all. The pale bands are where nine in ten cars like this"
        + " have it; most of what makes them wide is alike for all, so the difference is known"
        + " better than the bands look.";
  }

  @Override
  public Figure figure(ChartStyle style) {
    NumberAxis level =
        Axes.plain(style, "Engine speed [" + display.symbol(Dimension.ROTATION) + "]");
    PanelBuilder panel =
        new PanelBuilder(style, level, "Charge [" + display.symbol(Dimension.TEMPERATURE) + "]");
    int count = Math.min(MOST, result.contenders().size());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < count; c++) {
      VersusResult.Course course = result.contenders().get(c).course();
      Color color = Palette.hue(c);
      Color pale = new Color(color.getRed(), color.getGreen(), color.getBlue(), 40);
      BandKit.lay(panel, line(course, Band::high), line(course, Band::low), pale);
    }
    for (int c = 0; c < count; c++) {
      double[][] middle = line(result.contenders().get(c).course(), Band::middle);
      panel.line(result.contenders().get(c).label(), middle, Palette.hue(c), 2.4f);
      for (double speed : middle[0]) {
        low = Math.min(low, speed);
        high = Math.max(high, speed);
      }
    }
    result
        .plan()
        .contenders()
        .get(0)
        .scenario()
        .limits()
        .chargeTemperature()
        .ifPresent(
            k ->
                panel.limit(
                    shown(k, Dimension.TEMPERATURE),
                    "limit " + display.temperature(k),
                    panel.highest()));
    double room = Math.max(100, 0.02 * (high - low));
    level.setRange(low - room, high + room);
    return new Figure(
        style, title(), "Conditions of " + result.conditions(), level, List.of(panel.build(1, 10)));
  }

  private double shown(double si, Dimension dimension) {
    return display.units().unit(dimension).fromSi(si);
  }

  /** Returns a line over rising engine speed; where it stands or falls back nothing is drawn. */
  private double[][] line(VersusResult.Course course, ToDoubleFunction<Band> side) {
    List<double[]> points = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < course.speeds().size(); i++) {
      double speed = shown(course.speeds().get(i), Dimension.ROTATION);
      double charge = shown(side.applyAsDouble(course.charge().get(i)), Dimension.TEMPERATURE);
      if (speed > last && Double.isFinite(charge)) {
        points.add(new double[] {speed, charge});
        last = speed;
      }
    }
    double[][] line = new double[2][points.size()];
    for (int i = 0; i < points.size(); i++) {
      line[0][i] = points.get(i)[0];
      line[1][i] = points.get(i)[1];
    }
    return line;
  }
}
