package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Day;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Rig;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * With nothing lost to the outside and the air never colder than the core's metal, the energy
 * stored in coolant, exchanger metal and hose walls never falls: the second law lets heat into the
 * core only, and the first keeps it there.
 */
@Tag("analytic")
class StoredEnergyFactTest {
  private static final int RIGS = 150;

  /** Of the energy stored, what a step's error may hide. */
  private static final double RELATIVE = 1e-9;

  /** Energy stored in the loop at the last state seen, and whether the air was warm there. */
  private static final class Watch implements StateWalk.Visitor {
    private final String what;
    private final CoreStates core;
    private double stored = Double.NEGATIVE_INFINITY;
    private boolean warm;
    private double first = Double.NaN;
    private int steps;

    Watch(String what, Rig rig) {
      this.what = what;
      this.core = new CoreStates(rig);
    }

    @Override
    public void see(LoopModel model, double[] y, Moment m) {
      Ledger.Stored all = model.stored(y);
      double now = all.coolant() + all.exchangers() + all.walls();
      boolean warmNow = m.airMassFlow == 0 || m.coreAirIn >= core.hottestMetal(y);
      if (warm && warmNow) {
        steps++;
        double slack = RELATIVE * Math.abs(now);
        assertTrue(
            now >= stored - slack, what + ": stored energy falls by " + (stored - now) + " J");
      }
      if (Double.isNaN(first)) {
        first = now;
      }
      stored = now;
      warm = warmNow;
    }
  }

  @Test
  void storedEnergyNeverFalls() throws SimulationException {
    for (long seed = 1; seed <= RIGS; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = Altered.insulated(Altered.without(random.rig(day), HeatExchanger.class));
      Phase pull = Phases.pull(random, random.between(3, 15));
      Session session = new Session(List.of(pull, Phases.engineOff(random.between(5, 30))));
      Start start =
          new Start(
              OptionalDouble.empty(),
              OptionalDouble.of(random.liquid(rig, day.temperature() - 15, day.temperature())),
              random.between(280, 383));
      Watch watch = new Watch("seed " + seed + " " + rig, rig);
      StateWalk.walk(new Setup(day, rig, start, session, OptionalDouble.empty()), watch);
      assertTrue(watch.steps > 10, "seed " + seed + ": the premise held in few steps only");
      assertTrue(watch.stored > watch.first, "seed " + seed + ": nothing was stored");
    }
  }
}
