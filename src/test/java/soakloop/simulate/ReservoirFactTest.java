package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Day;
import soakloop.rig.LoopElement;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * From ambient everywhere, in one pull without cooling before it, a larger mixed reservoir never
 * raises the peak of the coolant entering the core, in the pull or after it.
 *
 * <p>Wherever it sits, the reservoir lies on the way from the core's outlet back to its inlet,
 * once. What it passes on is an average of what came before, over a longer past the larger it is,
 * and what came before its first warm coolant was at ambient: so at any instant of a rising inlet
 * the larger one passes on less. Tested for every order of the loop.
 */
@Tag("analytic")
class ReservoirFactTest {
  private static final int RIGS = 150;
  private static final double TOLERANCE = 0.01;
  private static final double[] FACTORS = {1.3, 2, 5};

  /** Highest temperature of the coolant entering the core, in the pull and in all, K. */
  private record Peaks(double inPull, double inAll) {}

  @Test
  void largerReservoirNeverRaisesThePeak() throws SimulationException {
    int kept = 0;
    for (long seed = 1; kept < RIGS; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = Altered.withoutInletRise(random.rig(day));
      Optional<LoopElement> tank =
          rig.loop().elements().stream().filter(Reservoir.class::isInstance).findFirst();
      if (tank.isEmpty()) {
        continue;
      }
      kept++;
      Phase pull = Phases.pull(random, random.between(3, 15));
      Phase after = random.chance(0.5) ? Phases.idle(rig, 60) : Phases.engineOff(60);
      Session session = new Session(List.of(pull, after));
      Peaks before = peaks(day, rig, session);
      assertTrue(before.inAll() > day.temperature(), "seed " + seed + ": nothing got warm");
      for (double factor : FACTORS) {
        Peaks more = peaks(day, Altered.reservoir(rig, tank.get().name(), factor), session);
        String what = "seed " + seed + ", reservoir x " + factor + ": " + before + " to " + more;
        assertTrue(more.inPull() < before.inPull() + TOLERANCE, what + " in the pull, " + rig);
        assertTrue(more.inAll() < before.inAll() + TOLERANCE, what + " in all, " + rig);
        before = more;
      }
    }
  }

  private static Peaks peaks(Day drawn, Rig rig, Session session) throws SimulationException {
    double ambient = Math.max(drawn.temperature(), rig.coolant().freezingTemperature());
    Day day = new Day(ambient, drawn.pressure(), drawn.humidity());
    Start start = new Start(OptionalDouble.empty(), OptionalDouble.of(ambient), ambient);
    Trace trace = Simulation.run(new Setup(day, rig, start, session, OptionalDouble.empty()));
    double inPull = 0;
    double inAll = 0;
    double end = trace.pulls().get(0).end();
    for (int i = 0; i < trace.size(); i++) {
      double t = trace.value(Channel.CORE_COOLANT_IN, i);
      inAll = Math.max(inAll, t);
      if (trace.time(i) <= end) {
        inPull = Math.max(inPull, t);
      }
    }
    return new Peaks(inPull, inAll);
  }
}
