package soakloop.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("analytic")
class AirTest {
  @ParameterizedTest
  @ValueSource(doubles = {30, 200, 273.15, 298.15, 420, 500, 900, 3000})
  void temperatureAtEnthalpyInvertsEnthalpy(double t) {
    assertEquals(t, Air.temperatureAtEnthalpy(Air.enthalpy(t)), 1e-11 * t);
  }

  @ParameterizedTest
  @ValueSource(doubles = {220, 300, 450})
  void enthalpyAndEntropyAreIntegralsOfHeatCapacity(double t) {
    assertEquals(0, Air.enthalpy(273.15), 1e-9);
    assertEquals(0, Air.entropy(273.15), 1e-12);
    int panels = 4000;
    double width = (t - 273.15) / panels;
    double h = 0;
    double s = 0;
    for (int i = 0; i < panels; i++) {
      double mid = 273.15 + (i + 0.5) * width;
      h += Air.heatCapacity(mid) * width;
      s += Air.heatCapacity(mid) / mid * width;
    }
    assertEquals(h, Air.enthalpy(t), 1e-7 * Math.abs(h));
    assertEquals(s, Air.entropy(t), 1e-7 * Math.abs(s));
  }

  @Test
  void isentropicCompressionKeepsEntropyAndReverses() {
    for (double ratio : new double[] {0.01, 0.5, 1, 1.8, 2.4, 3, 100}) {
      double t2 = Air.isentropicTemperature(300, ratio);
      double rise = Air.GAS_CONSTANT * Math.log(ratio);
      assertEquals(rise, Air.entropy(t2) - Air.entropy(300), 1e-9);
      assertEquals(300, Air.isentropicTemperature(t2, 1 / ratio), 1e-9);
    }
  }

  /** With the textbook constant exponent 1.4 the outlet differs by tenths of a kelvin only. */
  @Test
  void isentropicTemperatureIsCloseToConstantExponent() {
    double constant = 298.15 * Math.pow(2.4, 0.4 / 1.4);
    assertEquals(constant, Air.isentropicTemperature(298.15, 2.4), 0.5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -5, Double.POSITIVE_INFINITY})
  void impossibleArgumentsAreRefused(double bad) {
    assertThrows(IllegalArgumentException.class, () -> Air.heatCapacity(bad));
    assertThrows(IllegalArgumentException.class, () -> Air.enthalpy(bad));
    assertThrows(IllegalArgumentException.class, () -> Air.entropy(bad));
    assertThrows(IllegalArgumentException.class, () -> Air.viscosity(bad));
    assertThrows(IllegalArgumentException.class, () -> Air.conductivity(bad));
    assertThrows(IllegalArgumentException.class, () -> Air.isentropicTemperature(bad, 2));
    assertThrows(IllegalArgumentException.class, () -> Air.isentropicTemperature(300, bad));
    assertThrows(IllegalArgumentException.class, () -> Air.isentropicTemperature(300, 2, bad));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1e6, Double.POSITIVE_INFINITY})
  void enthalpyNoAirHasIsRefused(double bad) {
    assertThrows(IllegalArgumentException.class, () -> Air.temperatureAtEnthalpy(bad));
  }
}
