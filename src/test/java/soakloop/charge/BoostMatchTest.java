package soakloop.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.charge.BoostMatch.Boost;
import soakloop.charge.BoostMatch.Inlet;
import soakloop.charge.BoostMatch.Regime;
import soakloop.charge.ChargePath.Cooling;

@Tag("analytic")
class BoostMatchTest {
  private static final Inlet DAY = new Inlet(100_000, 298.15, 287.05);
  private static final double SPEED = 6000 / 60.0;
  private static final double LEAKAGE = 0.05;

  @Test
  void theEngineSwallowsWhatTheBlowerDelivers() {
    BoostMatch match = match(LEAKAGE, Cooling.byCore(0.7, 313.15), 4e3);
    Boost boost = match.shut(DAY, SPEED);
    double ratio = boost.beforeCore() / DAY.pressure();
    double delivered =
        1.7e-3 * 2.35 * SPEED * (0.95 - LEAKAGE * (ratio - 1)) * 100_000 / (287.05 * 298.15);
    double swallowed = 4.1e-3 / 2 * 0.96 * SPEED * boost.afterCore() / (287.05 * boost.charge());
    assertEquals(Regime.BOOSTED, boost.regime());
    assertEquals(delivered, boost.massFlow(), 1e-10 * delivered);
    assertEquals(swallowed, boost.massFlow(), 1e-9 * swallowed);
    assertTrue(boost.beforeCore() > boost.afterCore());
  }

  @Test
  void aCoolerChargeLowersBothBoosts() {
    Boost warm = match(LEAKAGE, Cooling.heldAt(343.15), 4e3).shut(DAY, SPEED);
    Boost cool = match(LEAKAGE, Cooling.heldAt(313.15), 4e3).shut(DAY, SPEED);
    assertTrue(cool.afterCore() < warm.afterCore());
    assertTrue(cool.beforeCore() < warm.beforeCore());
    assertTrue(cool.blowerPower() < warm.blowerPower());
    double gain = cool.massFlow() / warm.massFlow() - 1;
    // Far less than the density rule's 9.6 %.
    assertTrue(gain > 0 && gain < 0.02, "gain " + gain);
    assertTrue(DensityRule.DENSITY.powerRatio(313.15, 343.15) - 1 > 0.09);
  }

  @Test
  void withoutLeakageTheAirMassDoesNotKnowTheCharge() {
    Boost warm = match(0, Cooling.heldAt(343.15), 4e3).shut(DAY, SPEED);
    Boost cool = match(0, Cooling.heldAt(313.15), 4e3).shut(DAY, SPEED);
    assertEquals(warm.massFlow(), cool.massFlow());
    assertTrue(cool.afterCore() < warm.afterCore());
  }

  @Test
  void withoutLossPressureGoesWithTemperature() {
    Boost warm = match(0, Cooling.heldAt(343.15), 0).shut(DAY, SPEED);
    Boost cool = match(0, Cooling.heldAt(313.15), 0).shut(DAY, SPEED);
    assertEquals(313.15 / 343.15, cool.afterCore() / warm.afterCore(), 1e-10);
    assertEquals(warm.beforeCore(), warm.afterCore());
  }

  @Test
  void aSmallerPulleyMovesAllOfThem() {
    BoostMatch match = match(LEAKAGE, Cooling.byCore(0.7, 313.15), 4e3);
    BlowerSize faster = match.blower().onPulleys(190, 75);
    BoostMatch changed =
        new BoostMatch(faster, match.engine(), match.path(), match.adiabaticEfficiency(), 0.95);
    Boost before = match.shut(DAY, SPEED);
    Boost after = changed.shut(DAY, SPEED);
    assertTrue(faster.driveRatio() > match.blower().driveRatio());
    assertTrue(after.massFlow() > before.massFlow());
    assertTrue(after.afterCore() > before.afterCore());
    assertTrue(after.blowerOutlet() > before.blowerOutlet());
    assertTrue(after.charge() > before.charge());
    assertTrue(after.blowerPower() > before.blowerPower());
  }

  @Test
  void pressureRatioOneIsExact() {
    // Blower and engine of the same volume flow, nothing lost, nothing cooled.
    BoostMatch equal =
        new BoostMatch(
            new BlowerSize(2e-3, 1, 1, 0),
            new Swallowing(4e-3, 1),
            new ChargePath((t, m) -> t, 0, 1, 1),
            ratio -> 0.6,
            1);
    Boost boost = equal.shut(DAY, SPEED);
    assertEquals(DAY.pressure(), boost.afterCore(), 1e-6);
    assertEquals(DAY.temperature(), boost.blowerOutlet());
    assertEquals(0, boost.blowerPower());
    assertEquals(298.15, Compression.outletOfRealAir(298.15, 1, 0.6));
    assertEquals(298.15, Compression.outletTemperature(298.15, 1, 0.6));
  }

  @Test
  void anOpenBypassIsExact() {
    Boost boost = match(LEAKAGE, (t, m) -> t, 0).open(DAY, SPEED);
    assertEquals(Regime.BYPASS_OPEN, boost.regime());
    assertEquals(DAY.pressure(), boost.beforeCore());
    assertEquals(DAY.pressure(), boost.afterCore());
    assertEquals(DAY.temperature(), boost.blowerOutlet());
    assertEquals(DAY.temperature(), boost.charge());
    assertEquals(0, boost.blowerPower());
    double swallowed = 4.1e-3 / 2 * 0.96 * SPEED * 100_000 / (287.05 * 298.15);
    assertEquals(swallowed, boost.massFlow(), 1e-12);
  }

  @Test
  void anOpenBypassStillLosesPressureInTheCore() {
    Boost boost = match(LEAKAGE, (t, m) -> t, 4e3).open(DAY, SPEED);
    assertTrue(boost.afterCore() < DAY.pressure());
    double swallowed = 4.1e-3 / 2 * 0.96 * SPEED * boost.afterCore() / (287.05 * boost.charge());
    assertEquals(swallowed, boost.massFlow(), 1e-10);
  }

  @Test
  void aSlowBlowerStarvesTheEngine() {
    BoostMatch slow =
        new BoostMatch(
            new BlowerSize(1e-3, 1, 0.95, 0.05),
            new Swallowing(4.1e-3, 0.96),
            new ChargePath((t, m) -> t, 0, 1, 1),
            ratio -> 0.6,
            1);
    Boost boost = slow.shut(DAY, SPEED);
    assertEquals(Regime.UNDERFED, boost.regime());
    assertTrue(boost.afterCore() < DAY.pressure());
    assertEquals(0, boost.blowerPower());
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new BlowerSize(0, 2, 0.9, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new BlowerSize(1e-3, 2, 1.6, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new Inlet(Double.NaN, 298, 287));
    assertThrows(IllegalArgumentException.class, () -> new Swallowing(4e-3, 0));
    assertThrows(IllegalArgumentException.class, () -> Compression.specificWork(298, 0.9, 0.6));
    assertThrows(IllegalArgumentException.class, () -> Compression.outletTemperature(298, 2, 1.01));
    BoostMatch match = match(0, Cooling.heldAt(320), 4e3);
    assertThrows(IllegalArgumentException.class, () -> match.shut(DAY, 0));
    BoostMatch huge =
        new BoostMatch(new BlowerSize(1, 10, 1, 0), match.engine(), match.path(), ratio -> 0.6, 1);
    assertThrows(IllegalArgumentException.class, () -> huge.shut(DAY, SPEED));
  }

  private static BoostMatch match(double leakage, Cooling cooling, double loss) {
    return new BoostMatch(
        new BlowerSize(1.7e-3, 2.35, 0.95, leakage),
        new Swallowing(4.1e-3, 0.96),
        new ChargePath(cooling, loss, 0.45, 2),
        ratio -> 0.62,
        0.95);
  }
}
