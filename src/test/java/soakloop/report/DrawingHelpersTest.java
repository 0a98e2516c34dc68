package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.Curve;
import soakloop.simulate.EnergyLedger;

/** What the charts leave out and move aside. */
@Tag("analytic")
class DrawingHelpersTest {
  @Test
  void labelsThatDoNotTouchStayWhereTheyAre() {
    assertArrayEquals(
        new double[] {70, 20}, LabelStack.place(new double[] {70, 20}, 10, 0, 100), 0);
  }

  @Test
  void labelsThatTouchSpreadAboutTheirMean() {
    assertArrayEquals(
        new double[] {45, 65, 55}, LabelStack.place(new double[] {54, 56, 55}, 10, 0, 100), 1e-9);
  }

  @Test
  void labelsNeverOverlapAndStayInsideWhereThereIsRoom() {
    Random random = new Random(3);
    for (int n = 1; n <= 9; n++) {
      double[] placed = LabelStack.place(random.doubles(n, 0, 100).toArray(), 10, 0, 100);
      Arrays.sort(placed);
      assertTrue(placed[0] >= 5 - 1e-9 && placed[n - 1] <= 95 + 1e-9, Arrays.toString(placed));
      for (int i = 1; i < n; i++) {
        assertTrue(placed[i] - placed[i - 1] >= 10 - 1e-9, Arrays.toString(placed));
      }
    }
  }

  @Test
  void thinnedLineStaysWithinAPixelOfTheWholeOne() {
    int n = 20_000;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = i * 0.1;
      y[i] = 40 + 20 * Math.exp(-(x[i] % 160) / 15);
    }
    double[][] thin = Thinning.line(x, y);
    assertTrue(thin[0].length < 1000, "kept " + thin[0].length);
    Curve curve = Curve.of(thin[0], thin[1]);
    for (int i = 0; i < n; i++) {
      assertEquals(y[i], curve.at(x[i]), 20.0 / 1500 + 1e-9);
    }
  }

  @Test
  void gapsStayGaps() {
    double[][] thin =
        Thinning.line(new double[] {0, 1, 2, 3, 4}, new double[] {1, 1, Double.NaN, 1, 1});
    assertArrayEquals(new double[] {0, 1, 2, 3, 4}, thin[0], 0);
    assertTrue(Double.isNaN(thin[1][2]));
  }

  @Test
  void lowestAndHighestLoggedPointAreLeftInEachColumn() {
    double[] x = {-1, 0, 0.2, 1.5, 1.6, 1.7, 1.8, 9.9, 10, 11};
    double[] y = {1, Double.NaN, 2, 3, 8, 1, 4, 5, 6, 7};
    assertArrayEquals(new double[] {2, 8, 1, 5, 6}, Thinning.points(x, y, 0, 10, 10)[1], 0);
  }

  @Test
  void dynoSheetShowsEachGearAndNoShift() {
    Sweep sweep = new Sweep();
    double[] time = {0, 0, 1, 2, 2.1, 2.2, 3.2, 3.3};
    double[] speed = {900, 3000, 5000, 7000, 6000, 5200, 7000, 4000};
    for (int i = 0; i < time.length; i++) {
      sweep.add(time[i], speed[i], i);
    }
    double nan = Double.NaN;
    assertArrayEquals(new double[] {nan, 1, 2, 3, nan, 5, 6, nan}, sweep.rising()[1], 0);
    assertArrayEquals(speed, sweep.rising()[0], 0);
  }

  @Test
  void heatThatRunsBackwardsCountsOnTheOtherSide() {
    EnergyLedger ledger =
        new EnergyLedger(77, -136, 39, 17, -39, 546, 0, -348, -79, -41, -120, 0, 900);
    HeatBalance balance = HeatBalance.of(ledger);
    assertEquals(77 + 39 + 17, balance.cameIn(), 1e-9);
    assertEquals(136 + 39 + 546, balance.wentOut(), 1e-9);
    assertEquals(balance.stay(), balance.cameIn() - balance.wentOut(), 1e-9);
    assertEquals(3, balance.out().size());
    assertTrue(balance.out().stream().allMatch(e -> e.joule() > 0));
  }

  @Test
  void wordsInEveryColourAreReadableOnWhite() {
    for (int i = 0; i < 12; i++) {
      assertTrue(contrast(Palette.readable(Palette.step(i, 12))) >= 4.5);
    }
    for (Color color :
        new Color[] {Palette.WARM, Palette.SKY, Palette.PINK, Palette.GREEN, Palette.QUIET}) {
      assertTrue(contrast(Palette.readable(color)) >= 4.5, color.toString());
    }
  }

  /**
   * Contrast with white. WCAG 2.1, W3C 2018: "contrast ratio" and "relative luminance"; 4.5 is the
   * least for text (success criterion 1.4.3).
   */
  private static double contrast(Color color) {
    double luminance =
        0.2126 * linear(color.getRed())
            + 0.7152 * linear(color.getGreen())
            + 0.0722 * linear(color.getBlue());
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
