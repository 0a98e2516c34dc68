package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;
import soakloop.study.Moved;
import soakloop.study.Ranking;

/**
 * What every key does by itself: its name over two bars, one for each end of its interval.
 *
 * @param ranking the results
 * @param words how they are shown
 */
record RankBars(Ranking ranking, RankWords words) implements Chart {
  private static final int MOST = 14;
  private static final int ROW = 44;
  private static final int AXIS = 66;
  private static final int HEADING = 66;

  /** Height of the key above the bars, in rows. */
  private static final double KEY = 0.7;

  @Override
  public String name() {
    return RankFiles.CHART;
  }

  @Override
  public String title() {
    return "What moves the " + words.name();
  }

  @Override
  public String caption() {
    int left = ranking.keys().size() - shown().size();
    return "Each key moved by itself to both ends of its 90\u00a0% interval; the line is the scenario as"
        + " it is, "
        + words.result(ranking.own())
        + "."
        + (left > 0 ? " The other " + left + " keys, which move it less, are in the table." : "");
  }

  private List<Moved> shown() {
    return ranking.keys().stream().limit(MOST).toList();
  }

  @Override
  public Figure figure(ChartStyle style) {
    List<Moved> shown = shown();
    int rows = shown.size();
    double wanted = ROW * (rows + KEY) + AXIS + (style.titled() ? HEADING : 0);
    ChartStyle tall = style.tall(wanted / style.height());
    NumberAxis level = Axes.plain(tall, "Change [" + words.symbol() + "]");
    double low = Math.min(0, extreme(shown, false));
    double high = Math.max(0, extreme(shown, true));
    double room = high > low ? 0.04 * (high - low) : 1;
    level.setRange(low - room, high + room);
    NumberAxis upright = Axes.plain(tall, "");
    upright.setVisible(false);
    upright.setRange(0, rows + KEY);
    XYPlot plot = new XYPlot(new DefaultXYDataset(), level, upright, null);
    plot.setBackgroundPaint(Palette.PAPER);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setRangeGridlinesVisible(false);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.addDomainMarker(new ValueMarker(0, Palette.INK, new BasicStroke(1.4f)), Layer.FOREGROUND);
    key(plot, tall, rows + KEY / 2);
    for (int i = 0; i < rows; i++) {
      row(plot, tall, shown.get(i), rows - i);
    }
    return new Figure(
        tall,
        title(),
        ranking.plan().scenario().title(),
        level,
        List.of(new Panel(plot, 1, List.of(), List.of())));
  }

  private double extreme(List<Moved> shown, boolean largest) {
    double extreme = 0;
    for (Moved moved : shown) {
      for (Moved.End end : List.of(moved.low(), moved.high())) {
        double change = words.shown(end.change().orElse(0));
        extreme = largest ? Math.max(extreme, change) : Math.min(extreme, change);
      }
    }
    return extreme;
  }

  private static void key(XYPlot plot, ChartStyle style, double y) {
    String square = "\u25a0 ";
    text(plot, style.small(), 0, y, square + "low end", Palette.BLUE);
    text(plot, style.small(), 0.27, y, square + "high end", Palette.HOT);
    text(plot, style.small(), 0.56, y, "pale: assumed, not stated", Palette.QUIET);
  }

  private void row(XYPlot plot, ChartStyle style, Moved moved, double top) {
    String name =
        style.narrow() ? moved.key().key() : moved.key().key() + ", " + words.range(moved.key());
    Font font = style.narrow() ? style.small() : style.font();
    text(plot, font, 0, top - 0.26, name, Palette.INK);
    text(plot, font, 1, top - 0.26, words.changes(moved), Palette.INK);
    bar(plot, moved, moved.low().change(), top - 0.70, Palette.BLUE);
    bar(plot, moved, moved.high().change(), top - 0.92, Palette.HOT);
  }

  private void bar(XYPlot plot, Moved moved, OptionalDouble change, double y, Color color) {
    if (change.isEmpty()) {
      return;
    }
    double x = words.shown(change.getAsDouble());
    Rectangle2D bar = new Rectangle2D.Double(Math.min(0, x), y, Math.abs(x), 0.22);
    Color fill =
        moved.key().assumed()
            ? new Color(color.getRed(), color.getGreen(), color.getBlue(), 90)
            : color;
    plot.addAnnotation(new XYShapeAnnotation(bar, new BasicStroke(1), color, fill));
  }

  /** Writes words at a share of the width: from there, or up to the right edge. */
  private static void text(
      XYPlot plot, Font font, double share, double y, String text, Color color) {
    double x =
        plot.getDomainAxis().getLowerBound() + share * plot.getDomainAxis().getRange().getLength();
    XYTextAnnotation annotation = new XYTextAnnotation(text, x, y);
    annotation.setFont(font);
    annotation.setPaint(Palette.readable(color));
    annotation.setTextAnchor(share < 1 ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT);
    plot.addAnnotation(annotation);
  }
}
