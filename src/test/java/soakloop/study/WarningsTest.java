package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Warning;

/** What is said about coolant that gets too hot. */
class WarningsTest {
  private static final Path SCENARIO =
      Path.of(System.getProperty("basedir", ""), "scenarios", "cool-morning.yaml");

  /** Water boils at 97.2 degC at 92 kPa and at 99.1 degC at 98 kPa (steam tables, from memory). */
  @Test
  @Tag("published")
  void coolantBoilsAtTheDaysPressure() throws Exception {
    assertEquals(List.of(), boiling("start.loop-coolant", "98 degC", "98 kPa"));
    assertEquals(
        List.of(Warning.Kind.COOLANT_BOILING), boiling("start.loop-coolant", "98 degC", "92 kPa"));
  }

  private static List<Warning.Kind> boiling(String key, String value, String pressure)
      throws Exception {
    Scenario scenario =
        ScenarioReader.read(SCENARIO)
            .with("day.pressure", pressure)
            .with("start.charge", "90 degC")
            .with(key, value)
            .with("session.2.pulls", "1")
            .with("session.2.pull.in", "1 s");
    return Run.of(scenario).warnings().stream()
        .map(Warning::kind)
        .filter(kind -> kind == Warning.Kind.COOLANT_BOILING)
        .toList();
  }
}
