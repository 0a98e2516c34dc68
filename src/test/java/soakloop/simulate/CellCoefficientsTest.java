package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.FlowArrangement;

/**
 * A single cell at and between its limits. Its heat in a steady state is the entering temperature
 * difference over {@code 1/Ga + 1/Gc + theta/Cc}.
 */
@Tag("analytic")
class CellCoefficientsTest {
  private static final double AIR = 60;
  private static final double COOLANT = 90;
  private static final double RATE = 100;

  private final CellCoefficients cell = new CellCoefficients();

  private double conductance(double air, double coolant, double airRate, double coolantRate) {
    cell.update(air, coolant, airRate, coolantRate);
    return 1 / (1 / (cell.airShare() * airRate) + 1 / coolant + cell.theta() / coolantRate);
  }

  private static double exact(double air, double coolant, double airRate, double coolantRate) {
    double overall = air * coolant / (air + coolant);
    double least = Math.min(airRate, coolantRate);
    double ratio = least / Math.max(airRate, coolantRate);
    return least * FlowArrangement.CROSS_UNMIXED.effectiveness(overall / least, ratio);
  }

  @Test
  void steadyHeatIsExactAwayFromTheClamps() {
    for (double airRate : new double[] {40, 100, 400}) {
      for (double coolantRate : new double[] {70, 200, 1000}) {
        double expected = exact(AIR, COOLANT, airRate, coolantRate);
        double found = conductance(AIR, COOLANT, airRate, coolantRate);
        assertEquals(expected, found, 1e-9 * expected, airRate + " and " + coolantRate + " W/K");
      }
    }
  }

  /** With many transfer units in one cell the clamps cost heat, and never add any. */
  @Test
  void clampsOnlyTakeAway() {
    for (double units = 0.1; units < 200; units *= 1.3) {
      for (double coolantRate : new double[] {10, 100, 1000}) {
        double expected = exact(units * RATE, units * RATE, RATE, coolantRate);
        double found = conductance(units * RATE, units * RATE, RATE, coolantRate);
        assertTrue(found <= expected * (1 + 1e-9), units + " units: " + found + " W/K");
        assertTrue(found > 0.5 * expected, units + " units: " + found + " of " + expected);
      }
    }
  }

  /** With hardly any flow the coolant takes up all it can; without, the place has no meaning. */
  @Test
  void heatGoesToWhatTheCoolantCanTakeAsThePumpStops() {
    for (double coolantRate = 1; coolantRate > 1e-9; coolantRate /= 10) {
      double found = conductance(AIR, COOLANT, RATE, coolantRate);
      assertEquals(coolantRate, found, 2 * coolantRate * coolantRate / AIR, "W/K");
    }
    assertEquals(1, cell.theta(), 1e-9);
    cell.update(AIR, COOLANT, RATE, 0);
    assertEquals(1, cell.theta());
  }

  /** Else a warmer coolant inlet would cool the cell, or the air leave colder than the wall. */
  @Test
  void cellMakesNoTemperatureThatWasNotThere() {
    for (double units = 0.1; units < 200; units *= 1.3) {
      for (double airRate : new double[] {0, 1e-6, 1, RATE}) {
        for (double coolantRate : new double[] {1, 10, 100, 1000}) {
          double side = units * coolantRate;
          cell.update(airRate == 0 ? 0 : units * RATE, side, airRate, coolantRate);
          String what = units + " units, " + airRate + " and " + coolantRate + " W/K";
          assertTrue(cell.airShare() >= 0 && cell.airShare() <= 1, what);
          assertTrue(cell.theta() >= 0 && cell.theta() <= 1, what);
          assertTrue(coolantRate - side * (1 - cell.theta()) > -1e-9 * side, what);
        }
      }
    }
  }

  /** A coolant side that passes nothing: the air warms the wall, as far as one cell can tell. */
  @Test
  void coolantThatTakesNothingStillHasItsWallWarmed() {
    cell.update(AIR, 0, RATE, 0);
    double share = cell.airShare();
    assertEquals(-Math.expm1(-AIR / RATE), share, 0.03);
    cell.update(AIR, 1e-12, RATE, 0);
    assertEquals(share, cell.airShare(), 1e-9);
    cell.update(AIR, 0, RATE, RATE);
    assertEquals(share, cell.airShare(), 1e-9);
    assertTrue(Double.isFinite(cell.theta()));
  }
}
