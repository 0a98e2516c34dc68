package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.log.Log;
import soakloop.log.Signal;

/** The pressure that a scenario states for the day makes boost of a log's absolute pressure. */
@Tag("analytic")
class LogBarometerTest {
  @TempDir Path folder;

  private Scenario scenario(String day) throws Exception {
    Files.writeString(
        folder.resolve("map.csv"), "Time [s],RPM,MAP [kPa]\n0,850,38\n100,850,38\n800,850,38\n");
    String text =
        Files.readString(Path.of("scenarios/cool-morning.yaml"))
            .replaceFirst("(?m)^day:.*$", day)
            .replace("logs/cool-morning.csv", "map.csv");
    return ScenarioReader.parse("map", text, folder);
  }

  private static Log log(Scenario scenario) {
    return scenario.logged().orElseThrow().log();
  }

  @Test
  void aStatedPressureMakesBoostAndAChangedOneAnother() throws Exception {
    Scenario stated = scenario("day: {temperature: 17 degC, pressure: 100.4 kPa}");
    assertEquals(38e3 - 100.4e3, log(stated).value(Signal.BOOST, 0), 1e-6);
    Scenario higher = stated.with("day.pressure", "84 kPa");
    assertEquals(38e3 - 84e3, log(higher).value(Signal.BOOST, 0), 1e-6);
  }

  @Test
  void anAssumedPressureTellsNothingOfALog() throws Exception {
    assertFalse(log(scenario("day: {temperature: 17 degC}")).has(Signal.BOOST));
  }
}
