package soakloop.report;

import freemarker.core.HTMLOutputFormat;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.regex.Matcher;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jfree.chart.text.TextUtils;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import org.jfree.svg.ViewBox;

/** Turns charts into SVG for the page and into pictures of their own. */
final class Drawing {
  /** Dots of a picture to each unit of its drawing. */
  private static final double SCALE = 2;

  private static final String FONTS = "Arial, Helvetica, Liberation Sans, sans-serif";

  static {
    // Turned text as text too, not as outlines of its letters.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
  }

  private Drawing() {}

  /**
   * Makes sure that words can be drawn at all.
   *
   * @throws IOException if Java finds no font, as on a bare machine
   */
  @SuppressWarnings("CatchingUnchecked") // A missing font library shows as any kind of throwable.
  static void requireFonts() throws IOException {
    try {
      Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
      g.getFontMetrics(ChartStyle.PAGE.font()).stringWidth("0");
      g.dispose();
    } catch (RuntimeException | LinkageError | InternalError e) {
      throw new IOException(
          "charts need a font and Java finds none here; install one, such as DejaVu Sans, together"
              + " with the fontconfig package",
          e);
    }
  }

  /** Returns an SVG element that fills the width it is given. */
  static String svg(Chart chart, ChartStyle style) {
    Figure figure = chart.figure(style);
    int width = figure.style().width();
    int height = figure.style().height();
    SVGGraphics2D g = new SVGGraphics2D(width, height);
    g.setDefsKeyPrefix(chart.name() + "-" + style.id() + "-");
    g.setGeomDoubleConverter(Drawing::short2);
    g.setTransformDoubleConverter(Drawing::short2);
    g.setFontFunction(family -> FONTS);
    g.setRenderingHint(SVGHints.KEY_DRAW_STRING_TYPE, SVGHints.VALUE_DRAW_STRING_TYPE_STANDARD);
    figure.draw(g);
    String element = g.getSVGElement(null, false, new ViewBox(0, 0, width, height), null, null);
    String label = HTMLOutputFormat.INSTANCE.escapePlainText(chart.title());
    return element.replaceFirst(
        "<svg ", Matcher.quoteReplacement("<svg role=\"img\" aria-label=\"" + label + "\" "));
  }

  /** Returns a PNG file. */
  static byte[] png(Chart chart) throws IOException {
    Figure figure = chart.figure(ChartStyle.PICTURE);
    int width = (int) (figure.style().width() * SCALE);
    int height = (int) (figure.style().height() * SCALE);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(SCALE, SCALE);
    figure.draw(g);
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(0.7f);
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static String short2(double value) {
    double rounded = Math.rint(value * 100) / 100;
    return rounded == Math.rint(rounded)
        ? String.valueOf((long) rounded)
        : String.format(Locale.ROOT, "%.2f", rounded);
  }
}
