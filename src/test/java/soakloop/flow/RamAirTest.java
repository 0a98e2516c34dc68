package soakloop.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class RamAirTest {
  private static final double DENSITY = 1.2;
  private static final RamAir DUCT = new RamAir(0.2, 35, 0.9);
  private static final Mover FAN = new Mover.Parabola(200, 0.8);

  @Test
  void everySourceAdds() {
    double fan = flow(0, 0, FAN);
    double road = flow(20, 0, new Mover.Off());
    double shop = flow(0, 8, new Mover.Off());
    assertTrue(flow(20, 0, FAN) > Math.max(fan, road));
    assertTrue(flow(0, 8, FAN) > Math.max(fan, shop));
    assertTrue(flow(20, 8, FAN) > flow(20, 0, FAN));
    assertTrue(flow(20, 0, FAN) < fan + road);
  }

  @Test
  void allThreeBalanceInOnePoint() {
    double flow = flow(20, 8, FAN);
    double push = DENSITY / 2 * (0.9 * 400 + 0.5 * 64) + FAN.rise(flow);
    double velocity = flow / 0.2;
    assertEquals(push, 35 * DENSITY / 2 * velocity * velocity, 1e-8 * push);
  }

  @Test
  void aFanThatCannotKeepUpIsABrake() {
    double fast = flow(80, 0, FAN);
    assertTrue(fast > 0.8, "past the fan's free flow");
    assertTrue(fast < flow(80, 0, new Mover.Off()));
  }

  @Test
  void noWindNoFlow() {
    assertEquals(0, flow(0, 0, new Mover.Off()));
  }

  @Test
  void aClosedFaceCannotBeDescribed() {
    org.junit.jupiter.api.Assertions.assertThrows(
        IllegalArgumentException.class, () -> new RamAir(0, 35, 1));
  }

  private static double flow(double road, double shop, Mover fan) {
    return DUCT.solve(new RamAir.Wind(road, shop, 0.5, fan), DENSITY).flow();
  }
}
