package soakloop.study;

import java.nio.file.Path;
import java.util.List;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** The shipped dyno morning, cut short, and questions to it. */
final class CoolMorning {
  private CoolMorning() {}

  /** Returns the scenario with so many of its pulls. */
  static Scenario pulls(int count) throws ScenarioException {
    return ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"))
        .with("session.2.pulls", String.valueOf(count));
  }

  /** Asks for all results. */
  static VaryPlan plan(Scenario scenario, String... ranges)
      throws StudyException, ScenarioException {
    return limited(scenario, List.of(), ranges);
  }

  /** Asks for all results with limits of the question's own. */
  static VaryPlan limited(Scenario scenario, List<String> limits, String... ranges)
      throws StudyException, ScenarioException {
    return VaryPlan.of(scenario, new VaryPlan.Asked(List.of(ranges), List.of(), limits));
  }

  /** Runs a plan on some threads. */
  static Variation run(VaryPlan plan, int threads) throws Exception {
    VaryRunner runner = new VaryRunner(plan, threads, (done, all) -> {});
    return runner.variation(runner.points(0, plan.size()));
  }
}
