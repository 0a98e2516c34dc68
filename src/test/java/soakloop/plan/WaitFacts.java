package soakloop.plan;

import java.nio.file.Path;
import java.util.List;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;

/** What the tests of waiting share. */
final class WaitFacts {
  static final int FEW = WaitPlan.FEWEST_DRAWS;
  static final Way IDLE = new Way(true, true, true, 0);
  static final Way PUMP_AND_FANS = new Way(false, true, true, 0);
  static final Way ALL_OFF = new Way(false, false, false, 0);

  private WaitFacts() {}

  /** Returns a shipped scenario. */
  static Scenario shipped(String name) throws Exception {
    return ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
  }

  /** Asks with few cars and a horizon of an hour. */
  static WaitPlan plan(Scenario scenario, List<Way> ways, double limit, double confidence) {
    return new WaitPlan(scenario, ways, limit, confidence, 3600, FEW, WaitPlan.USUAL_ICE_BELOW);
  }

  /** Asks and answers. */
  static WaitAnswer answer(Scenario scenario, List<Way> ways, double limit, double confidence)
      throws Exception {
    return new WaitRunner(plan(scenario, ways, limit, confidence).checked(), 2).answer();
  }
}
