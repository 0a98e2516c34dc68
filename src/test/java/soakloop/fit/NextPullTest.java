package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;
import soakloop.simulate.Setup;

/** What one more pull or pass comes after. */
@Tag("regression")
class NextPullTest {
  private static List<Phase> longer(String scenario) throws Exception {
    Setup setup = ScenarioReader.read(Path.of("scenarios", scenario + ".yaml")).setup();
    return NextPull.of(setup).orElseThrow().session().phases();
  }

  @Test
  void aPullComesAfterAWaitLikeTheLast() throws Exception {
    List<Phase> phases = longer("cool-morning");
    assertEquals(
        List.of("pull 5", "wait before the next pull", "next pull", "after the next pull"),
        phases.subList(phases.size() - 4, phases.size()).stream().map(Phase::name).toList());
  }

  /** From one pass to the next a car shuts down, returns, cools, and burns its tyres again. */
  @Test
  void aPassComesAfterAllThatLeadsToIt() throws Exception {
    List<Phase> phases = longer("evening-rounds");
    int last = phases.size() - 1;
    while (!phases.get(last).name().equals("pass 3")) {
      last--;
    }
    List<Phase> after = phases.subList(last + 1, phases.size());
    assertEquals(
        List.of(
            "shutdown 2",
            "return road 2",
            "wait after pass 2",
            "wait after pass 2",
            "idle",
            "burnout 3",
            "staging 3",
            "next pass",
            "after the next pass"),
        after.stream().map(Phase::name).toList());
    assertEquals(phases.get(last).drive(), after.get(7).drive());
    assertEquals(8 * 0.45359237, after.get(3).ice().orElseThrow().mass(), 1e-9);
  }
}
