package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sensitivity indices against closed forms.
 *
 * <p>Ishigami's function is {@code sin x1 + a sin^2 x2 + b x3^4 sin x1} with all three inputs even
 * over -pi to pi, here with a = 7 and b = 0.1. Its parts of the variance, by integration: {@code V1
 * = (1 + b pi^4 / 5)^2 / 2}, {@code V2 = a^2 / 8}, {@code V13 = 8 b^2 pi^8 / 225}, all others zero.
 * Function: T. Ishigami, T. Homma, "An importance quantification technique in uncertainty analysis
 * for computer models", Proc. ISUMA '90, IEEE (1990) 398-403; from memory.
 */
@Tag("analytic")
class JansenTest {
  private static final double A = 7;
  private static final double B = 0.1;
  private static final double V1 = Math.pow(1 + B * Math.pow(Math.PI, 4) / 5, 2) / 2;
  private static final double V2 = A * A / 8;
  private static final double V13 = 8 * B * B * Math.pow(Math.PI, 8) / 225;
  private static final double V = V1 + V2 + V13;

  private static double ishigami(double[] unit) {
    double x1 = Math.PI * (2 * unit[0] - 1);
    double x2 = Math.PI * (2 * unit[1] - 1);
    double x3 = Math.PI * (2 * unit[2] - 1);
    return Math.sin(x1) + A * Math.pow(Math.sin(x2), 2) + B * Math.pow(x3, 4) * Math.sin(x1);
  }

  private static List<double[]> values(
      int inputs, int points, ToDoubleFunction<double[]> function) {
    SobolDesign design = new SobolDesign(inputs, points);
    List<double[]> values = new ArrayList<>();
    for (int j = 0; j < points; j++) {
      values.add(design.places(j).stream().mapToDouble(function).toArray());
    }
    return values;
  }

  private static void agrees(int points, double tolerance) {
    List<Jansen.Indices> indices = Jansen.of(values(3, points, JansenTest::ishigami));
    assertEquals((V1 + V13) / V, indices.get(0).total(), tolerance);
    assertEquals(V2 / V, indices.get(1).total(), tolerance);
    assertEquals(V13 / V, indices.get(2).total(), tolerance);
    assertEquals(V1 / V, indices.get(0).alone(), tolerance);
    assertEquals(V2 / V, indices.get(1).alone(), tolerance);
    assertEquals(0, indices.get(2).alone(), tolerance);
  }

  @Test
  void ishigamiWithManyPoints() {
    agrees(1 << 14, 2e-3);
  }

  @Test
  void ishigamiWithAsManyPointsAsAreUsed() {
    agrees(RankPlan.POINTS, 0.06);
  }

  /** A weighted sum: alone and total are both the square of the weight over the sum of squares. */
  @Test
  void sumHasNoJointEffects() {
    List<Jansen.Indices> indices =
        Jansen.of(values(3, RankPlan.POINTS, x -> 5 * x[0] + 3 * x[1] + x[2]));
    double[] exact = {25 / 35.0, 9 / 35.0, 1 / 35.0};
    for (int i = 0; i < 3; i++) {
      assertEquals(exact[i], indices.get(i).total(), 0.03);
      assertEquals(exact[i], indices.get(i).alone(), 0.03);
    }
  }

  /** The product of two inputs even over -1 to 1: nothing alone, everything together. */
  @Test
  void productIsAllJoint() {
    List<Jansen.Indices> indices =
        Jansen.of(values(2, 1 << 12, x -> (2 * x[0] - 1) * (2 * x[1] - 1)));
    for (Jansen.Indices one : indices) {
      assertEquals(0, one.alone(), 0.01);
      assertEquals(1, one.total(), 0.01);
    }
  }

  @Test
  void pointsWithHolesAreLeftOut() {
    List<double[]> whole = values(3, 64, JansenTest::ishigami);
    List<double[]> holed = new ArrayList<>(whole);
    double[] row = whole.get(7).clone();
    row[3] = Double.NaN;
    holed.add(row);
    assertEquals(Jansen.of(whole), Jansen.of(holed));
  }

  @Test
  void constantHasNoIndices() {
    assertTrue(Jansen.of(values(2, 16, x -> 4)).isEmpty());
  }

  @Test
  void designTakesOneInputFromTheOtherSample() {
    List<double[]> places = new SobolDesign(2, 4).places(3);
    assertEquals(4, places.size());
    assertEquals(places.get(1)[0], places.get(2)[0]);
    assertEquals(places.get(0)[1], places.get(2)[1]);
    assertEquals(places.get(0)[0], places.get(3)[0]);
    assertEquals(places.get(1)[1], places.get(3)[1]);
    assertThrows(IllegalArgumentException.class, () -> new SobolDesign(0, 4));
    assertThrows(IllegalArgumentException.class, () -> new SobolDesign(2, 1));
  }
}
