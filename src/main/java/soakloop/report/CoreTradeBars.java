package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;
import soakloop.quantity.Dimension;
import soakloop.study.CoreTrade;

/**
 * What a core costs and what it gives, as bars of power: to the left what it takes, to the right
 * what it brings.
 *
 * @param trade the numbers
 * @param whose title of the scenario
 * @param display how they are shown
 */
record CoreTradeBars(CoreTrade trade, String whose, Display display) implements Chart {
  private static final int ROW = 64;
  private static final int AXIS = 70;
  private static final int HEADING = 66;

  /** One bar; power brought, W. */
  private record Bar(String what, double power) {}

  @Override
  public String name() {
    return NAMES.get(5);
  }

  @Override
  public String title() {
    return "What the core costs and what it gives";
  }

  @Override
  public String caption() {
    return new CoreTradeWords(trade, display).line();
  }

  private List<Bar> bars() {
    CoreTradeWords words = new CoreTradeWords(trade, display);
    List<Bar> bars = new ArrayList<>();
    bars.add(new Bar("Pressure lost, at the blower: " + words.loss(), -trade.lossPower()));
    String cooled = "Charge cooled by " + display.difference(trade.cooling());
    bars.add(
        new Bar(
            cooled + (trade.boostHeld() ? ", boost held" : ", at the blower"),
            trade.coolingPower()));
    trade
        .spark()
        .ifPresent(
            spark ->
                spark
                    .power()
                    .ifPresent(
                        watt -> bars.add(new Bar("Spark kept in: " + words.kept(spark), watt))));
    return bars;
  }

  @Override
  public Figure figure(ChartStyle style) {
    List<Bar> bars = bars();
    int rows = bars.size();
    double wanted = ROW * rows + AXIS + (style.titled() ? HEADING : 0);
    ChartStyle tall = style.tall(Math.max(1, wanted / style.height()));
    NumberAxis level = Axes.plain(tall, "Power brought [" + display.symbol(Dimension.POWER) + "]");
    double low = Math.min(0, bars.stream().mapToDouble(this::shown).min().orElse(0));
    double high = Math.max(0, bars.stream().mapToDouble(this::shown).max().orElse(0));
    double room = high > low ? 0.06 * (high - low) : 1;
    level.setRange(low - room, high + room);
    NumberAxis upright = Axes.plain(tall, "");
    upright.setVisible(false);
    upright.setRange(0, rows);
    XYPlot plot = new XYPlot(new DefaultXYDataset(), level, upright, null);
    plot.setBackgroundPaint(Palette.PAPER);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setRangeGridlinesVisible(false);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.addDomainMarker(new ValueMarker(0, Palette.INK, new BasicStroke(1.4f)), Layer.FOREGROUND);
    for (int i = 0; i < rows; i++) {
      draw(plot, tall, bars.get(i), rows - i);
    }
    return new Figure(
        tall, title(), whose, level, List.of(new Panel(plot, 1, List.of(), List.of())));
  }

  private double shown(Bar bar) {
    return display.units().unit(Dimension.POWER).fromSi(bar.power());
  }

  private void draw(XYPlot plot, ChartStyle style, Bar bar, double top) {
    Font font = style.narrow() ? style.small() : style.font();
    text(plot, font, plot.getDomainAxis().getLowerBound(), top, bar.what(), TextAnchor.CENTER_LEFT);
    text(
        plot,
        font,
        plot.getDomainAxis().getUpperBound(),
        top,
        display.signed(bar.power(), Dimension.POWER, Math.abs(bar.power()) < 10e3 ? 1 : 0),
        TextAnchor.CENTER_RIGHT);
    double x = shown(bar);
    Color color = x < 0 ? Palette.HOT : Palette.BLUE;
    Rectangle2D block = new Rectangle2D.Double(Math.min(0, x), top - 0.88, Math.abs(x), 0.42);
    plot.addAnnotation(new XYShapeAnnotation(block, new BasicStroke(1), color, color));
  }

  private static void text(
      XYPlot plot, Font font, double x, double top, String text, TextAnchor anchor) {
    XYTextAnnotation annotation = new XYTextAnnotation(text, x, top - 0.26);
    annotation.setFont(font);
    annotation.setPaint(Palette.INK);
    annotation.setTextAnchor(anchor);
    plot.addAnnotation(annotation);
  }
}
