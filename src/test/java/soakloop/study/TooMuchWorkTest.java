package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Options;
import soakloop.simulate.SimulationException;

/** A run that would go on for hours gives up and says what sets its pace. */
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

  /** 0.05 L in 8 passes of 64 cells is 0.1 mL a cell, at 6.7 L/s: 0.015 ms. */
  @Test
  void milligramsOfCoolantInACellAreNamed() throws Exception {
    Scenario scenario = ScenarioReader.parse("fine", TEXT, Path.of(""));
    assertEquals(
        "idle (from 0.0 s): given up, this would take too long to compute: coolant crosses a cell of"
            + " `core` in 0.015 ms, and no step can be much longer; give it fewer cells or more"
            + " coolant, or make the session shorter",
        said(scenario, 1e6));
  }

  @Test
  void otherwiseTheStatesAreCounted() throws Exception {
    Scenario scenario =
        ScenarioReader.parse("fine", TEXT, Path.of(""))
            .with(Map.of("pump.flow", "0.5 L/min", "core.coolant", "5 L", "pump.coolant", "2 L"));
    String said = said(scenario, 1e6);
    assertEquals(
        "idle (from 0.0 s): given up, this would take too long to compute: the model has N states"
            + " for this session; give it fewer cells or layers, or make the session shorter",
        said.replaceAll("\\d+ states", "N states"));
  }
}
