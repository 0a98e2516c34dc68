package soakloop.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What results are shown in; expected values by hand from the exact definitions of the units. */
@Tag("analytic")
class UnitSystemTest {
  @ParameterizedTest
  @CsvSource({
    "TEMPERATURE, 293.15, 0, 20 degC, 68 degF",
    "TEMPERATURE, 233.15, 0, -40 degC, -40 degF",
    "TEMPERATURE_DIFFERENCE, 10, 0, 10 K, 18 degF",
    "GAUGE_PRESSURE, 100000, 1, 100.0 kPa, 14.5 psi",
    "ABSOLUTE_PRESSURE, 101325, 1, 101.3 kPa, 29.9 inHg",
    "PRESSURE_DIFFERENCE, 6894.757, 1, 6.9 kPa, 1.0 psi",
    "VOLUME_FLOW, 0.001, 1, 60.0 L/min, 15.9 gpm",
    "MASS_FLOW, 0.5, 0, 500 g/s, 66 lb/min",
    "VOLUME, 0.0037854118, 2, 3.79 L, 1.00 gal",
    "MASS, 0.45359237, 2, 0.45 kg, 1.00 lb",
    "LENGTH, 0.0254, 1, 25.4 mm, 1.0 in",
    "SPEED, 44.704, 1, 160.9 km/h, 100.0 mph",
    "POWER, 745.69987, 2, 0.75 kW, 1.00 hp",
    "ENERGY, 1055.056, 2, 1.06 kJ, 1.00 Btu",
    "CONDUCTANCE, 1000, 2, 1.00 kW/K, 1895.63 Btu/(h degF)",
    "TORQUE, 1.355818, 1, 1.4 N m, 1.0 lb-ft",
    "ROTATION, 100, 0, 6000 rpm, 6000 rpm",
    "FRACTION, 0.625, 1, 62.5 %, 62.5 %",
    "TIME, 90, 0, 90 s, 90 s",
    "NUMBER, 2.5, 1, 2.5, 2.5",
  })
  void shows(Dimension dimension, double si, int decimals, String metric, String us) {
    assertEquals(metric, UnitSystem.METRIC.show(si, dimension, decimals));
    assertEquals(us, UnitSystem.US.show(si, dimension, decimals));
  }

  @Test
  void everyDimensionIsShownInAUnitThatIsReadBack() throws QuantityException {
    for (Dimension dimension : Dimension.values()) {
      for (UnitSystem system : UnitSystem.values()) {
        if (dimension.isPlainNumber() || system.unit(dimension).symbol().isEmpty()) {
          continue;
        }
        String shown = system.show(273.15, dimension, 9);
        assertEquals(273.15, QuantityParser.parse(shown, dimension).value(), 1e-4, shown);
      }
    }
  }

  @Test
  void whatIsNoNumberIsNotShownAsOne() {
    assertEquals("n/a degC", UnitSystem.METRIC.show(Double.NaN, Dimension.TEMPERATURE, 1));
    assertEquals("0.0", Dimension.NUMBER.si().format(-0.01, 1));
  }

  @Test
  void estimatesAndCurvesRefuseWhatIsNoNumber() {
    assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(1, -1));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Curve.constant(Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> Curve.of(new double[] {0, 0}, new double[] {1, 2}));
    assertTrue(Double.isNaN(Curve.constant(1).at(Double.NaN)));
  }

  @Test
  void aCurveIsStraightBetweenItsPointsAndLevelBeyond() {
    Curve curve = Curve.of(new double[] {0, 10, 20}, new double[] {0, 5, 1});
    assertEquals(0, curve.at(-1));
    assertEquals(2.5, curve.at(5), 1e-12);
    assertEquals(5, curve.at(10), 1e-12);
    assertEquals(3, curve.at(15), 1e-12);
    assertEquals(1, curve.at(99));
  }
}
