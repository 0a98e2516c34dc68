package soakloop.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.IceBath.Settled;

@Tag("analytic")
class IceBathTest {
  private static final double WARM = 303.15;
  private static final double COLD = 255.15;

  @Test
  void noIceChangesNothing() {
    Settled settled = bath(0.3, 0, COLD).settle();
    assertEquals(WARM, settled.temperature(), 1e-12);
    assertEquals(0, settled.iceLeft());
  }

  @Test
  void glycolMeltsIceBelowZero() {
    Settled water = bath(0, 6, COLD).settle();
    Settled mix = bath(0.3, 6, COLD).settle();
    assertEquals(273.15, water.temperature());
    assertTrue(mix.temperature() < 268, "at " + mix.temperature());
    assertTrue(mix.melted() > water.melted(), "a colder bath melts more");
  }

  @Test
  void meltThinsTheCoolantAndRaisesItsFreezingPoint() {
    IceBath bath = bath(0.3, 6, COLD);
    double before = bath.freezing(0);
    double after = bath.settle().temperature();
    assertTrue(after > before);
    assertEquals(GlycolMix.ofMass(Glycol.ETHYLENE, 0.3).freezingTemperature(), before, 1e-12);
  }

  @Test
  void energyIsKept() {
    for (double glycol : new double[] {0, 0.1, 0.3, 0.5}) {
      for (double ice : new double[] {0.5, 2, 4, 8}) {
        Settled s = bath(glycol, ice, COLD).settle();
        double over = s.temperature() - 273.15;
        double after =
            (8 * 3700 + s.melted() * 4190) * over
                + s.iceLeft() * (Ice.HEAT_CAPACITY * over - Ice.HEAT_OF_FUSION);
        double before = 8 * 3700 * 30 + ice * Ice.enthalpy(COLD);
        assertEquals(before, after, 1e-3, glycol + " " + ice);
        assertEquals(ice, s.melted() + s.iceLeft(), 1e-12);
      }
    }
  }

  @Test
  void veryColdIceFreezesWaterOut() {
    IceBath bath = new IceBath(1, 274.15, 4190, Glycol.ETHYLENE, 0, 3, 233.15);
    Settled settled = bath.settle();
    assertTrue(settled.melted() < 0);
    assertTrue(settled.iceLeft() > 3);
    IceBath solid = new IceBath(1, 274.15, 4190, Glycol.ETHYLENE, 0, 30, 233.15);
    assertThrows(IllegalArgumentException.class, solid::settle);
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> bath(0.7, 1, COLD));
    assertThrows(IllegalArgumentException.class, () -> bath(0.3, -1, COLD));
    assertThrows(IllegalArgumentException.class, () -> bath(0.3, 1, 274));
    assertThrows(IllegalArgumentException.class, () -> Ice.meltingTime(1, 0));
  }

  private static IceBath bath(double glycol, double ice, double iceTemperature) {
    return new IceBath(8, WARM, 3700, Glycol.ETHYLENE, glycol, ice, iceTemperature);
  }
}
