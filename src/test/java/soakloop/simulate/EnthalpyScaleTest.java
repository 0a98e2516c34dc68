package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;

@Tag("analytic")
class EnthalpyScaleTest {
  static Stream<Coolant> coolants() {
    return Stream.of(
        Water.INSTANCE,
        GlycolMix.ofMass(Glycol.ETHYLENE, 0.3),
        GlycolMix.ofMass(Glycol.ETHYLENE, 0.6),
        GlycolMix.ofMass(Glycol.PROPYLENE, 0.55));
  }

  @ParameterizedTest
  @MethodSource("coolants")
  void holdsTheEnthalpyOfTheFluidPage(Coolant coolant) {
    EnthalpyScale scale = new EnthalpyScale(coolant);
    double reference = 320;
    for (double t = coolant.freezingTemperature(); t < 400; t += 0.25) {
      double scaled = scale.heatCapacity() * (scale.theta(t) - scale.theta(reference));
      double exact = coolant.enthalpy(t) - coolant.enthalpy(reference);
      assertEquals(0, (scaled - exact) / coolant.heatCapacity(t), 3e-3, coolant + " at " + t);
    }
  }

  @ParameterizedTest
  @MethodSource("coolants")
  void comesBackToTheSameTemperatureAlsoOutside(Coolant coolant) {
    EnthalpyScale scale = new EnthalpyScale(coolant);
    for (double t = 200; t < 500; t += 0.5) {
      assertEquals(t, scale.temperature(scale.theta(t)), 1e-9, coolant.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("coolants")
  void risesWithTheTemperature(Coolant coolant) {
    EnthalpyScale scale = new EnthalpyScale(coolant);
    for (double t = 200; t < 500; t += 0.5) {
      double slope = (scale.theta(t + 0.5) - scale.theta(t)) / 0.5;
      assertEquals(1, slope, 0.2, coolant + " at " + t);
    }
  }
}
