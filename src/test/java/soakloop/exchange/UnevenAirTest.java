package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The factor of uneven air against averaging over a face. */
@Tag("analytic")
class UnevenAirTest {
  private static final int STRIPS = 20_000;

  /** Conductance that evenly spread air would need, over the one that a spread face has. */
  private static double averaged(double spread, double exponent, double units) {
    double reach = spread * Math.sqrt(3); // an even distribution of that standard deviation
    double effectiveness = 0;
    for (int i = 0; i < STRIPS; i++) {
      double w = 1 + reach * (2 * (i + 0.5) / STRIPS - 1);
      effectiveness += w * -Math.expm1(-units * Math.pow(w, exponent - 1)) / STRIPS;
    }
    return -Math.log1p(-effectiveness) / units;
  }

  @Test
  void isTheMeanOverAFace() {
    for (double spread : new double[] {0.05, 0.1, 0.2}) {
      for (double exponent : new double[] {0, 0.3, 0.5, 0.8}) {
        for (double units : new double[] {0.1, 0.5, 1, 2, 3}) {
          assertEquals(
              averaged(spread, exponent, units),
              UnevenAir.factor(spread, exponent, units),
              0.005,
              spread + " " + exponent + " " + units);
        }
      }
    }
  }

  @Test
  void theSideMakesTheWholeSmallerByTheFactor() {
    double air = 900;
    double coolant = 1400;
    double rate = 450;
    double side = UnevenAir.airSide(air, coolant, rate, 0.3, 0.5);
    double even = air * coolant / (air + coolant);
    double factor = UnevenAir.factor(0.3, 0.5 * even / air, even / rate);
    assertEquals(factor * even, side * coolant / (side + coolant), 1e-9 * even);
    assertTrue(factor < 0.99);
  }

  @Test
  void evenAirTakesNothing() {
    assertEquals(1, UnevenAir.factor(0, 0.5, 3));
    assertEquals(900, UnevenAir.airSide(900, 1400, 450, 0, 0.5));
    assertEquals(1, UnevenAir.factor(0.5, 1, 3), "a side that follows its own flow loses nothing");
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> UnevenAir.factor(-0.1, 0.5, 1));
    assertThrows(IllegalArgumentException.class, () -> UnevenAir.factor(0.1, 1.1, 1));
    assertThrows(IllegalArgumentException.class, () -> UnevenAir.factor(0.1, 0.5, Double.NaN));
  }
}
