package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A chart ready to be drawn once: panels over one level axis, with names at the ends of lines.
 *
 * @param style what it is drawn for
 * @param title what it shows
 * @param subtitle whose it is
 * @param level the axis along the bottom
 * @param panels from top to bottom, at least one
 */
record Figure(
    ChartStyle style, String title, String subtitle, NumberAxis level, List<Panel> panels) {
  private static final double GAP = 14;
  private static final double LEADER = 16;

  Figure {
    panels = List.copyOf(panels);
  }

  /** Draws it on a canvas of the style's size. */
  void draw(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    JFreeChart chart = chart(roomForEnds(g.getFontMetrics(style.font())));
    ChartRenderingInfo info = new ChartRenderingInfo();
    chart.draw(g, new Rectangle2D.Double(0, 0, style.width(), style.height()), null, info);
    for (int i = 0; i < panels.size(); i++) {
      PlotRenderingInfo plot = info.getPlotInfo();
      Rectangle2D area =
          panels.size() > 1 ? plot.getSubplotInfo(i).getDataArea() : plot.getDataArea();
      if (!style.narrow()) {
        drawEnds(g, panels.get(i), area);
      }
      drawBands(g, panels.get(i), area);
    }
  }

  private JFreeChart chart(double right) {
    XYPlot plot = whole();
    boolean named = panels.stream().anyMatch(p -> !p.bands().isEmpty());
    double top = named ? style.fontSize() + 8 : 8;
    plot.setInsets(new RectangleInsets(top, 2, 2, right));
    JFreeChart chart = new JFreeChart(null, style.bold(), plot, false);
    chart.setBackgroundPaint(style.titled() ? Palette.PAPER : null);
    chart.setPadding(
        style.titled() ? new RectangleInsets(14, 14, 10, 14) : RectangleInsets.ZERO_INSETS);
    if (style.titled()) {
      chart.setTitle(heading(title, style.bold()));
      chart.addSubtitle(heading(subtitle, style.small()));
    }
    if (style.narrow()) {
      LegendTitle key = new LegendTitle(plot);
      key.setItemFont(style.small());
      key.setItemPaint(Palette.INK);
      key.setPosition(RectangleEdge.TOP);
      key.setFrame(BlockBorder.NONE);
      key.setBackgroundPaint(null);
      key.setHorizontalAlignment(HorizontalAlignment.LEFT);
      chart.addLegend(key);
    }
    return chart;
  }

  private XYPlot whole() {
    if (panels.size() == 1) {
      return panels.get(0).plot();
    }
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(level);
    all.setGap(GAP);
    for (Panel panel : panels) {
      all.add(panel.plot(), panel.weight());
    }
    return all;
  }

  private static TextTitle heading(String text, java.awt.Font font) {
    TextTitle heading = new TextTitle(text, font);
    heading.setPaint(Palette.INK);
    heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
    heading.setTextAlignment(HorizontalAlignment.LEFT);
    return heading;
  }

  private double roomForEnds(FontMetrics metrics) {
    if (style.narrow()) {
      return 10;
    }
    int widest =
        panels.stream()
            .flatMap(p -> p.ends().stream())
            .mapToInt(e -> metrics.stringWidth(e.text()))
            .max()
            .orElse(0);
    return widest + LEADER + 8;
  }

  private void drawEnds(Graphics2D g, Panel panel, Rectangle2D area) {
    g.setFont(style.font());
    double height = g.getFontMetrics().getHeight();
    double[] wanted = panel.ends().stream().mapToDouble(e -> heightOf(panel, e, area)).toArray();
    double[] placed =
        LabelStack.place(wanted, height, area.getMinY() - height / 2, area.getMaxY() + height / 2);
    for (int i = 0; i < wanted.length; i++) {
      Panel.End end = panel.ends().get(i);
      Color color = Palette.readable(end.color());
      g.setPaint(color);
      g.setStroke(new BasicStroke(1));
      double x = area.getMaxX();
      g.draw(new Line2D.Double(x + 2, wanted[i], x + LEADER - 3, placed[i]));
      g.drawString(end.text(), (float) (x + LEADER), (float) (placed[i] + height * 0.3));
    }
  }

  /** Returns how high an end stands; at the upper edge if its value is above the axis. */
  private static double heightOf(Panel panel, Panel.End end, Rectangle2D area) {
    double y = panel.plot().getRangeAxis().valueToJava2D(end.value(), area, RectangleEdge.LEFT);
    return Math.max(area.getMinY(), y);
  }

  private void drawBands(Graphics2D g, Panel panel, Rectangle2D area) {
    g.setFont(style.small());
    g.setPaint(Palette.QUIET);
    FontMetrics metrics = g.getFontMetrics();
    double free = Double.NEGATIVE_INFINITY;
    List<Panel.Band> bands =
        panel.bands().stream().sorted(Comparator.comparingDouble(Panel.Band::from)).toList();
    for (Panel.Band band : bands) {
      double from = level.valueToJava2D(band.from(), area, RectangleEdge.BOTTOM);
      double to = level.valueToJava2D(band.to(), area, RectangleEdge.BOTTOM);
      double width = metrics.stringWidth(band.text());
      double x = Math.min((from + to - width) / 2, area.getMaxX() - width);
      if (x > free) {
        g.drawString(band.text(), (float) x, (float) (area.getMinY() - 5));
        free = x + width + 6;
      }
    }
  }
}
