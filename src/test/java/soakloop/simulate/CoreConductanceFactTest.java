package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * More core conductance never makes the charge hotter at the end of a short pull.
 *
 * <p>Holds from an equal start at equal flows, while the coolant stays below the air that meets it,
 * in a pull shorter than half of total capacity / (effectiveness x air capacity rate), for a core
 * that is not saturated: see {@link CoreWorth}. The last condition matters: a heavy core with many
 * transfer units in a small loop does end hotter when its conductance grows, on any grid.
 */
@Tag("analytic")
class CoreConductanceFactTest {
  private static final int RIGS = 150;
  private static final double TOLERANCE = 0.01;
  private static final double[] FACTORS = {1.05, 1.3, 2};

  /** Most transfer units on the air's side: it takes 99 % of what there is. */
  private static final double SATURATED = 5;

  private static final double LONGEST = 40;

  @Test
  void moreConductanceNeverEndsHotter() throws SimulationException {
    int kept = 0;
    for (long seed = 1; kept < RIGS; seed++) {
      Case c = new Case(seed);
      if (!c.notSaturated()) {
        continue;
      }
      Trace trace = c.run(c.rig);
      if (!coolantStaysBelowAir(trace)) {
        continue;
      }
      kept++;
      double before = charge(trace);
      for (double factor : FACTORS) {
        double after = charge(c.run(Altered.coreConductance(c.rig, factor)));
        assertTrue(
            after - before < TOLERANCE,
            "seed "
                + seed
                + ": with conductance x "
                + factor
                + " the charge ends "
                + (after - before)
                + " K hotter after "
                + c.seconds
                + " s, "
                + c.rig);
        before = after;
      }
    }
  }

  /** The exception is heat stored in the core, not an artefact of its cells. */
  @Test
  void saturatedHeavyCoreEndsHotterOnAnyGrid() throws SimulationException {
    Case c = new Case(26);
    assertTrue(!c.notSaturated(), "seed 26 was chosen for its saturated core");
    double coarse = gained(c, c.rig);
    double fine = gained(c, finer(c.rig));
    assertTrue(coarse > 1 && fine > 1, coarse + " K, and " + fine + " K on a finer grid");
  }

  private static double gained(Case c, Rig rig) throws SimulationException {
    return charge(c.run(Altered.coreConductance(rig, 2))) - charge(c.run(rig));
  }

  private static Rig finer(Rig rig) {
    return Altered.elements(
        rig,
        e -> {
          if (!(e instanceof Core core)) {
            return e;
          }
          Exchanger.Grid grid = core.exchanger().grid();
          return new Core(
              core.name(),
              core.exchanger().on(new Exchanger.Grid(3 * grid.along(), 3 * grid.depth())));
        });
  }

  private static double charge(Trace trace) {
    return trace.value(Channel.CHARGE, trace.size() - 1);
  }

  private static boolean coolantStaysBelowAir(Trace trace) {
    for (int i = trace.firstFrom(trace.pulls().get(0).start()) + 1; i < trace.size(); i++) {
      double air = trace.value(Channel.CORE_AIR_IN, i);
      if (air < trace.value(Channel.CORE_COOLANT_IN, i)
          || air < trace.value(Channel.CORE_COOLANT_OUT, i)) {
        return false;
      }
    }
    return true;
  }

  /** One rig, one start, one pull. */
  private static final class Case {
    final Rig rig;
    final double seconds;
    private final Day day;
    private final double from;
    private final double to;
    private final Start start;
    private final double airFlow;
    private final double coolantFlow;

    Case(long seed) throws SimulationException {
      RandomRigs random = new RandomRigs(seed);
      day = random.day();
      rig = random.rig(day);
      from = random.between(20, 55);
      to = from + random.between(30, 90);
      start =
          new Start(
              OptionalDouble.empty(),
              OptionalDouble.of(random.liquid(rig, day.temperature() - 10, day.temperature() + 10)),
              random.between(280, 383));
      Trace brief = run(rig, 0.5);
      airFlow = brief.value(Channel.AIR_MASS_FLOW, brief.size() - 1);
      coolantFlow = brief.value(Channel.COOLANT_FLOW, brief.size() - 1);
      double half = 0.5 * worth(2).timeScale();
      seconds = random.between(0.4, 1) * Math.min(LONGEST, half);
    }

    private CoreWorth worth(double factor) {
      return new CoreWorth(Altered.coreConductance(rig, factor), airFlow, coolantFlow);
    }

    boolean notSaturated() {
      return worth(2).airUnits() < SATURATED
          && worth(1).winsOverLosses(seconds) > 2
          && worth(2).winsOverLosses(seconds) > 2;
    }

    Trace run(Rig with) throws SimulationException {
      return run(with, seconds);
    }

    private Trace run(Rig with, double time) throws SimulationException {
      Session session = new Session(List.of(Phases.parked(), Phases.pull(from, to, time, 0)));
      return Simulation.run(new Setup(day, with, start, session, OptionalDouble.empty()));
    }
  }
}
