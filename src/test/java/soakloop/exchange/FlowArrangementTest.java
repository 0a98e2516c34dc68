package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("analytic")
class FlowArrangementTest {
  private static final double[] NTUS = {1e-12, 1e-6, 0.01, 0.1, 0.3, 1, 2, 3, 5, 10, 50, 400};
  private static final double[] RATIOS = {0, 1e-18, 1e-9, 1e-3, 0.25, 0.5, 0.75, 0.999999, 1};

  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void zeroRatioIsTheSameForAll(FlowArrangement arrangement) {
    for (double ntu : NTUS) {
      double limit = -Math.expm1(-ntu);
      assertEquals(limit, arrangement.effectiveness(ntu, 0), 0);
      assertEquals(limit, arrangement.effectiveness(ntu, 1e-15), 1e-12 * limit);
    }
  }

  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void fewUnitsTransferInProportion(FlowArrangement arrangement) {
    for (double ratio : RATIOS) {
      assertEquals(0, arrangement.effectiveness(0, ratio), 0);
      for (double ntu : new double[] {Double.MIN_NORMAL, 1e-200, 1e-30, 1e-16}) {
        assertEquals(ntu, arrangement.effectiveness(ntu, ratio), 1e-11 * ntu);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void moreUnitsTransferMore(FlowArrangement arrangement) {
    // Both streams mixed has a maximum, at the earliest (C = 1) near 2.5 transfer units.
    double last = arrangement == FlowArrangement.CROSS_BOTH_MIXED ? 2 : 2000;
    for (double ratio : RATIOS) {
      double previous = 0;
      for (double ntu = 1e-6; ntu < last; ntu *= 1.05) {
        double value = arrangement.effectiveness(ntu, ratio);
        // On its plateau a value may flicker in the last digits, more so past the series.
        double flicker = ntu > 490 ? 2e-9 : 1e-13;
        assertTrue(value >= previous - flicker, arrangement + " " + ntu + " " + ratio);
        assertTrue(value > 0 && value <= 1);
        previous = value;
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void closerCapacitiesTransferLess(FlowArrangement arrangement) {
    for (double ntu : NTUS) {
      double previous = 1;
      for (double ratio : RATIOS) {
        double value = arrangement.effectiveness(ntu, ratio);
        assertTrue(value <= previous + 1e-14, arrangement + " " + ntu + " " + ratio);
        previous = value;
      }
    }
  }

  @Test
  void crossflowLiesBetweenParallelAndCounterflow() {
    for (double ntu : NTUS) {
      for (double ratio : RATIOS) {
        double most = FlowArrangement.COUNTERFLOW.effectiveness(ntu, ratio);
        double least = FlowArrangement.PARALLEL.effectiveness(ntu, ratio);
        double unmixed = FlowArrangement.CROSS_UNMIXED.effectiveness(ntu, ratio);
        double slack = 1e-14;
        assertTrue(most >= unmixed - slack && unmixed >= least - slack, ntu + " " + ratio);
        for (FlowArrangement mixed :
            new FlowArrangement[] {
              FlowArrangement.CROSS_CMAX_MIXED,
              FlowArrangement.CROSS_CMIN_MIXED,
              FlowArrangement.CROSS_BOTH_MIXED
            }) {
          double value = mixed.effectiveness(ntu, ratio);
          assertTrue(
              unmixed >= value - slack && value >= least - slack, mixed + " " + ntu + " " + ratio);
        }
      }
    }
  }

  /** No closed form is as exact near balance as the balanced one: approach it. */
  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void almostBalancedIsCloseToBalanced(FlowArrangement arrangement) {
    for (double ntu : NTUS) {
      double balanced = arrangement.effectiveness(ntu, 1);
      double almost = arrangement.effectiveness(ntu, Math.nextDown(1.0));
      assertEquals(balanced, almost, 1e-13 * balanced, arrangement + " " + ntu);
    }
  }

  /** The stated error of the usual approximation, over the range it is stated for. */
  @Test
  void approximationErrsAsDocumented() {
    double relative = 0;
    double absolute = 0;
    for (double ntu = 0.1; ntu <= 7; ntu *= 1.02) {
      for (double ratio = 0.05; ratio < 1.001; ratio += 0.05) {
        double c = Math.min(1, ratio);
        double exact = FlowArrangement.CROSS_UNMIXED.effectiveness(ntu, c);
        double error = FlowArrangement.CROSS_UNMIXED_APPROXIMATE.effectiveness(ntu, c) - exact;
        relative = Math.max(relative, Math.abs(error / exact));
        absolute = Math.max(absolute, Math.abs(error));
      }
    }
    assertEquals(0.038, relative, 0.001);
    assertEquals(0.011, absolute, 0.001);
  }

  /** Series and limit meet: their difference at the border is below the limit's stated error. */
  @Test
  void seriesMeetsItsLimit() {
    for (double ratio = 0.3; ratio < 1.0005; ratio += 0.001) {
      double c = Math.min(1, ratio);
      double below = FlowArrangement.CROSS_UNMIXED.effectiveness(500, c);
      double above = FlowArrangement.CROSS_UNMIXED.effectiveness(Math.nextUp(500.0), c);
      assertEquals(below, above, 2e-9, "C " + c);
    }
    assertEquals(1, FlowArrangement.CROSS_UNMIXED.effectiveness(Double.MAX_VALUE, 0.5), 0);
    assertEquals(1, FlowArrangement.CROSS_UNMIXED.effectiveness(Double.MAX_VALUE, 1), 0);
  }

  @ParameterizedTest
  @EnumSource(FlowArrangement.class)
  void impossibleInputIsRefusedWithItsValue(FlowArrangement arrangement) {
    for (double ntu : new double[] {Double.NaN, -1e-9, Double.POSITIVE_INFINITY}) {
      var thrown =
          assertThrows(IllegalArgumentException.class, () -> arrangement.effectiveness(ntu, 0.5));
      assertTrue(String.valueOf(thrown.getMessage()).endsWith(String.valueOf(ntu)));
    }
    for (double ratio : new double[] {Double.NaN, -1e-9, Math.nextUp(1.0)}) {
      var thrown =
          assertThrows(IllegalArgumentException.class, () -> arrangement.effectiveness(1, ratio));
      assertTrue(String.valueOf(thrown.getMessage()).endsWith(String.valueOf(ratio)));
    }
  }
}
