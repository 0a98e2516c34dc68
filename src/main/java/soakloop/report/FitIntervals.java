package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;
import soakloop.fit.Band;

/**
 * What was believed and what is known now of many things at once: a pale bar for the interval
 * before, all drawn equally long, and on it a narrow one for the interval now.
 *
 * @param name of its file, without the ending
 * @param title what it shows
 * @param caption how to read it
 * @param subtitle whose it is
 * @param rows from top to bottom
 */
record FitIntervals(String name, String title, String caption, String subtitle, List<Row> rows)
    implements Chart {
  private static final int ROW = 48;
  private static final int NARROW_ROW = 66;
  private static final int AXIS = 72;
  private static final int HEADING = 66;

  /** Height of the key above the rows, in rows. */
  private static final double KEY = 0.7;

  /** How far from what was believed is still drawn, in halves of its interval. */
  private static final double FURTHEST = 5;

  /**
   * One thing.
   *
   * @param what its name
   * @param value what is known of it now, in words
   * @param before what was believed, SI
   * @param after what is known, SI
   * @param far whether it moved further than was thought likely
   */
  record Row(String what, String value, Band before, Band after, boolean far) {
    /** Makes a row of what moved so far that its interval now leaves that before behind. */
    static Row of(String what, String value, Band before, Band after) {
      boolean apart = after.low() > before.high() || after.high() < before.low();
      return new Row(what, value, before, after, apart);
    }

    /** Returns whether some of what is known lies beyond what is drawn. */
    boolean isCut() {
      return Math.max(Math.abs(place(after.low())), Math.abs(place(after.high()))) >= FURTHEST;
    }

    /** Returns where a value lies: 0 what was believed, 1 and -1 the ends of its interval. */
    double place(double value) {
      double away = value - before.middle();
      double half = away > 0 ? before.high() - before.middle() : before.middle() - before.low();
      double place = half > 0 ? away / half : 0;
      return Math.max(-FURTHEST, Math.min(FURTHEST, place));
    }
  }

  FitIntervals {
    rows = List.copyOf(rows);
  }

  @Override
  public Figure figure(ChartStyle style) {
    double wanted = rowHeight(style) * (rows.size() + KEY) + AXIS + (style.titled() ? HEADING : 0);
    ChartStyle tall = style.tall(wanted / style.height());
    NumberAxis level =
        Axes.plain(
            tall,
            style.narrow()
                ? "0 and \u00b11: before the log"
                : "0: value before the log, \u00b11: the ends of its interval");
    level.setTickUnit(new NumberTickUnit(1));
    double low = rows.stream().mapToDouble(r -> r.place(r.after.low())).min().orElse(-1);
    double high = rows.stream().mapToDouble(r -> r.place(r.after.high())).max().orElse(1);
    level.setRange(Math.min(-1, low) - 0.08, Math.max(1, high) + 0.08);
    NumberAxis upright = Axes.plain(tall, "");
    upright.setVisible(false);
    upright.setRange(0, rows.size() + KEY);
    XYPlot plot = new XYPlot(new DefaultXYDataset(), level, upright, null);
    plot.setBackgroundPaint(Palette.PAPER);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setRangeGridlinesVisible(false);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.addDomainMarker(new ValueMarker(0, Palette.QUIET, new BasicStroke(1)), Layer.BACKGROUND);
    key(plot, tall, rows.size() + KEY / 2);
    for (int i = 0; i < rows.size(); i++) {
      row(plot, tall, rows.get(i), rows.size() - i);
    }
    return new Figure(
        tall, title, subtitle, level, List.of(new Panel(plot, 1, List.of(), List.of())));
  }

  private static int rowHeight(ChartStyle style) {
    return style.narrow() ? NARROW_ROW : ROW;
  }

  private void key(XYPlot plot, ChartStyle style, double y) {
    String square = "\u25a0 ";
    text(plot, style.small(), 0, y, square + "before the log", Palette.QUIET);
    text(plot, style.small(), style.narrow() ? 0.36 : 0.2, y, square + "now", Palette.BLUE);
    if (rows.stream().anyMatch(Row::far)) {
      String far = style.narrow() ? "moved far" : "now, moved further than thought likely";
      text(plot, style.small(), style.narrow() ? 0.56 : 0.3, y, square + far, Palette.HOT);
    }
  }

  private static void row(XYPlot plot, ChartStyle style, Row row, double top) {
    double unit = 1.0 / rowHeight(style);
    Font font = style.narrow() ? style.small() : style.font();
    text(plot, font, 0, top - 13 * unit, row.what, Palette.INK);
    if (style.narrow()) {
      text(plot, font, 0, top - 29 * unit, row.value, Palette.QUIET);
    } else {
      text(plot, font, 1, top - 13 * unit, row.value, Palette.INK);
    }
    double y = top - (rowHeight(style) - 15) * unit;
    bar(plot, -1, 1, y - 6 * unit, 12 * unit, Palette.LOAM);
    double from = row.place(row.after.low());
    double to = row.place(row.after.high());
    Color color = row.far ? Palette.HOT : Palette.BLUE;
    bar(plot, from, to, y - 3 * unit, 6 * unit, color);
    double middle = row.place(row.after.middle());
    double wide = 3 * plot.getDomainAxis().getRange().getLength() / style.width();
    bar(plot, middle - wide / 2, middle + wide / 2, y - 8 * unit, 16 * unit, color);
  }

  private static void bar(XYPlot plot, double from, double to, double y, double high, Color color) {
    Shape bar = new Rectangle2D.Double(from, y, to - from, high);
    plot.addAnnotation(new XYShapeAnnotation(bar, null, null, color));
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
