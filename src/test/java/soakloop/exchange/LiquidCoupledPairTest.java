package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("analytic")
class LiquidCoupledPairTest {
  @ParameterizedTest
  @ValueSource(doubles = {100, 800, 1500, 2800, 9000})
  void everyBalanceCloses(double liquid) {
    var pair = new LiquidCoupledPair(420, 800, 0.7, 300, 2800, 0.55, liquid);
    double heat = pair.heat();
    double tolerance = 1e-9 * heat;
    assertEquals(heat, liquid * (pair.hotLiquid() - pair.coldLiquid()), tolerance);
    assertEquals(heat, 800 * (420 - pair.hotOutlet()), tolerance);
    assertEquals(heat, 2800 * (pair.coldOutlet() - 300), tolerance);
    assertEquals(heat, 0.7 * Math.min(800, liquid) * (420 - pair.coldLiquid()), tolerance);
    assertEquals(heat, 0.55 * Math.min(2800, liquid) * (pair.hotLiquid() - 300), tolerance);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
  void impossibleInputIsRefused(double bad) {
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(bad, 1, 1, 300, 1, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, bad, 1, 300, 1, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, 1, bad, 300, 1, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, 1, 1, bad, 1, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, 1, 1, 300, bad, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, 1, 1, 300, 1, bad, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new LiquidCoupledPair(400, 1, 1, 300, 1, 1, bad));
  }
}
