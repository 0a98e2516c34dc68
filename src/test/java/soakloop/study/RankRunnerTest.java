package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.quantity.Dimension;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.scenario.Stated;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.Trace;

/** Ranks against single runs of the same scenario, changed by hand. */
class RankRunnerTest {
  /** A study samples a trace more thinly than a run does; K. */
  private static final double SAMPLED = 2e-3;

  /** One short pull; boost is a curve with spreads, humidity's interval passes 100 %. */
  private static final String TEXT =
      """
      title: An invented rig
      day: {temperature: 20 degC, humidity: 90 % +/- 30 points}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.3}
      boost: [[2500 rpm, 80 kPa +/- 5 kPa], [6500 rpm, 90 kPa +/- 8 kPa]]
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [reservoir, pump, core, heat-exchanger]
      heat-exchanger: {face: {width: 600 mm, height: 300 mm}}
      coolant: {glycol: ethylene, by-volume: 30 %}
      start: {charge: 30 degC}
      session:
        - pull: {from: 2600 rpm, to: 6000 rpm, in: 6 s}
        - wait: {for: 10 s}
      """;

  @TempDir private Path folder;

  private Scenario scenario(String text) throws IOException, ScenarioException {
    Path file = folder.resolve("rig.yaml");
    Files.writeString(file, text);
    return ScenarioReader.read(file);
  }

  private static Ranking rank(Scenario scenario, int top, int threads) throws Exception {
    RankPlan plan = RankPlan.of(scenario, "peak-charge", top);
    return new RankRunner(plan, threads, (done, all) -> {}).ranking();
  }

  private static Moved find(Ranking ranking, String key) {
    return ranking.keys().stream()
        .filter(m -> m.key().key().equals(key))
        .findFirst()
        .orElseThrow(() -> new AssertionError(key + " is not ranked"));
  }

  private static double peak(Scenario scenario) throws Exception {
    Trace trace = Simulation.run(scenario.setup().withoutLimit(), Options.STUDY);
    return Measure.PEAK_CHARGE.of(
        new Measured(
            scenario, trace, PullResults.of(trace, OptionalDouble.empty(), Optional.empty())));
  }

  @Test
  void endsAreThoseOfDirectRuns() throws Exception {
    Scenario scenario = scenario(TEXT);
    Ranking ranking = rank(scenario, 0, 2);
    double own = peak(scenario);
    assertEquals(own, ranking.own());
    assertEquals(Measure.PEAK_CHARGE.of(Run.of(scenario)), own, SAMPLED);
    // Both from the key table: 62 % +/- 8 points and 3 s +/- 60 %.
    Moved blower = find(ranking, "blower.adiabatic-efficiency");
    double at54 = peak(scenario.with("blower.adiabatic-efficiency", "54 %")) - own;
    double at70 = peak(scenario.with("blower.adiabatic-efficiency", "70 %")) - own;
    assertEquals(at54, blower.low().change().orElseThrow(), 1e-6);
    assertEquals(at70, blower.high().change().orElseThrow(), 1e-6);
    assertEquals(at54 - at70, blower.swing(), 2e-6);
    Moved sensor = find(ranking, "sensor.time-constant");
    double slow = peak(scenario.with("sensor.time-constant", "4.8 s")) - own;
    assertEquals(slow, sensor.high().change().orElseThrow(), 1e-6);
    assertTrue(blower.key().assumed());
  }

  /** Over a small spread a bar is the slope: a central difference with another step agrees. */
  @Test
  void barsOverSmallSpreadsAreCentralDifferences() throws Exception {
    Scenario scenario =
        scenario(TEXT)
            .with(
                Map.of(
                    // Dry enough that no water condenses: where it begins the peak has a kink.
                    "day.humidity", "30 % +/- 5 points",
                    "blower.adiabatic-efficiency", "62 % +/- 1 point",
                    "sensor.time-constant", "3 s +/- 2 %",
                    "core.metal-per-volume", "1.0 kg/L +/- 2 %"));
    Ranking ranking = rank(scenario, 0, 2);
    Map<String, List<String>> steps =
        Map.of(
            "blower.adiabatic-efficiency", List.of("61.7 %", "62.3 %"),
            "sensor.time-constant", List.of("2.982 s", "3.018 s"),
            "core.metal-per-volume", List.of("0.994 kg/L", "1.006 kg/L"));
    for (Map.Entry<String, List<String>> step : steps.entrySet()) {
      // Each step is 0.3 of the spread.
      double low = peak(scenario.with(step.getKey(), step.getValue().get(0)));
      double high = peak(scenario.with(step.getKey(), step.getValue().get(1)));
      Moved bar = find(ranking, step.getKey());
      double moved = bar.high().change().orElseThrow() - bar.low().change().orElseThrow();
      double wanted = (high - low) / 0.3;
      assertEquals(wanted, moved, 0.02 * Math.abs(wanted), step.getKey());
      assertTrue(Math.abs(wanted) > 1e-3, step.getKey());
    }
  }

  @Test
  void largestSwingComesFirst() throws Exception {
    List<Moved> keys = rank(scenario(TEXT), 0, 2).keys();
    for (int i = 1; i < keys.size(); i++) {
      assertTrue(keys.get(i).swing() <= keys.get(i - 1).swing());
    }
    assertTrue(keys.get(0).swing() > 1, "something moves the peak by more than 1 K");
  }

  @Test
  void pointsOfACurveMoveTogether() throws Exception {
    Scenario scenario = scenario(TEXT);
    Moved boost = find(rank(scenario, 0, 2), "boost");
    assertEquals(2, boost.key().parts().size());
    assertFalse(boost.key().assumed());
    Scenario high = scenario.with(Map.of("boost.1.2", "85 kPa", "boost.2.2", "98 kPa"));
    assertEquals(peak(high) - peak(scenario), boost.high().change().orElseThrow(), 1e-6);
  }

  @Test
  void intervalsEndWhereAKeyEnds() throws Exception {
    UncertainKey humidity = find(rank(scenario(TEXT), 0, 2), "day.humidity").key();
    assertTrue(humidity.clipped());
    assertEquals(0.6, humidity.parts().get(0).low(), 1e-12);
    assertEquals(1, humidity.parts().get(0).high());
  }

  @Test
  void threadsChangeNothing() throws Exception {
    Scenario scenario = scenario(TEXT);
    Ranking one = rank(scenario, 2, 1);
    assertEquals(one, new RankRunner(one.plan(), 3, (done, all) -> {}).ranking());
    assertEquals(2, one.together().size());
    assertEquals(RankPlan.POINTS * 4, one.design().runs());
    assertEquals(RankPlan.POINTS, one.design().points());
  }

  /** Two keys that share a thermal resistance, whose sum may not pass all of it. */
  @Test
  void failedRunsAreTold() throws Exception {
    String text =
        TEXT.replace(
            "thickness: 55 mm}",
            "thickness: 55 mm}, conductance: {air-side-share: 80 % +/- 14 points,"
                + " wall-share: 15 % +/- 10 points}");
    Ranking ranking = rank(scenario(text), 0, 2);
    Moved air = find(ranking, "core.conductance.air-side-share");
    assertTrue(air.high() instanceof Moved.Failed, () -> air.high().toString());
    assertTrue(air.low() instanceof Moved.Ran);
    assertTrue(ranking.broken().contains(air));
  }

  @Test
  void questionsThatCannotBeAsked() throws Exception {
    Scenario scenario = scenario(TEXT);
    assertThrows(StudyException.class, () -> RankPlan.of(scenario, "lap-time", 8));
    assertThrows(StudyException.class, () -> RankPlan.of(scenario, "over-limit", 8));
    assertThrows(StudyException.class, () -> RankPlan.of(scenario, "peak-charge", -1));
    assertThrows(StudyException.class, () -> RankPlan.of(scenario, "peak-charge", 101));
  }

  @Test
  void nothingToRankWithoutSpreads() throws Exception {
    Map<String, String> exact = new LinkedHashMap<>();
    Scenario scenario = scenario(TEXT);
    for (Stated stated : scenario.values()) {
      if (stated.estimate().spread() > 0) {
        double si = stated.estimate().value();
        exact.put(
            stated.key(),
            stated.dimension() == Dimension.FRACTION
                ? 100 * si + " %"
                : si + " " + stated.dimension().si().symbol());
      }
    }
    assertTrue(exact.size() > 20, "the defaults of this rig carry spreads");
    Scenario known = scenario.with(exact);
    StudyException e =
        assertThrows(StudyException.class, () -> RankPlan.of(known, "peak-charge", 8));
    assertTrue(String.valueOf(e.getMessage()).contains("no key of the scenario has a spread"));
  }
}
