package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Warning;

/** Pulls of a log that do not lie where the session's do, by shifts that are known. */
@Tag("analytic")
class PullsApartTest {
  private static List<String> said(Map<String, String> changes) throws Exception {
    Scenario scenario =
        ScenarioReader.read(Path.of("scenarios", "cool-morning.yaml")).with(changes);
    return Run.of(scenario).warnings().stream()
        .filter(w -> w.kind() == Warning.Kind.PULLS_APART)
        .map(Warning::message)
        .toList();
  }

  @Test
  void pullsThatLieTogetherAreNotMentioned() throws Exception {
    assertEquals(List.of(), said(Map.of("log.starts-at", "0 s")));
    assertEquals(List.of(), said(Map.of("log.starts-at", "0.7 s")));
  }

  /** 20 s of idle made 16 s: all logged pulls come 4 s later; the advice cures it. */
  @Test
  void oneShiftForAllIsToldWithItsCure() throws Exception {
    String message = said(Map.of("session.1.idle.for", "16 s")).get(0);
    assertTrue(message.contains("4.0 s later") || message.contains("4.1 s later"), message);
    String cure = message.replaceFirst("(?s).*`starts-at: ([0-9.]+ s)`.*", "$1");
    assertEquals(4, Double.parseDouble(cure.replace(" s", "")), 0.3);
    assertEquals(List.of(), said(Map.of("session.1.idle.for", "16 s", "log.starts-at", cure)));
  }

  /** Waits of 145 s for 150 s: each pull comes 5 s more late than the one before. */
  @Test
  void growingShiftsAreToldPullByPull() throws Exception {
    String message = said(Map.of("session.2.wait.for", "145 s")).get(0);
    assertTrue(message.contains("pull 2 5") && message.contains("pull 4 1"), message);
    assertTrue(message.contains("and 1 more"), message);
  }

  @Test
  void otherNumbersOfPullsAreTold() throws Exception {
    String message = said(Map.of("session.2.pulls", "3", "session.2.wait.for", "310 s")).get(0);
    assertTrue(message.contains("5 pulls where the session has 3"), message);
  }
}
