package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Day;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/** What must hold on any rig in any session: it runs to the end and its energy adds up. */
@Tag("analytic")
class AnyRigTest {
  private static final int RIGS = 150;

  @Test
  void everySessionEndsAndItsEnergyAddsUp() throws SimulationException {
    for (long seed = 1; seed <= RIGS; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = seed % 3 == 0 ? Altered.fromPulleys(random.rig(day)) : random.rig(day);
      Session session = Phases.mixed(random, rig);
      Start start =
          new Start(
              OptionalDouble.empty(),
              OptionalDouble.of(random.liquid(rig, 275, 330)),
              random.between(280, 383));
      Trace trace = Simulation.run(new Setup(day, rig, start, session, OptionalDouble.empty()));
      String what = "seed " + seed + ": " + rig;
      assertEquals(session.endTime(), trace.time(trace.size() - 1), 1e-9, what);
      double residual = trace.energy().residualFraction();
      assertTrue(residual < 1e-6, "residual " + residual + " with " + what);
      everyValueIsFinite(trace, what, rig);
    }
  }

  private static void everyValueIsFinite(Trace trace, String what, Rig rig) {
    boolean tank = rig.loop().elements().stream().anyMatch(Reservoir.class::isInstance);
    boolean exchanger = rig.loop().elements().stream().anyMatch(HeatExchanger.class::isInstance);
    boolean geometry = rig.loop().core().exchanger().conductance().geometry().isPresent();
    for (Channel channel : Channel.values()) {
      boolean absent =
          switch (channel) {
            case CORE_LOSS, BOOST_BEFORE_CORE -> !geometry;
            case RESERVOIR -> !tank;
            case ICE_LEFT -> true;
            case EXCHANGER_COOLANT_IN, EXCHANGER_COOLANT_OUT -> !exchanger;
            default -> false;
          };
      for (double value : trace.values(channel)) {
        assertEquals(!absent, Double.isFinite(value), channel + " " + value + " with " + what);
      }
    }
  }
}
