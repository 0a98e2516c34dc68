package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("analytic")
class MultiPassTest {
  private static final double[] RATIOS = {0, 1e-9, 0.3, 0.9, Math.nextDown(1.0), 1};

  @Test
  void onePassIsThePassItself() {
    for (double ratio : RATIOS) {
      for (double e : new double[] {0, 1e-12, 0.4, 0.999, 1}) {
        assertEquals(e, MultiPass.counterflow(e, 1, ratio), 1e-15);
      }
    }
  }

  /** Counterflow exchangers in counterflow are one longer counterflow exchanger. */
  @Test
  void counterflowPassesMakeCounterflow() {
    for (double ratio : RATIOS) {
      for (double ntu : new double[] {0.01, 1, 4, 20}) {
        assertEquals(
            FlowArrangement.COUNTERFLOW.effectiveness(ntu, ratio),
            MultiPass.counterflow(FlowArrangement.COUNTERFLOW, ntu, 3, ratio),
            1e-13,
            ntu + " " + ratio);
      }
    }
  }

  @Test
  void manyPassesApproachCounterflow() {
    double counter = FlowArrangement.COUNTERFLOW.effectiveness(3, 0.8);
    double previous = FlowArrangement.CROSS_UNMIXED.effectiveness(3, 0.8);
    for (int n = 2; n <= 64; n *= 2) {
      double value = MultiPass.counterflow(FlowArrangement.CROSS_UNMIXED, 3, n, 0.8);
      assertTrue(value > previous && value < counter, "passes " + n);
      previous = value;
    }
    assertEquals(counter, previous, 1e-3);
  }

  /** Two passes solved as the two energy balances they are, without the closed form. */
  @Test
  void twoPassesObeyTheirEnergyBalances() {
    double e = 0.45;
    double ratio = 0.7;
    // Cmin stream from 1, Cmax stream from 0; between the passes the Cmax stream is at x.
    // First pass of the Cmin stream is the last of the Cmax stream.
    double overall = MultiPass.counterflow(e, 2, ratio);
    double low = 0;
    double high = 1;
    for (int i = 0; i < 80; i++) {
      double x = (low + high) / 2;
      double between = 1 - e * (1 - x);
      double balance = ratio * e * between - x;
      if (balance > 0) {
        low = x;
      } else {
        high = x;
      }
    }
    double between = 1 - e * (1 - low);
    double outlet = between - e * between;
    assertEquals(1 - outlet, overall, 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, 1.1})
  void impossibleInputIsRefused(double bad) {
    assertThrows(IllegalArgumentException.class, () -> MultiPass.counterflow(bad, 2, 0.5));
    assertThrows(IllegalArgumentException.class, () -> MultiPass.counterflow(0.5, 2, bad));
  }

  @Test
  void noPassIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> MultiPass.counterflow(0.5, 0, 0.5));
    assertThrows(
        IllegalArgumentException.class,
        () -> MultiPass.counterflow(FlowArrangement.CROSS_UNMIXED, 1, 0, 0.5));
  }
}
