package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Warning;

/** A blower that does not fit the boost is said. */
class AirBalanceTest {
  private static List<Warning> warnings(String driveRatio) throws Exception {
    Scenario scenario =
        ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"))
            .with("blower.drive-ratio", driveRatio);
    return about(scenario);
  }

  @Test
  void aBlowerThatFitsIsNotMentioned() throws Exception {
    assertEquals(List.of(), warnings("2.35"));
  }

  @Test
  void boostFromPulleysThatNobodyDrivesIsToo() throws Exception {
    Scenario shipped =
        ScenarioReader.read(Path.of("scenarios/small-pulley.yaml")).with("session.2.pulls", "1");
    assertEquals(List.of(), about(shipped));
    String much = about(shipped.with("blower.pulleys.blower", "40 mm")).get(0).message();
    assertTrue(much.contains("make a boost of"), much);
    String none = about(shipped.with("blower.pulleys.blower", "220 mm")).get(0).message();
    assertTrue(none.contains("make a boost of -"), none);
  }

  private static List<Warning> about(Scenario scenario) throws Exception {
    return Run.of(scenario).warnings().stream()
        .filter(w -> w.kind() == Warning.Kind.AIR_AGAINST_BOOST)
        .toList();
  }

  @Test
  void aBlowerFarTooFastOrTooSlowIs() throws Exception {
    assertEquals(1, warnings("6").size());
    String slow = warnings("1").get(0).message();
    assertTrue(slow.contains("0.4 times") || slow.contains("0.5 times"), slow);
    assertTrue(slow.contains("drive ratio"), slow);
  }
}
