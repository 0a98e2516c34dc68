package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
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

/** Rows from top to bottom, each with words and below them something drawn along one axis. */
final class RowPlot {
  private static final int ROW = 60;
  private static final int AXIS = 70;
  private static final int HEADING = 66;

  private final ChartStyle style;
  private final NumberAxis level;
  private final XYPlot plot;
  private final int rows;

  /**
   * Starts it.
   *
   * @param plain what it is drawn for; the picture grows with the rows
   * @param label of the axis
   * @param rows how many
   * @param low least value that is drawn
   * @param high most
   */
  RowPlot(ChartStyle plain, String label, int rows, double low, double high) {
    double wanted = ROW * rows + AXIS + (plain.titled() ? HEADING : 0);
    this.style = plain.tall(Math.max(1, wanted / plain.height()));
    this.rows = rows;
    this.level = Axes.plain(style, label);
    double room = high > low ? 0.06 * (high - low) : 1;
    level.setRange(low - room, high + room);
    NumberAxis upright = Axes.plain(style, "");
    upright.setVisible(false);
    upright.setRange(0, rows);
    this.plot = new XYPlot(new DefaultXYDataset(), level, upright, null);
    plot.setBackgroundPaint(Palette.PAPER);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setRangeGridlinesVisible(false);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
  }

  /** Draws a line through all rows. */
  RowPlot through(double value) {
    plot.addDomainMarker(
        new ValueMarker(value, Palette.INK, new BasicStroke(1.4f)), Layer.FOREGROUND);
    return this;
  }

  /** Writes what a row is at its left, and its number at its right. */
  RowPlot words(int row, String what, String number) {
    text(level.getLowerBound(), row, what, TextAnchor.CENTER_LEFT);
    text(level.getUpperBound(), row, number, TextAnchor.CENTER_RIGHT);
    return this;
  }

  private void text(double x, int row, String text, TextAnchor anchor) {
    Font font = style.narrow() ? style.small() : style.font();
    XYTextAnnotation annotation = new XYTextAnnotation(text, x, rows - row - 0.26);
    annotation.setFont(font);
    annotation.setPaint(Palette.INK);
    annotation.setTextAnchor(anchor);
    plot.addAnnotation(annotation);
  }

  /** Draws a bar between two values of a row. */
  RowPlot bar(int row, double from, double to, Color color) {
    return block(row, from, to, 0.36, color);
  }

  /** Draws an interval with its middle. */
  RowPlot interval(int row, double low, double middle, double high, Color color) {
    block(row, low, high, 0.14, color);
    double wide = 3 * level.getRange().getLength() / style.width();
    return block(row, middle - wide / 2, middle + wide / 2, 0.36, color);
  }

  private RowPlot block(int row, double from, double to, double thick, Color color) {
    double y = rows - row - 0.70 - thick / 2;
    Rectangle2D block = new Rectangle2D.Double(Math.min(from, to), y, Math.abs(to - from), thick);
    plot.addAnnotation(new XYShapeAnnotation(block, null, null, color));
    return this;
  }

  /** Joins a value from one row to the next. */
  RowPlot joined(int row, double value) {
    Line2D line = new Line2D.Double(value, rows - row - 0.88, value, rows - row - 1.52);
    plot.addAnnotation(new XYShapeAnnotation(line, new BasicStroke(1), Palette.QUIET));
    return this;
  }

  /** Ends it. */
  Figure figure(String title, String whose) {
    return new Figure(
        style, title, whose, level, List.of(new Panel(plot, 1, List.of(), List.of())));
  }
}
