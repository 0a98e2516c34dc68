package soakloop.report;

import java.nio.file.Path;
import java.util.List;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;
import soakloop.study.VaryRunner;

/** Answers to questions about the shipped dyno morning with two of its pulls. */
final class SampleVariation {
  private SampleVariation() {}

  static Variation of(List<String> limits, String... ranges) throws Exception {
    Scenario scenario =
        ScenarioReader.read(Path.of("scenarios/cool-morning.yaml")).with("session.2.pulls", "2");
    VaryPlan plan = VaryPlan.of(scenario, new VaryPlan.Asked(List.of(ranges), List.of(), limits));
    VaryRunner runner = new VaryRunner(plan, 2, (done, all) -> {});
    List<VaryPoint> points = runner.points(0, plan.size());
    return runner.variation(points);
  }

  static VaryWords words(Variation variation) {
    return new VaryWords(variation.plan(), new Display(variation.plan().scenario().units(), true));
  }
}
