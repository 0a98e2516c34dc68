package soakloop.report;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The bands that a map of values is coloured by: even steps of a round size. With a limit, what is
 * under it is cool and what is over it warm.
 *
 * @param low lowest value
 * @param high highest value
 * @param step size of a band
 * @param limit splits cool from warm
 */
record Bands(double low, double high, double step, OptionalDouble limit) {
  private static final int MOST = 9;
  private static final int WIDTH = 330;
  private static final int HEIGHT = 220;
  private static final Color COOL = new Color(0x7fb2d6);
  private static final Color PALE = new Color(0xf4f8fb);
  private static final Color LIGHT = new Color(0xfff3e2);
  private static final Color WARM = new Color(0xe5884a);
  private static final Color NONE = new Color(0xb9c0c6);

  /**
   * Makes bands for values.
   *
   * @param z values, NaN for none; at least one is a number
   * @param limit splits cool from warm
   */
  static Bands of(double[][] z, OptionalDouble limit) {
    double low = values(z).min().orElseThrow();
    double high = values(z).max().orElseThrow();
    double grain = Math.max((high - low) / MOST, 1e-6);
    double ten = Math.pow(10, Math.floor(Math.log10(grain)));
    double step = 10 * ten;
    for (double size : new double[] {5, 2, 1}) {
      if (size * ten >= grain) {
        step = size * ten;
      }
    }
    return new Bands(low, high, step, limit);
  }

  private static DoubleStream values(double[][] z) {
    return Arrays.stream(z).flatMapToDouble(Arrays::stream).filter(Double::isFinite);
  }

  /** Returns the levels between bands, rising, without one that would lie along the limit. */
  double[] levels() {
    double first = Math.ceil(low / step);
    double last = Math.floor(high / step);
    return DoubleStream.iterate(first, n -> n <= last, n -> n + 1)
        .map(n -> n * step)
        .filter(level -> level > low && level < high)
        .filter(level -> limit.isEmpty() || Math.abs(level - limit.getAsDouble()) > step / 4)
        .toArray();
  }

  /** Returns a value's colour. */
  Color color(double value) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    double middle = (Math.floor(value / step) + 0.5) * step;
    if (limit.isEmpty()) {
      return mix(LIGHT, WARM, share(middle, low, high));
    }
    double split = limit.getAsDouble();
    double reach = Math.max(Math.max(high - split, split - low), step);
    return value > split
        ? mix(LIGHT, WARM, share(Math.max(middle, split), split, split + reach))
        : mix(PALE, COOL, share(Math.max(split - middle, 0), 0, reach));
  }

  private static double share(double value, double from, double to) {
    return to > from ? Math.min(1, Math.max(0, (value - from) / (to - from))) : 0.5;
  }

  private static Color mix(Color a, Color b, double share) {
    return new Color(
        (int) Math.round(a.getRed() + share * (b.getRed() - a.getRed())),
        (int) Math.round(a.getGreen() + share * (b.getGreen() - a.getGreen())),
        (int) Math.round(a.getBlue() + share * (b.getBlue() - a.getBlue())));
  }

  /**
   * Draws the map, straight between the grid's points; what has no value is grey.
   *
   * @param x places of the columns, rising
   * @param y places of the rows, rising
   * @param z value at {@code [column][row]}
   */
  BufferedImage image(double[] x, double[] y, double[][] z) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int px = 0; px < WIDTH; px++) {
      double u = place(x, (px + 0.5) / WIDTH);
      for (int py = 0; py < HEIGHT; py++) {
        double v = place(y, 1 - (py + 0.5) / HEIGHT);
        image.setRGB(px, py, color(at(z, u, v)).getRGB());
      }
    }
    return image;
  }

  /** Returns the place in a row of points, in steps from the first, at a share of its length. */
  private static double place(double[] points, double share) {
    double at = points[0] + share * (points[points.length - 1] - points[0]);
    int i = 0;
    while (i + 2 < points.length && points[i + 1] <= at) {
      i++;
    }
    return i + (at - points[i]) / (points[i + 1] - points[i]);
  }

  private static double at(double[][] z, double u, double v) {
    int i = (int) Math.min(u, z.length - 2.0);
    int j = (int) Math.min(v, z[0].length - 2.0);
    double a = u - i;
    double b = v - j;
    return (1 - b) * ((1 - a) * z[i][j] + a * z[i + 1][j])
        + b * ((1 - a) * z[i][j + 1] + a * z[i + 1][j + 1]);
  }
}
