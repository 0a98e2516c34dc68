package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Day;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * Without pump heat nothing, coolant or metal, in any cell, gets colder than the coldest or hotter
 * than the hottest that has been around it: heat flows from hot to cold.
 */
@Tag("analytic")
class BoundaryFactTest {
  private static final int RIGS = 150;
  private static final double TOLERANCE = 0.01;

  /** The coldest and the hottest boundary so far. */
  private static final class Watch implements StateWalk.Visitor {
    private final String what;
    private final boolean exchanger;
    private final double inletRise;
    private double coldest = Double.POSITIVE_INFINITY;
    private double hottest = Double.NEGATIVE_INFINITY;
    private boolean started;

    Watch(String what, Rig rig) {
      this.what = what;
      this.exchanger = rig.loop().elements().stream().anyMatch(HeatExchanger.class::isInstance);
      this.inletRise = rig.airflow().inletRise();
    }

    @Override
    public void see(LoopModel model, double[] y, Moment m) {
      int temperatures = model.ledger().first();
      if (!started) {
        for (int i = 0; i < temperatures; i++) {
          widen(model.temperature(i, y));
        }
        started = true;
      }
      widen(m.inletAir);
      widen(m.blowerOutlet);
      widen(m.underhood);
      widen(m.engineCoolant);
      if (exchanger) {
        widen(m.day + inletRise);
      }
      for (int i = 0; i < temperatures; i++) {
        double t = model.temperature(i, y);
        assertTrue(
            t > coldest - TOLERANCE && t < hottest + TOLERANCE,
            what + ": state " + i + " at " + t + " K, outside " + coldest + ".." + hottest);
      }
    }

    private void widen(double boundary) {
      coldest = Math.min(coldest, boundary);
      hottest = Math.max(hottest, boundary);
    }
  }

  @Test
  void nothingLeavesItsBoundaries() throws SimulationException {
    for (long seed = 1; seed <= RIGS; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = Altered.withoutPumpHeat(random.rig(day));
      Session session = Phases.mixed(random, rig);
      Start start =
          new Start(
              OptionalDouble.empty(),
              OptionalDouble.of(random.liquid(rig, 270, 345)),
              random.between(280, 383));
      StateWalk.walk(
          new Setup(day, rig, start, session, OptionalDouble.empty()),
          new Watch("seed " + seed + " " + rig, rig));
    }
  }
}
