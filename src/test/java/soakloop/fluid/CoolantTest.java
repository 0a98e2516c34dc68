package soakloop.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every coolant keeps, whichever correlation is behind it. */
class CoolantTest {
  static Stream<Coolant> coolants() {
    return Stream.of(
        Water.INSTANCE,
        GlycolMix.ofMass(Glycol.ETHYLENE, 0),
        GlycolMix.ofMass(Glycol.ETHYLENE, 0.3),
        GlycolMix.ofMass(Glycol.ETHYLENE, 0.6),
        GlycolMix.ofMass(Glycol.PROPYLENE, 0.3),
        GlycolMix.ofMass(Glycol.PROPYLENE, 0.6));
  }

  @Tag("analytic")
  @ParameterizedTest
  @MethodSource("coolants")
  void enthalpyIsTheIntegralOfHeatCapacity(Coolant coolant) {
    assertEquals(0, coolant.enthalpy(Coolant.ENTHALPY_ZERO), 1e-9);
    double low = coolant.freezingTemperature();
    double high = 378.15;
    // Gauss-Legendre, three points in each of many panels: exact for quintics in each.
    int panels = 64;
    double width = (high - low) / panels;
    double node = Math.sqrt(0.6) / 2;
    double sum = 0;
    for (int i = 0; i < panels; i++) {
      double mid = low + (i + 0.5) * width;
      sum +=
          width
              * (5 * coolant.heatCapacity(mid - node * width)
                  + 8 * coolant.heatCapacity(mid)
                  + 5 * coolant.heatCapacity(mid + node * width))
              / 18;
    }
    assertEquals(sum, coolant.enthalpy(high) - coolant.enthalpy(low), 1e-9 * sum);
  }

  @Tag("regression")
  @ParameterizedTest
  @MethodSource("coolants")
  void propertiesRunSmoothlyPastTheirRange(Coolant coolant) {
    for (DoubleUnaryOperator property : properties(coolant)) {
      double from = coolant.freezingTemperature() - 10;
      double to = 388.15;
      double previous = property.applyAsDouble(from);
      for (double t = from + 0.5; t <= to; t += 0.5) {
        double value = property.applyAsDouble(t);
        assertTrue(value > 0, () -> coolant + " property not above zero");
        assertEquals(previous, value, 0.08 * previous, coolant + " jumps near " + t);
        previous = value;
      }
    }
  }

  @Tag("regression")
  @ParameterizedTest
  @MethodSource("coolants")
  void viscosityFallsOnWarming(Coolant coolant) {
    double previous = Double.POSITIVE_INFINITY;
    for (double t = coolant.freezingTemperature(); t <= coolant.maxTemperature(); t += 1) {
      double value = coolant.viscosity(t);
      assertTrue(value < previous, coolant + " at " + t);
      previous = value;
    }
  }

  @ParameterizedTest
  @MethodSource("coolants")
  void impossibleTemperatureIsRefused(Coolant coolant) {
    for (double bad : new double[] {Double.NaN, 0, -1, Double.POSITIVE_INFINITY}) {
      for (DoubleUnaryOperator property : properties(coolant)) {
        var thrown =
            assertThrows(IllegalArgumentException.class, () -> property.applyAsDouble(bad));
        assertTrue(String.valueOf(thrown.getMessage()).contains(String.valueOf(bad)));
      }
      assertThrows(IllegalArgumentException.class, () -> coolant.enthalpy(bad));
    }
  }

  @Test
  void waterStopsAtThePolesOfItsEquation() {
    assertThrows(IllegalArgumentException.class, () -> Water.INSTANCE.density(232));
    assertThrows(IllegalArgumentException.class, () -> Water.INSTANCE.heatCapacity(593));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.01, 0.6000001, 1, 30})
  void impossibleStrengthIsRefused(double fraction) {
    for (Glycol glycol : Glycol.values()) {
      assertThrows(IllegalArgumentException.class, () -> GlycolMix.ofMass(glycol, fraction));
      assertThrows(IllegalArgumentException.class, () -> GlycolMix.ofVolume(glycol, fraction));
    }
  }

  @ParameterizedTest
  @EnumSource(Glycol.class)
  void volumeConversionCoversTheFitsAndRises(Glycol glycol) {
    assertEquals(0, glycol.massFraction(0), 0);
    assertEquals(0.6, glycol.massFraction(glycol.maxVolumeFraction()), 1e-15);
    double previous = -1;
    for (double v = 0; v <= glycol.maxVolumeFraction(); v += 0.001) {
      assertTrue(glycol.massFraction(v) > previous);
      previous = glycol.massFraction(v);
    }
  }

  /**
   * Unmixed volumes weighed at 20 degC: 1113 and 1036 kg/m3 for the pure glycols, 998.2 for water
   * (common handbook values, from memory). The table differs from this by the shrinkage on mixing
   * and its reference temperature, never by more than a point.
   */
  @Tag("published")
  @ParameterizedTest
  @EnumSource(Glycol.class)
  void volumeConversionIsCloseToUnmixedVolumes(Glycol glycol) {
    double pure = glycol == Glycol.ETHYLENE ? 1113 : 1036;
    for (double v = 0; v <= glycol.maxVolumeFraction(); v += 0.05) {
      double weighed = v * pure / (v * pure + (1 - v) * 998.2);
      assertEquals(weighed, glycol.massFraction(v), 0.01);
    }
  }

  @ParameterizedTest
  @EnumSource(Glycol.class)
  void moreGlycolFreezesLower(Glycol glycol) {
    double previous = Double.POSITIVE_INFINITY;
    for (double x = 0; x <= 0.6; x += 0.01) {
      double freezing = GlycolMix.ofMass(glycol, x).freezingTemperature();
      assertTrue(freezing < previous);
      previous = freezing;
    }
  }

  @Test
  void mixRemembersWhatItIs() {
    GlycolMix mix = GlycolMix.ofVolume(Glycol.PROPYLENE, 0.5);
    assertEquals(0.501, mix.massFraction(), 1e-15);
    assertEquals(Glycol.PROPYLENE, mix.glycol());
    assertEquals(mix.freezingTemperature(), mix.minTemperature(), 0);
  }

  private static DoubleUnaryOperator[] properties(Coolant coolant) {
    return new DoubleUnaryOperator[] {
      coolant::density, coolant::heatCapacity, coolant::conductivity, coolant::viscosity
    };
  }
}
