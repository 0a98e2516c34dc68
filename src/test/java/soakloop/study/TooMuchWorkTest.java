package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Options;
import soakloop.simulate.SimulationException;

/** A run that would go on for hours gives up and says why. */
@Tag("analytic")
class TooMuchWorkTest {
  private static final String TEXT =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.3}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        coolant: 0.05 L
        passes: {count: 8}
        cells: {along: 64, depth: 8}
      loop: [reservoir, pump, core]
      pump: {flow: 400 L/min}
      coolant: {glycol: none}
      session: [{idle: {for: 24 h}}]
      """;

  private static String said(Scenario scenario, double work) {
    SimulationException e =
        assertThrows(
            SimulationException.class, () -> Run.of(scenario, Options.DEFAULT.withMostWork(work)));
    assertFalse(e.isInputWrong());
    return String.valueOf(e.getMessage());
  }

  @Test
  void saysHowLargeTheModelIs() throws Exception {
    Scenario scenario = ScenarioReader.parse("fine", TEXT, Path.of(""));
    assertEquals(
        "idle (from 0.0 s): given up, this would take too long to compute with N states; give the loop"
            + " fewer cells or layers, or make the session shorter",
        said(scenario, 1e5).replaceAll("\\d+ states", "N states"));
  }

  /** 64 x 64 cells in each of 8 passes, each with coolant and wall, are 65,536. */
  @Test
  void tooManyCellsAreRefused() throws Exception {
    Scenario scenario =
        ScenarioReader.parse("fine", TEXT, Path.of(""))
            .with("core.passes", "{count: 8, arranged: face}")
            .with("core.cells", "{along: 64, depth: 64}");
    SimulationException e = assertThrows(SimulationException.class, () -> Run.of(scenario));
    assertTrue(e.isInputWrong());
    assertEquals(
        "loop: its cells and layers make 65N states; allowed: 20000; give exchangers and hoses fewer",
        String.valueOf(e.getMessage()).replaceAll("65\\d{3}", "65N"));
  }
}
