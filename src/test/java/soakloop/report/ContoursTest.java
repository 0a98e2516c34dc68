package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Lines and bands of maps whose shape is known. */
@Tag("analytic")
class ContoursTest {
  private static double[] places(double from, double to, int count) {
    double[] places = new double[count];
    for (int i = 0; i < count; i++) {
      places[i] = from + (to - from) * i / (count - 1);
    }
    return places;
  }

  private static double[][] grid(double[] x, double[] y, DoubleBinaryOperator z) {
    double[][] grid = new double[x.length][y.length];
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < y.length; j++) {
        grid[i][j] = z.applyAsDouble(x[i], y[j]);
      }
    }
    return grid;
  }

  @Test
  void plainIsCutByOneStraightLine() {
    double[] x = {0, 1, 4, 5};
    double[] y = places(0, 2, 5);
    List<double[][]> lines = Contours.of(x, y, grid(x, y, (a, b) -> a + 3 * b), 4.1);
    assertEquals(1, lines.size());
    double[][] line = lines.get(0);
    for (int i = 0; i < line[0].length; i++) {
      assertEquals(4.1, line[0][i] + 3 * line[1][i], 1e-12);
    }
    // It enters where y = 4.1 / 3 and leaves where x = 4.1.
    double first = Math.min(line[0][0], line[0][line[0].length - 1]);
    double last = Math.max(line[0][0], line[0][line[0].length - 1]);
    assertEquals(0, first, 1e-12);
    assertEquals(4.1, last, 1e-12);
  }

  @Test
  void hillIsRingedByOneClosedLine() {
    double[] x = places(-2, 2, 81);
    double[][] z = grid(x, x, (a, b) -> a * a + b * b);
    List<double[][]> lines = Contours.of(x, x, z, 1);
    assertEquals(1, lines.size());
    double[][] ring = lines.get(0);
    int last = ring[0].length - 1;
    assertEquals(ring[0][0], ring[0][last], 1e-12);
    double length = 0;
    for (int i = 0; i <= last; i++) {
      assertEquals(1, Math.hypot(ring[0][i], ring[1][i]), 1e-3);
      if (i > 0) {
        length += Math.hypot(ring[0][i] - ring[0][i - 1], ring[1][i] - ring[1][i - 1]);
      }
    }
    assertEquals(2 * Math.PI, length, 0.01);
  }

  @Test
  void saddleIsCutTwiceAndHolesAreLeftAlone() {
    double[] x = places(-1, 1, 2);
    double[][] saddle = grid(x, x, (a, b) -> a * b);
    assertEquals(2, Contours.of(x, x, saddle, 0.2).size());
    assertEquals(2, Contours.of(x, x, saddle, -0.2).size());
    saddle[0][0] = Double.NaN;
    assertTrue(Contours.of(x, x, saddle, 0.2).isEmpty());
  }

  @Test
  void bandsGoByRoundSteps() {
    Bands bands =
        Bands.of(new double[][] {{118.3, 121}, {126.9, Double.NaN}}, OptionalDouble.empty());
    assertEquals(1, bands.step());
    assertEquals(
        List.of(119.0, 120.0, 121.0),
        java.util.Arrays.stream(bands.levels()).limit(3).boxed().toList());
    assertEquals(126, bands.levels()[bands.levels().length - 1], 1e-9);
    assertEquals(bands.color(120.1), bands.color(120.9));
    Bands flat = Bands.of(new double[][] {{5, 5}, {5, 5}}, OptionalDouble.empty());
    assertEquals(0, flat.levels().length);
  }

  @Test
  void pictureHasTheColourOfTheValueAtEveryPlace() {
    double[] x = {0, 1, 10};
    double[] y = {0, 4};
    double[][] z = grid(x, y, (a, b) -> 10 * a + b);
    Bands bands = Bands.of(z, OptionalDouble.of(50));
    java.awt.image.BufferedImage image = bands.image(x, y, z);
    for (int px = 3; px < image.getWidth(); px += 40) {
      for (int py = 3; py < image.getHeight(); py += 40) {
        double value =
            10 * (10 * (px + 0.5) / image.getWidth()) + 4 * (1 - (py + 0.5) / image.getHeight());
        assertEquals(bands.color(value).getRGB(), image.getRGB(px, py));
      }
    }
    assertTrue(bands.color(49).getBlue() > bands.color(49).getRed(), "cool under the limit");
    assertTrue(bands.color(51).getRed() > bands.color(51).getBlue(), "warm over it");
  }
}
