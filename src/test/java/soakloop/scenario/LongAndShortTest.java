package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import soakloop.rig.Hose;
import soakloop.rig.LoopElement;
import soakloop.simulate.Simulation;
import soakloop.simulate.Trace;

/** Very long sessions and very short hoses. */
class LongAndShortTest {
  private static Scenario shipped() throws ScenarioException {
    return ScenarioReader.read(Path.of("scenarios/two-runs.yaml"));
  }

  private static int cells(Scenario scenario) {
    for (LoopElement element : scenario.rig().loop().elements()) {
      if (element instanceof Hose hose && hose.name().equals("supply-hose")) {
        return hose.cells();
      }
    }
    throw new IllegalStateException("no supply-hose");
  }

  @Test
  void aShortHoseHasFewerCellsUnlessTheyAreStated() throws ScenarioException {
    assertEquals(3, cells(shipped()));
    Scenario coupler = shipped().with("supply-hose.length", "100 mm");
    assertEquals(1, cells(coupler));
    assertEquals(6, cells(coupler.with("supply-hose.cells", "6")));
  }

  @Test
  void aSessionLastsAWeekAtTheMost() {
    ScenarioException wrong =
        assertThrows(
            ScenarioException.class,
            () ->
                shipped().with("session.1.steps.7.wait.for", "48 h").with("session.1.repeat", "4"));
    String message = wrong.problems().get(0).toString();
    assertTrue(message.contains("session: lasts 19") && message.contains("168 h"), message);
  }

  @Test
  void aDayIsSampledThinly() throws Exception {
    Trace trace = Simulation.run(shipped().with("session.1.steps.7.wait.for", "24 h").setup());
    assertTrue(trace.size() < 110_000, trace.size() + " samples");
    assertTrue(trace.energy().residualFraction() < 1e-6);
  }
}
