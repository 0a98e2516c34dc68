package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PassedCrossflowTest {
  private static final double WATER = 1.0 * 4197;
  private static final double GAS = 0.45 * WATER;

  /**
   * Water 1 kg/s, 4197 J/(kg K), 35 to 125 degC, gas 300 to 100 degC, crossflow, both unmixed, U
   * 100 W/(m2 K). Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 11.3, as
   * stored in a public companion: 39.7 m2 from the chart. The exact series gives 39.300 m2
   * (computed with mpmath for this project).
   */
  @Test
  @Tag("published")
  void conductanceOfAWorkedExample() {
    double effectiveness = 200.0 / 265;
    double area = new PassedCrossflow(1, true).conductance(effectiveness, GAS, WATER) / 100;
    assertEquals(39.7, area, 0.02 * 39.7);
  }

  @Test
  @Tag("analytic")
  void oneEffectivenessHasOneConductance() {
    for (boolean depth : new boolean[] {true, false}) {
      for (int passes = 1; passes <= 4; passes++) {
        PassedCrossflow crossflow = new PassedCrossflow(passes, depth);
        for (double rate : new double[] {100, 450, 1500}) {
          double e = crossflow.airEffectiveness(500, rate, 900);
          assertEquals(500, crossflow.conductance(e, rate, 900), 1e-6, passes + " " + depth);
          assertTrue(e < crossflow.mostEffectiveness(rate, 900));
        }
      }
    }
  }

  /** With one pass the two arrangements are one and the same exchanger. */
  @Test
  @Tag("analytic")
  void onePassIsPlainCrossflow() {
    for (double rate : new double[] {100, 450, 1500}) {
      double units = 500 / Math.min(rate, 900);
      double ratio = Math.min(rate, 900) / Math.max(rate, 900);
      double byLess = FlowArrangement.CROSS_UNMIXED.effectiveness(units, ratio);
      double byAir = byLess * Math.min(rate, 900) / rate;
      assertEquals(byAir, new PassedCrossflow(1, true).airEffectiveness(500, rate, 900), 1e-12);
      assertEquals(byAir, new PassedCrossflow(1, false).airEffectiveness(500, rate, 900), 1e-12);
    }
  }

  /**
   * Two passes side by side, worked step by step: the coolant meets one half of the air, then the
   * other.
   */
  @Test
  @Tag("analytic")
  void sideBySideIsTwoExchangersInARow() {
    double airRate = 450;
    double coolantRate = 900;
    double half = airRate / 2;
    double e = FlowArrangement.CROSS_UNMIXED.effectiveness(250 / half, half / coolantRate);
    double first = e * half * 100; // air 100 K above the coolant's inlet
    double second = e * half * (100 - first / coolantRate);
    assertEquals(
        (first + second) / (airRate * 100),
        new PassedCrossflow(2, false).airEffectiveness(500, airRate, coolantRate),
        1e-12);
  }

  @Test
  @Tag("analytic")
  void whatNoConductanceReachesIsRefused() {
    PassedCrossflow one = new PassedCrossflow(1, true);
    assertThrows(IllegalArgumentException.class, () -> one.conductance(1.2, 450, 900));
    assertThrows(IllegalArgumentException.class, () -> one.conductance(0, 450, 900));
    assertThrows(IllegalArgumentException.class, () -> new PassedCrossflow(0, true));
  }
}
