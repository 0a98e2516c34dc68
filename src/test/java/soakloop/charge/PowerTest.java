package soakloop.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PowerTest {
  private static final double WARM = 273.15 + 25;

  @ParameterizedTest
  @EnumSource(AmbientCorrection.class)
  void thinAirIsCorrectedUpwards(AmbientCorrection rule) {
    assertTrue(rule.factor(97_000, WARM) > 1);
    assertTrue(rule.factor(99_000, WARM + 8) > 1);
    assertTrue(rule.factor(101_000, WARM - 8) < 1);
  }

  @ParameterizedTest
  @EnumSource(AmbientCorrection.class)
  void outsideItsLimitsItRefuses(AmbientCorrection rule) {
    assertInstanceOf(AmbientCorrection.Applied.class, rule.correct(97_000, WARM, false));
    assertInstanceOf(AmbientCorrection.Applied.class, rule.correct(99_000, 273.15 + 35, false));
    assertInstanceOf(AmbientCorrection.Refused.class, rule.correct(99_000, 273.15 + 35.1, false));
    assertInstanceOf(AmbientCorrection.Refused.class, rule.correct(99_000, 273.15 + 14.9, false));
    assertInstanceOf(AmbientCorrection.Refused.class, rule.correct(85_000, 273.15 + 15, false));
    assertInstanceOf(AmbientCorrection.Refused.class, rule.correct(97_000, WARM, true));
    assertThrows(IllegalArgumentException.class, () -> rule.factor(0, WARM));
    assertThrows(IllegalArgumentException.class, () -> rule.correct(99_000, Double.NaN, false));
  }

  @Test
  void sparkTakenOutCountsFromWhereItStood() {
    SparkLoss loss = SparkLoss.USUAL;
    assertEquals(loss.share(4), loss.shareOf(0, 4), 1e-15);
    assertTrue(loss.shareOf(5, 4) > loss.share(4));
    assertEquals(0, loss.share(0));
    assertEquals(1, loss.share(1000));
    assertThrows(IllegalArgumentException.class, () -> loss.share(-1));
    assertThrows(IllegalArgumentException.class, () -> loss.shareOf(1000, 1));
  }

  @ParameterizedTest
  @EnumSource(DensityRule.class)
  void aDensityRuleSaysWhereItHolds(DensityRule rule) {
    assertTrue(rule.label().contains("fixed manifold pressure"));
    assertEquals(1, rule.powerRatio(300, 300));
    assertTrue(rule.powerRatio(320, 300) < 1);
  }

  @Test
  void innerCompressionHelpsNearItsRatio() {
    BuiltInRatio inner = new BuiltInRatio(1.5);
    assertEquals(1, inner.efficiencyLimit(1.5), 1e-15);
    assertTrue(inner.efficiencyLimit(2.4) > BuiltInRatio.NONE.efficiencyLimit(2.4));
    // Far below its built-in ratio it compresses in vain.
    assertTrue(inner.efficiencyLimit(1.1) < BuiltInRatio.NONE.efficiencyLimit(1.1));
    assertTrue(BuiltInRatio.NONE.efficiencyLimit(1.000_001) > 0.999_99);
    assertThrows(IllegalArgumentException.class, () -> inner.efficiencyLimit(1));
    assertThrows(IllegalArgumentException.class, () -> new BuiltInRatio(0.9));
  }

  @Test
  void efficiencyFromTemperaturesInvertsTheOutlet() {
    double outlet = Compression.outletTemperature(298.15, 2.1, 0.63);
    assertEquals(0.63, Compression.efficiency(298.15, outlet, 2.1), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> Compression.efficiency(300, 300, 2));
  }
}
