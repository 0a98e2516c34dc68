package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.CoupledFlow.Side;

@Tag("analytic")
class CoupledFlowTest {
  private static final double REFERENCE = 1800;
  private static final double DIFFERENCE = 120;

  @Test
  void moreFlowIsNotAlwaysBetter() {
    CoupledFlow fixed = loop(0, 0);
    double best = fixed.bestAtFixedConductance();
    double most = fixed.heat(best, DIFFERENCE);
    for (double factor : new double[] {0.5, 0.9, 1.1, 2, 10}) {
      assertTrue(fixed.heat(factor * best, DIFFERENCE) < most, "times " + factor);
    }
    // Conductance that grows with flow asks for more ...
    CoupledFlow growing = loop(0.8, 0);
    assertTrue(growing.heat(2 * best, DIFFERENCE) > growing.heat(best, DIFFERENCE));
    // ... and the pump's own heat ends that.
    CoupledFlow pumped = loop(0.8, 200);
    assertTrue(pumped.heat(4000, DIFFERENCE) > pumped.heat(2000, DIFFERENCE));
    assertTrue(pumped.heat(12_000, DIFFERENCE) < pumped.heat(4000, DIFFERENCE));
  }

  @Test
  void agreesWithTheCoupledPair() {
    CoupledFlow loop = loop(0.5, 0);
    double flow = 2500;
    LiquidCoupledPair pair =
        new LiquidCoupledPair(
            420,
            505,
            effectiveness(loop.hot(), flow),
            300,
            2000,
            effectiveness(loop.cold(), flow),
            flow);
    assertEquals(pair.heat(), loop.heat(flow, 120), 1e-9 * pair.heat());
  }

  private static double effectiveness(Side side, double flow) {
    double smaller = Math.min(side.capacityRate(), flow);
    double ratio = smaller / Math.max(side.capacityRate(), flow);
    return FlowArrangement.COUNTERFLOW.effectiveness(
        side.conductance(flow / REFERENCE) / smaller, ratio);
  }

  @Test
  void pumpHeatLeavesByTheColdGas() {
    // The balance closes: what the cold gas takes is what the hot gas and the pump give.
    CoupledFlow loop = loop(0, 500);
    double flow = 2000;
    double heat = loop.heat(flow, DIFFERENCE);
    double pump = 500 * Math.pow(flow / REFERENCE, 3);
    double intoHot = DIFFERENCE - heat / exchange(loop.hot(), flow);
    double intoCold = intoHot + heat / flow;
    assertEquals(heat + pump, exchange(loop.cold(), flow) * intoCold, 1e-9 * heat);
    assertTrue(heat < loop(0, 0).heat(flow, DIFFERENCE));
  }

  private static double exchange(Side side, double flow) {
    return effectiveness(side, flow) * Math.min(side.capacityRate(), flow);
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Side(0, 1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Side(1, 1, 1, 1.5));
    assertThrows(IllegalArgumentException.class, () -> loop(0, -1));
    assertThrows(IllegalArgumentException.class, () -> loop(0, 0).heat(0, 10));
  }

  private static CoupledFlow loop(double exponent, double pumpHeat) {
    return new CoupledFlow(
        new Side(505, 1000, 1300, exponent),
        new Side(2000, 1400, 2500, exponent),
        pumpHeat,
        REFERENCE);
  }
}
