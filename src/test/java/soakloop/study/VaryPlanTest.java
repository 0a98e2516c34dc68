package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** What can be asked, and what is said of what cannot. */
@Tag("analytic")
class VaryPlanTest {
  private static String refused(Scenario scenario, VaryPlan.Asked asked) {
    return String.valueOf(
        assertThrows(StudyException.class, () -> VaryPlan.of(scenario, asked)).getMessage());
  }

  private static VaryPlan.Asked ranges(String... ranges) {
    return new VaryPlan.Asked(List.of(ranges), List.of(), List.of());
  }

  @Test
  void secondKeyRunsFastest() throws Exception {
    VaryPlan plan =
        CoolMorning.plan(
            CoolMorning.pulls(1), "reservoir.volume=3 L,5 L", "pump.power=40 W,60 W,80 W");
    assertEquals(6, plan.size());
    assertEquals(List.of(3.0, 80.0), plan.values(2));
    assertEquals(List.of(5.0, 40.0), plan.values(3));
    assertEquals(
        List.of(Measure.PEAK_CHARGE, Measure.END_CHARGE, Measure.COOLANT, Measure.OVER_LIMIT),
        plan.measures());
    assertEquals(327.15, plan.limit(Measure.PEAK_CHARGE).orElseThrow(), 1e-9);
    assertTrue(plan.limit(Measure.COOLANT).isEmpty());
  }

  @Test
  void limitsThatMoveWithTheKeyAreNone() throws Exception {
    VaryPlan plan =
        CoolMorning.plan(CoolMorning.pulls(1), "limits.charge-temperature=40 degC,50 degC");
    assertTrue(plan.limits().isEmpty());
  }

  @Test
  void whatCannotBeAskedIsSaid() throws Exception {
    Scenario scenario = CoolMorning.pulls(1);
    String volume = "reservoir.volume=3 L,5 L";
    assertTrue(refused(scenario, ranges()).contains("say one key"));
    assertTrue(refused(scenario, ranges(volume, volume, volume)).contains("say one key"));
    assertTrue(refused(scenario, ranges(volume, volume)).contains("varied twice"));
    String many =
        refused(scenario, ranges("reservoir.volume=3 L..5 L/400", "pump.power=1 W..9 W/251"));
    assertTrue(many.contains("100400 runs"), many);
    String unknown =
        refused(scenario, new VaryPlan.Asked(List.of(volume), List.of("peek"), List.of()));
    assertTrue(unknown.contains("`peek` is no result; there are: peak-charge, end-charge"));
    String unit =
        refused(scenario, new VaryPlan.Asked(List.of(volume), List.of(), List.of("coolant=45")));
    assertTrue(unit.contains("limit of coolant: found `45`, which needs a unit"), unit);
    String idle =
        refused(
            scenario,
            new VaryPlan.Asked(List.of(volume), List.of("coolant"), List.of("end-charge=50 degC")));
    assertTrue(idle.contains("not asked for"), idle);
  }

  @Test
  void sessionWithoutPullsGivesNothingToAskFor() throws Exception {
    Scenario none =
        ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"))
            .with("session", "[{idle: {for: 20 s}}]");
    assertTrue(refused(none, ranges("reservoir.volume=3 L,5 L")).contains("no pull"));
  }

  @Test
  void valuesThatTheReaderRefusesAreToldInItsWords() throws Exception {
    Scenario scenario = CoolMorning.pulls(1);
    ScenarioException e =
        assertThrows(
            ScenarioException.class,
            () -> CoolMorning.plan(scenario, "reservoir.volume=100 L..300 L/9"));
    assertEquals(4, e.problems().size());
    assertTrue(
        String.valueOf(e.getMessage())
            .contains("reservoir.volume: found `225 L`; allowed: 0.1 to 200 L"));
    ScenarioException many =
        assertThrows(
            ScenarioException.class,
            () -> CoolMorning.plan(scenario, "reservoir.volume=100 L..300 L/21"));
    assertTrue(
        String.valueOf(many.getMessage()).contains("and 5 more like these"), many.getMessage());
  }

  @Test
  void keysThatOnlyGoTogetherAreTakenTogether() throws Exception {
    Scenario fan =
        CoolMorning.pulls(1)
            .with("airflow", "{car-fan: 2 m/s, thermostat: {on: 40 degC, off: 36 degC}}");
    VaryPlan plan =
        CoolMorning.plan(
            fan, "airflow.thermostat.on=35 degC,45 degC", "airflow.thermostat.off=30 degC,42 degC");
    List<VaryPoint> points = new VaryRunner(plan, 1, (done, all) -> {}).points(0, 4);
    // 35 on and 42 off cannot be; the other three can, though 42 off cannot stand beside 40 on.
    assertTrue(points.get(1) instanceof VaryPoint.Hole, points.get(1).toString());
    assertEquals(3, points.stream().filter(p -> p instanceof VaryPoint.Ran).count());
  }

  @Test
  void picksKeepBothEnds() {
    assertEquals(List.of(0, 1, 2), Evenly.pick(3, 7));
    assertEquals(List.of(0, 25, 50, 74, 99), Evenly.pick(100, 5));
    assertEquals(List.of(0), Evenly.pick(1, 5));
  }
}
