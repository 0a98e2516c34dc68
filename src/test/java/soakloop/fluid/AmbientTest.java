package soakloop.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Humid air and the standard atmosphere. */
@Tag("analytic")
class AmbientTest {
  private static final double SEA_LEVEL = 101_325;

  @ParameterizedTest
  @ValueSource(doubles = {243.15, 273.15, 290, 313.15, 333.15})
  void dewPointOfSaturatedAirIsItsTemperature(double t) {
    assertEquals(t, MoistAir.of(t, SEA_LEVEL, 1).dewPoint(SEA_LEVEL), 1e-9);
  }

  @Test
  void dryAirIsDry() {
    MoistAir dry = MoistAir.of(300, SEA_LEVEL, 0);
    assertEquals(0, dry.humidityRatio(), 0);
    assertEquals(Air.GAS_CONSTANT, dry.gasConstant(), 0);
    assertEquals(0, dry.vapourPressure(SEA_LEVEL), 0);
    assertEquals(16.01, dry.dewPoint(SEA_LEVEL), 1e-9);
    assertTrue(new MoistAir(1e-300).dewPoint(SEA_LEVEL) < 80);
  }

  @Test
  void vapourPressureIsTheShareOfSaturation() {
    MoistAir air = MoistAir.of(300, SEA_LEVEL, 0.4);
    assertEquals(0.4 * MoistAir.saturationPressure(300), air.vapourPressure(SEA_LEVEL), 1e-9);
  }

  @Test
  void humidAirIsLighterAndDewPointRisesWithPressure() {
    MoistAir humid = MoistAir.of(303.15, SEA_LEVEL, 0.8);
    assertTrue(humid.density(303.15, SEA_LEVEL) < new MoistAir(0).density(303.15, SEA_LEVEL));
    assertTrue(humid.dewPoint(2 * SEA_LEVEL) > humid.dewPoint(SEA_LEVEL));
  }

  @Test
  void impossibleAirIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new MoistAir(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new MoistAir(-1e-9));
    assertThrows(IllegalArgumentException.class, () -> MoistAir.of(300, SEA_LEVEL, 1.01));
    assertThrows(IllegalArgumentException.class, () -> MoistAir.of(300, SEA_LEVEL, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> MoistAir.of(300, 0, 0.5));
    assertThrows(IllegalArgumentException.class, () -> MoistAir.of(390, SEA_LEVEL, 1));
    assertThrows(IllegalArgumentException.class, () -> MoistAir.saturationPressure(16));
    assertThrows(IllegalArgumentException.class, () -> new MoistAir(0.01).density(300, -1));
    assertThrows(IllegalArgumentException.class, () -> new MoistAir(0.01).dewPoint(1e12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -5001, 11_001})
  void altitudeOutsideTheLayerIsRefused(double altitude) {
    assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.temperature(altitude));
    assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.pressure(altitude));
    assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.density(altitude));
  }
}
