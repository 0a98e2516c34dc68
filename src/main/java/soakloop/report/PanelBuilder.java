package soakloop.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Align;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** Puts lines, points and marks on one set of axes. */
final class PanelBuilder {
  private final ChartStyle style;
  private final NumberAxis upright;
  private final XYPlot plot;
  private final List<Panel.End> ends = new ArrayList<>();
  private final List<Panel.Band> bands = new ArrayList<>();
  private int layers;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  /**
   * Starts a panel.
   *
   * @param style what it is drawn for
   * @param level the axis along the bottom
   * @param label of the upright axis, with its unit
   */
  PanelBuilder(ChartStyle style, NumberAxis level, String label) {
    this.style = style;
    this.upright = Axes.plain(style, label);
    this.plot = new XYPlot(null, level, upright, null);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    plot.setBackgroundPaint(Palette.PAPER);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setRangeGridlinePaint(Palette.GRID);
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setRangeGridlineStroke(new BasicStroke(1));
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
  }

  /** Adds a line, named at its right end; without a name it is only drawn. */
  PanelBuilder line(String name, double[][] xy, Color color, float width) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setSeriesStroke(
        0, new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    renderer.setSeriesVisibleInLegend(0, !name.isEmpty());
    add(name, xy, color, renderer);
    return ending(name, xy, color);
  }

  /**
   * Adds points; in a narrow chart the key names them. They are drawn as one path of round specks,
   * which takes a small part of the room that as many circles would.
   */
  PanelBuilder points(String name, double[][] xy, Color color, double size) {
    int count = xy[0].length;
    double[][] specks = new double[2][3 * count];
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < 3; k++) {
        specks[0][3 * i + k] = xy[0][i];
        specks[1][3 * i + k] = k < 2 ? xy[1][i] : Double.NaN;
      }
    }
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setSeriesStroke(
        0, new BasicStroke((float) size, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    renderer.setLegendLine(new Line2D.Double(0, 0, 0.01, 0));
    renderer.setSeriesVisibleInLegend(0, !name.isEmpty());
    add(name, specks, color, renderer);
    return this;
  }

  /** Adds a line with a mark at every point, named at its right end. */
  PanelBuilder beaded(String name, double[][] xy, Color color) {
    line(name, xy, color, 2.4f);
    return points("", xy, color, 8);
  }

  /** Adds rings: readings beside beads of the same colour. */
  PanelBuilder rings(double[][] xy, Color color) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesShape(0, dot(10));
    renderer.setSeriesVisibleInLegend(0, false);
    renderer.setUseFillPaint(true);
    renderer.setSeriesFillPaint(0, Palette.PAPER);
    renderer.setDrawOutlines(true);
    renderer.setUseOutlinePaint(true);
    renderer.setSeriesOutlinePaint(0, color);
    renderer.setSeriesOutlineStroke(0, new BasicStroke(2));
    add("", xy, color, renderer);
    return this;
  }

  /** Names something at the right edge, level with the last point that has a value. */
  PanelBuilder ending(String name, double[][] xy, Color color) {
    for (int i = xy[1].length - 1; i >= 0 && !name.isEmpty(); i--) {
      if (Double.isFinite(xy[1][i])) {
        ends.add(new Panel.End(name, xy[1][i], color));
        break;
      }
    }
    return this;
  }

  /**
   * Draws a level that must not be passed. One that is so far above that it would squash the lines
   * is named at the upper edge only.
   *
   * @param value in the units of the upright axis
   * @param text its name
   * @param far distance above the lines, in their height or this, whichever is more, times one and
   *     a half
   */
  PanelBuilder limit(double value, String text, double far) {
    if (value - high > 1.5 * Math.max(high - low, far)) {
      ends.add(new Panel.End("\u2191 " + text, value, Palette.LIMIT));
      return this;
    }
    ValueMarker marker =
        new ValueMarker(
            value,
            Palette.LIMIT,
            new BasicStroke(
                1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
    if (style.narrow()) {
      marker.setLabel(text);
    } else {
      ends.add(new Panel.End(text, value, Palette.LIMIT));
    }
    marker.setLabelFont(style.small());
    marker.setLabelPaint(Palette.LIMIT);
    marker.setLabelBackgroundColor(Palette.VEIL);
    marker.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    marker.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    plot.addRangeMarker(marker, Layer.FOREGROUND);
    if (style.narrow()) {
      // Room for the word that stands on it.
      covering(value + 0.06 * Math.max(value - low, 0));
    }
    return covering(value);
  }

  /** Draws a level that is told for comparison, named at the right. */
  PanelBuilder level(double value, String text, Color color) {
    ValueMarker marker =
        new ValueMarker(
            value,
            color,
            new BasicStroke(
                1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 3}, 0));
    if (style.narrow()) {
      marker.setLabel(text);
    } else {
      ends.add(new Panel.End(text, value, color));
    }
    marker.setLabelFont(style.small());
    marker.setLabelPaint(color);
    marker.setLabelBackgroundColor(Palette.VEIL);
    marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
    marker.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
    plot.addRangeMarker(marker, Layer.BACKGROUND);
    return covering(value);
  }

  /** Writes a word beside a mark: to its right, or to its left near the right edge. */
  PanelBuilder label(double x, double y, String text, Color color) {
    boolean right = right(x);
    double beside = besides(x, right, 11);
    return word(beside, y, text, color, right ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT);
  }

  /** Writes a word beside a mark and above the line that the mark is on. */
  PanelBuilder above(double x, double y, String text, Color color) {
    boolean right = right(x);
    double beside = besides(x, right, 5);
    return word(beside, y, text, color, right ? TextAnchor.BOTTOM_LEFT : TextAnchor.BOTTOM_RIGHT);
  }

  /** Writes a word beside a mark and below the line that the mark is on. */
  PanelBuilder below(double x, double y, String text, Color color) {
    boolean right = right(x);
    double beside = besides(x, right, 5);
    return word(beside, y, text, color, right ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT);
  }

  /** Writes a word on a line, on a ground that keeps it apart. */
  PanelBuilder on(double x, double y, String text, Color color) {
    return word(x, y, text, color, TextAnchor.CENTER);
  }

  private boolean right(double x) {
    ValueAxis level = plot.getDomainAxis();
    return x < level.getLowerBound() + 0.75 * level.getRange().getLength();
  }

  /** Returns the place some units of the drawing beside another, about. */
  private double besides(double x, boolean right, double units) {
    double away = units / style.width() * plot.getDomainAxis().getRange().getLength();
    return right ? x + away : x - away;
  }

  private PanelBuilder word(double x, double y, String text, Color color, TextAnchor anchor) {
    XYTextAnnotation label = new XYTextAnnotation(text, x, y);
    label.setFont(style.small());
    label.setPaint(color);
    label.setBackgroundPaint(Palette.GROUND);
    label.setTextAnchor(anchor);
    plot.addAnnotation(label);
    return this;
  }

  /** Returns the highest value on the upright axis so far. */
  double highest() {
    return high;
  }

  /** Lays a picture behind, over the whole of both axes. */
  PanelBuilder backdrop(BufferedImage image) {
    plot.setBackgroundImage(image);
    plot.setBackgroundImageAlignment(Align.FIT);
    plot.setBackgroundImageAlpha(1);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return this;
  }

  /** Draws the zero line of differences. */
  PanelBuilder zero() {
    plot.addRangeMarker(new ValueMarker(0, Palette.QUIET, new BasicStroke(1)), Layer.BACKGROUND);
    return covering(0);
  }

  /** Marks a place on the level axis, named to its left or, near the left edge, to its right. */
  PanelBuilder place(double value, String text) {
    ValueMarker marker = new ValueMarker(value, Palette.QUIET, new BasicStroke(1));
    marker.setLabel(text);
    marker.setLabelFont(style.small());
    marker.setLabelPaint(Palette.QUIET);
    marker.setLabelBackgroundColor(Axes.CLEAR);
    ValueAxis level = plot.getDomainAxis();
    boolean left = value > level.getLowerBound() + 0.35 * level.getRange().getLength();
    marker.setLabelAnchor(left ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT);
    marker.setLabelTextAnchor(left ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
    plot.addDomainMarker(marker, Layer.BACKGROUND);
    return this;
  }

  /** Shades a stretch and names it above; an empty name shades only. */
  PanelBuilder band(double from, double to, String text) {
    plot.addDomainMarker(new IntervalMarker(from, to, Palette.SHADE), Layer.BACKGROUND);
    if (!text.isEmpty()) {
      bands.add(new Panel.Band(from, to, text));
    }
    return this;
  }

  /** Shades a stretch in which nothing is measured that counts. */
  PanelBuilder still(double from, double to, String text) {
    plot.addDomainMarker(new IntervalMarker(from, to, Palette.STILL), Layer.BACKGROUND);
    if (!text.isEmpty()) {
      bands.add(new Panel.Band(from, to, text));
    }
    return this;
  }

  /** Fills between two lines over the same places. */
  PanelBuilder between(double[][] upper, double[][] lower, Color color) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(upper[0][0], upper[1][0]);
    for (int i = 1; i < upper[0].length; i++) {
      path.lineTo(upper[0][i], upper[1][i]);
    }
    for (int i = lower[0].length - 1; i >= 0; i--) {
      path.lineTo(lower[0][i], lower[1][i]);
    }
    path.closePath();
    covering(java.util.Arrays.stream(upper[1]).max().orElse(low));
    covering(java.util.Arrays.stream(lower[1]).min().orElse(high));
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, false);
    renderer.addAnnotation(new XYShapeAnnotation(path, null, null, color), Layer.BACKGROUND);
    renderer.setSeriesVisibleInLegend(0, false);
    add("", new double[2][0], color, renderer);
    return this;
  }

  /** Makes sure that a value is on the upright axis. */
  PanelBuilder covering(double value) {
    low = Math.min(low, value);
    high = Math.max(high, value);
    return this;
  }

  /**
   * Ends the panel.
   *
   * @param weight share of the height beside other panels
   * @param least smallest height of the upright axis, in its units
   */
  Panel build(int weight, double least) {
    if (low > high) {
      covering(0);
    }
    double room = Math.max(0, least - (high - low)) / 2 + 0.06 * Math.max(high - low, least);
    upright.setRange(low - room, high + room);
    return new Panel(plot, weight, ends, bands);
  }

  /**
   * Ends the panel with an upright axis that goes just so far.
   *
   * @param from lower end, in the units of the axis
   * @param to upper end
   */
  Panel exactly(double from, double to) {
    upright.setRange(from, to);
    return new Panel(plot, 1, ends, bands);
  }

  private void add(String name, double[][] xy, Color color, XYLineAndShapeRenderer renderer) {
    renderer.setSeriesPaint(0, color);
    renderer.setDefaultItemLabelFont(style.font());
    DefaultXYDataset data = new DefaultXYDataset();
    data.addSeries(name, xy);
    plot.setDataset(layers, data);
    plot.setRenderer(layers++, renderer);
    for (double y : xy[1]) {
      if (Double.isFinite(y)) {
        covering(y);
      }
    }
  }

  private static Shape dot(double size) {
    return new Ellipse2D.Double(-size / 2, -size / 2, size, size);
  }
}
