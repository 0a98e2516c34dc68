package soakloop.scenario;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever key is set to whatever value, a scenario comes out or what is wrong is said. */
@Tag("fuzz")
class ScenarioWithFuzzTest {
  private static final List<Scenario> SCENARIOS =
      Scenarios.ALL.stream().map(Readings::good).toList();

  static Stream<Arguments> seeds() {
    return Stream.of(
        Arguments.of(0, "reservoir.volume", "8 L +/- 10 %"),
        Arguments.of(0, "session.3.steps.1.pull.curve.2.2", "6000 rpm"),
        Arguments.of(1, "session.1.replay.pulls.1.from", "12 s"),
        Arguments.of(1, "log.columns", "{time: \"Time [s]\"}"),
        Arguments.of(2, "loop", "[pump, core, return-hose]"));
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "session", "airflow.shop-fan", "start.charge", "core.conductance.", "pump.curve", "blower",
    ".1.", " degF", "[[0 s, 3000 rpm], [9 s, 6000 rpm]]", "{for: 10 s}", " +/- ", " points"
  })
  @FuzzTest
  void onlyInputErrorsComeOut(int which, String key, String value) {
    if (key == null || value == null) {
      return; // The fuzzer makes these; the null checks of the compiler keep them out elsewhere.
    }
    Scenario scenario = SCENARIOS.get(Math.floorMod(which, SCENARIOS.size()));
    Readings.check(() -> scenario.with(key, value));
  }
}
