package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.simulate.Simulation;

/** Every line of typical hardware is read, runs, and says how sure it is and why. */
@Tag("trade")
class HardwareTest {
  /** Where a pump's curve ends: no pressure has no spread. */
  private static final double NOTHING = 0;

  static Stream<HardwarePage.Kind> kinds() {
    return HardwarePage.groups().stream().flatMap(group -> group.kinds().stream());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyLineRunsAndHasSpreadAndReason(HardwarePage.Kind kind) throws Exception {
    Scenario scenario = Scenarios.read(kind.scenario());
    assertTrue(Simulation.run(scenario.setup()).size() > 0);
    assertFalse(kind.because().isBlank());
    List<Stated> said =
        scenario.values().stream()
            .filter(v -> !v.assumed() && v.key().startsWith(kind.section() + "."))
            .filter(v -> kind.keys().contains(v.key().replaceAll("^.*\\.([a-z-]+)(\\..*)?$", "$1")))
            .filter(v -> !v.key().matches(".*\\.(face|size)\\..*|.*\\.count"))
            .filter(v -> v.estimate().value() != NOTHING)
            .toList();
    assertTrue(kind.exact() || !said.isEmpty(), kind.toString());
    for (Stated value : said) {
      assertTrue(value.estimate().spread() > 0, kind.name() + ": " + value.key());
    }
  }
}
