package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.MoistAir;

@Tag("analytic")
class CondensationTest {
  private static final double PRESSURE = 2.4 * 101_325;
  private static final MoistAir DAY = MoistAir.of(298.15, 101_325, 0.6);

  @Test
  void beginsAtTheDewPoint() {
    double dew = DAY.dewPoint(PRESSURE);
    assertEquals(0, Condensation.driving(DAY, PRESSURE, dew + 1e-6));
    assertEquals(0, Condensation.waterFlow(DAY, PRESSURE, dew + 10, 1000));
    assertTrue(Condensation.driving(DAY, PRESSURE, dew - 0.1) > 0);
    assertEquals(0, Condensation.latentToSensible(DAY, PRESSURE, 400, dew + 1));
  }

  @Test
  void compressionRaisesTheDewPoint() {
    double wall = 273.15 + 25;
    assertEquals(0, Condensation.driving(DAY, 101_325, wall));
    assertTrue(Condensation.driving(DAY, PRESSURE, wall) > 0);
  }

  @Test
  void dryAirNeverCondenses() {
    assertEquals(0, Condensation.driving(new MoistAir(0), PRESSURE, 275));
  }

  @Test
  void latentHeatIsTheWaterTimesItsHeat() {
    double wall = 275.15;
    double air = 330;
    double conductance = 500;
    double latent =
        Condensation.waterFlow(DAY, PRESSURE, wall, conductance)
            * Condensation.heatOfVaporisation(wall);
    double sensible = conductance * (air - wall);
    assertEquals(latent / sensible, Condensation.latentToSensible(DAY, PRESSURE, air, wall), 1e-12);
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Condensation.latentToSensible(DAY, PRESSURE, 275, 275));
    assertThrows(
        IllegalArgumentException.class, () -> Condensation.waterFlow(DAY, PRESSURE, 275, -1));
    assertThrows(IllegalArgumentException.class, () -> Condensation.heatOfVaporisation(500));
  }
}
