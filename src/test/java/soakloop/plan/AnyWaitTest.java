package soakloop.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.scenario.RandomScenario;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * What must hold of windows on random rigs: inside the limit is kept, 5 s outside either end it is
 * not, with the same cars; no window is missed where a dense scan finds one; a higher limit or a
 * lower confidence never makes the earliest wait later.
 */
@Tag("analytic")
class AnyWaitTest {
  private static final double OUTSIDE = 5;

  /** What a dense scan may find under the limit outside a window, K. */
  private static final double MISSED = 0.3;

  /** States of a car that is quickly run. */
  private static final int MOST_STATES = 150;

  @TempDir private Path folder;
  private int windows;
  private int ends;
  private int rigs;

  @BeforeEach
  void logs() throws Exception {
    RandomScenario.writeLogs(folder);
  }

  @Test
  void someRigs() throws Exception {
    check(1, 40);
    assertTrue(rigs >= 4 && windows >= 8 && ends >= 6, this::seen);
  }

  @Tag("long")
  @Test
  void manyRigs() throws Exception {
    check(1001, 1600);
    assertTrue(rigs >= 60 && windows >= 120 && ends >= 100, this::seen);
  }

  private String seen() {
    return rigs + " rigs, " + windows + " windows, " + ends + " ends";
  }

  private void check(long first, long last) throws Exception {
    for (long seed = first; seed <= last; seed++) {
      String text = RandomScenario.text(seed, 60);
      Scenario scenario = ScenarioReader.parse("random", text, folder);
      if (WaitPlan.lastPull(scenario.session().phases()) < 0 || isLong(scenario)) {
        continue;
      }
      try {
        check(scenario, seed % 2 == 0 ? WaitFacts.PUMP_AND_FANS : WaitFacts.IDLE);
        check(scenario, WaitFacts.ALL_OFF);
      } catch (Exception | AssertionError e) {
        throw new AssertionError(e + "\nseed " + seed + ":\n" + text, e);
      }
    }
  }

  /** Whether a car would take long to run: a long session, or very many cells. */
  private static boolean isLong(Scenario scenario) {
    List<Phase> phases = scenario.session().phases();
    double seconds = phases.stream().mapToDouble(Phase::duration).sum();
    if (seconds > 3600 || phases.stream().anyMatch(p -> p.kind() == Phase.Kind.REPLAY)) {
      return true;
    }
    try {
      Simulation car = Simulation.of(scenario.setup());
      Phase moment = phases.get(phases.size() - 1).lasting(1);
      Trace trace = car.runOn(car.start(), List.of(moment), Running.WAIT).trace();
      return trace.effort().states() > MOST_STATES;
    } catch (SimulationException e) {
      return true; // nor is one that cannot be
    }
  }

  private void check(Scenario scenario, Way way) throws Exception {
    WaitPlan wide = WaitFacts.plan(scenario, List.of(way), 400, 0.9);
    double[] waits = {way.startUp(), 60, 200, 600, 1500, 3600};
    Fleet fleet = Fleet.of(wide, List.of(waits), 2);
    if (fleet.size() < WaitFacts.FEW / 2) {
      return;
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < waits.length; i++) {
      double charge = new AfterWait(waits[i], fleet.scanned(0, i)).charge(0.9);
      if (Double.isFinite(charge)) {
        low = Math.min(low, charge);
        high = Math.max(high, charge);
      }
    }
    if (!(high - low > 1)) {
      return;
    }
    rigs++;
    double before = Double.POSITIVE_INFINITY;
    for (double share : new double[] {0.25, 0.6}) {
      double limit = low + share * (high - low);
      double from = earliest(windows(fleet, scenario, way, waits, limit, 0.9));
      assertTrue(from <= before + 1, limit + " K: later than with less, " + from);
      before = from;
      double bolder = earliest(windows(fleet, scenario, way, waits, limit, 0.7));
      assertTrue(bolder <= from + 1, limit + " K: bolder is later, " + bolder);
    }
  }

  private static double earliest(List<Window> found) {
    return found.isEmpty() ? Double.POSITIVE_INFINITY : found.get(0).from();
  }

  private List<Window> windows(
      Fleet fleet, Scenario scenario, Way way, double[] waits, double limit, double confidence)
      throws Exception {
    WaitPlan plan = WaitFacts.plan(scenario, List.of(way), limit, confidence);
    List<AfterWait> scan = new java.util.ArrayList<>();
    for (int i = 0; i < waits.length; i++) {
      scan.add(new AfterWait(waits[i], fleet.scanned(0, i)));
    }
    List<Window> found = new WaySearch(plan, scan, w -> fleet.go(way, w)).windows();
    for (Window window : found) {
      windows++;
      for (double share : new double[] {0, 0.4, 1}) {
        double at = window.from() + share * (window.to() - window.from());
        double over = over(fleet, way, at, limit, confidence);
        assertTrue(over <= 1e-4, window + " at " + at + ": " + over + " K over");
      }
      for (double at : new double[] {window.from() - OUTSIDE, window.to() + OUTSIDE}) {
        if (at > waits[0] && at < 3600) {
          ends++;
          double over = over(fleet, way, at, limit, confidence);
          assertTrue(over > 0, window + " at " + at + ": " + over + " K over");
        }
      }
    }
    for (double at = waits[0] + 10; at < 3600; at *= 2.1) {
      double there = at;
      boolean inside = found.stream().anyMatch(w -> w.from() <= there && there <= w.to());
      double over = over(fleet, way, at, limit, confidence);
      assertTrue(inside || over > -MISSED, found + " miss " + at + ": " + over + " K over");
    }
    return found;
  }

  private static double over(Fleet fleet, Way way, double wait, double limit, double confidence)
      throws Exception {
    return new AfterWait(wait, fleet.go(way, wait)).charge(confidence) - limit;
  }
}
