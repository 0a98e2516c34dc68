package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;

/** How small a pulley a core carries, with boost, power and spark beside it. */
class VaryPulleyTest {
  private static final String RANGE = "blower.pulleys.blower=66 mm..90 mm/3";

  private static Scenario scenario;
  private static Variation variation;

  @BeforeAll
  static void vary() throws Exception {
    scenario =
        ScenarioReader.read(Path.of("scenarios/small-pulley.yaml")).with("session.2.pulls", "3");
    List<String> all = List.of(Measure.keys().split(", "));
    variation =
        CoolMorning.run(
            VaryPlan.of(scenario, new VaryPlan.Asked(List.of(RANGE), all, List.of())), 2);
  }

  private static double at(Measure measure, int index) {
    return variation.value(index, measure);
  }

  /** One question to the shipped scenario: its crossing is a pulley that the core just carries. */
  @Test
  void theSmallestPulleyIsACrossing() throws Exception {
    LimitLine line =
        variation.lines().stream()
            .filter(l -> l.measure() == Measure.PEAK_CHARGE)
            .findFirst()
            .orElseThrow();
    assertEquals(1, line.crossings().size());
    LimitLine.Crossing crossing = line.crossings().get(0);
    assertTrue(crossing.found());
    assertTrue(crossing.over() < crossing.under(), "smaller is hotter");
    double limit = scenario.limits().chargeTemperature().orElseThrow();
    assertTrue(peak(crossing.over() - 1) > limit);
    assertTrue(peak(crossing.under() + 1) < limit);
  }

  private static double peak(double pulley) throws Exception {
    Outcome outcome = Run.of(scenario.with("blower.pulleys.blower", pulley + " mm"));
    return Measure.PEAK_CHARGE.of(outcome);
  }

  /** A smaller pulley turns the blower faster: common practice, no source. */
  @Test
  @Tag("trade")
  void smallerPulleyMakesMoreOfAll() {
    for (Measure measure :
        List.of(
            Measure.PEAK_CHARGE,
            Measure.BOOST,
            Measure.BOOST_BEFORE_CORE,
            Measure.CORE_LOSS,
            Measure.BLOWER_POWER,
            Measure.CRANK_POWER,
            Measure.SPARK_OUT)) {
      assertTrue(at(measure, 0) > at(measure, 1), measure.key());
      assertTrue(at(measure, 1) > at(measure, 2), measure.key());
    }
  }

  /** But for how they are sampled. */
  @Test
  void resultsAreThoseOfARun() throws Exception {
    Outcome run = Run.of(scenario.with("blower.pulleys.blower", "66 mm"));
    PullResult last = run.pulls().get(2);
    PullPower power = PullPower.of(run).get(2);
    double time = PullPower.instant(last);
    assertEquals(last.boostPeak(), at(Measure.BOOST, 0), 1);
    assertEquals(run.trace().at(Channel.BLOWER_POWER, time), at(Measure.BLOWER_POWER, 0), 30);
    assertEquals(power.crank().orElseThrow().wheels(), at(Measure.WHEEL_POWER, 0), 300);
    assertEquals(power.spark().orElseThrow().out(), at(Measure.SPARK_OUT, 0), 1e-3);
    double before = last.chargeLoss().orElseThrow().boostBefore();
    assertEquals(before, at(Measure.BOOST_BEFORE_CORE, 0), 1);
    assertTrue(before - at(Measure.CORE_LOSS, 0) <= at(Measure.BOOST, 0) + 1);
  }

  @Test
  void boostFromPulleysIsToldUnasked() throws Exception {
    assertTrue(CoolMorning.plan(scenario, RANGE).measures().contains(Measure.BOOST));
    VaryPlan stated = CoolMorning.plan(CoolMorning.pulls(2), "reservoir.volume=4 L..9 L/2");
    assertTrue(!stated.measures().contains(Measure.BOOST));
  }

  @Test
  void limitOfBoostIsACrossingToo() throws Exception {
    double middle = 0.5 * (at(Measure.BOOST, 0) + at(Measure.BOOST, 1));
    VaryPlan plan =
        VaryPlan.of(
            scenario,
            new VaryPlan.Asked(
                List.of(RANGE), List.of("boost"), List.of("boost=" + middle / 1000 + " kPa")));
    LimitLine.Crossing crossing = CoolMorning.run(plan, 1).lines().get(0).crossings().get(0);
    assertTrue(crossing.found() && crossing.under() > 66 && crossing.under() < 78);
  }

  /** What a scenario does not model is said with what it lacks. */
  @Test
  void whatIsNotModelledIsRefused() throws Exception {
    Scenario plain = CoolMorning.pulls(2);
    String[][] cases = {
      {"boost-before-core", "described by geometry"},
      {"core-loss", "described by geometry"},
      {"crank-power", "section power"},
      {"wheel-power", "section power"},
      {"spark-out", "spark.taken-out"},
      {"horsepower", "is no result"},
    };
    for (String[] each : cases) {
      StudyException refused =
          assertThrows(
              StudyException.class,
              () ->
                  VaryPlan.of(
                      plain,
                      new VaryPlan.Asked(
                          List.of("reservoir.volume=4 L..9 L/2"), List.of(each[0]), List.of())));
      String message = String.valueOf(refused.getMessage());
      assertTrue(message.startsWith(each[0]) || message.contains(each[0]), message);
      assertTrue(message.contains(each[1]), message);
    }
  }
}
