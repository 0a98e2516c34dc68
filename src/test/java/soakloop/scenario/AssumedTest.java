package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Each default that is used is listed, once; none that is not used. */
@Tag("regression")
class AssumedTest {
  private static final String WITH_EXCHANGER =
      Scenarios.SHORT.replace("[pump, core]", "[pump, core, heat-exchanger]")
          + "heat-exchanger: {face: {width: 660 mm, height: 300 mm}}\n";

  private static List<String> assumed(String text) throws ScenarioException {
    List<String> keys = Scenarios.read(text).assumed().stream().map(Assumed::key).toList();
    assertEquals(keys.size(), new HashSet<>(keys).size(), keys.toString());
    return keys;
  }

  private static List<String> under(String section, String text) throws ScenarioException {
    return assumed(text).stream().filter(key -> key.startsWith(section + ".")).toList();
  }

  @Test
  void airflowCountsOnlyWhereThereIsSomethingToBlowOn() throws ScenarioException {
    assertEquals(List.of(), under("airflow", Scenarios.SHORT));
    assertEquals(
        List.of(
            "airflow.shop-fan",
            "airflow.car-fan",
            "airflow.road-share",
            "airflow.still-air",
            "airflow.inlet-rise"),
        under("airflow", WITH_EXCHANGER));
  }

  @Test
  void ofTheFansWordsOnlyTheOneThatIsUsed() throws ScenarioException {
    List<String> weak = under("airflow", WITH_EXCHANGER + "airflow: {shop-fan: weak}");
    assertTrue(weak.contains("airflow.weak"));
    assertFalse(weak.contains("airflow.strong"));
    assertFalse(weak.contains("airflow.shop-fan"));
    List<String> strong = under("airflow", WITH_EXCHANGER + "airflow: {shop-fan: strong}");
    assertTrue(strong.contains("airflow.strong"));
    assertFalse(strong.contains("airflow.weak"));
    List<String> speed = under("airflow", WITH_EXCHANGER + "airflow: {shop-fan: 3 m/s}");
    assertFalse(speed.contains("airflow.weak") || speed.contains("airflow.strong"));
    List<String> said = under("airflow", WITH_EXCHANGER + "airflow: {shop-fan: weak, weak: 1 m/s}");
    assertFalse(said.contains("airflow.weak"));
  }

  @Test
  void sizesCountOnlyWhereSomethingFollowsFromThem() throws ScenarioException {
    assertEquals(
        List.of(
            "front-heat-exchanger.conductance.coolant-flow",
            "front-heat-exchanger.conductance.air-side-share",
            "front-heat-exchanger.conductance.wall-share",
            "front-heat-exchanger.conductance.air-exponent",
            "front-heat-exchanger.conductance.coolant-exponent",
            "front-heat-exchanger.conductance.still-share",
            "front-heat-exchanger.passes.count",
            "front-heat-exchanger.passes.arranged"),
        under("front-heat-exchanger", Scenarios.STATED));
    assertTrue(assumed(WITH_EXCHANGER).contains("heat-exchanger.thickness"));
  }

  @Test
  void aPumpsFlowIsNotAssumedBesideItsCurve() throws ScenarioException {
    assertFalse(assumed(Scenarios.BY_SIZE).contains("pump.flow"));
    assertTrue(assumed(Scenarios.SHORT).contains("pump.flow"));
    assertEquals(List.of(), under("plumbing", Scenarios.SHORT));
  }

  @Test
  void whatGoesWithoutSayingIsNotListed() throws ScenarioException {
    for (String key : assumed(Scenarios.SHORT)) {
      assertFalse(key.startsWith("session.") || key.equals("units") || key.contains("cells"), key);
    }
  }

  @Test
  void eachSaysWhy() throws ScenarioException {
    for (Assumed assumed : Scenarios.read(Scenarios.SHORT).assumed()) {
      assertFalse(assumed.reason().isBlank() || assumed.value().isBlank(), assumed.key());
    }
  }

  @Test
  void whatIsSaidIsNotAssumed() throws ScenarioException {
    assertEquals(List.of(), assumed(Scenarios.BY_SIZE));
  }

  /** Factors: 1 kg = 2.20462 lb, 1 K = 1.8 degF, 1 s is 1 s everywhere. */
  @Test
  void defaultsAreShownInTheUnitsOfTheResults() throws ScenarioException {
    Scenario metric = Scenarios.read(Scenarios.SHORT).with("units", "metric");
    assertEquals(metric.assumed(), metric.assumedAsShown());
    Scenario us = metric.with("units", "us");
    assertEquals("13.2 lb, +/- 40 %", shown(us, "plenum.mass"));
    assertEquals("9 degF, +/- 7.2 degF", shown(us, "blower.inlet-pick-up"));
    assertEquals("3 s, +/- 60 %", shown(us, "sensor.time-constant"));
    assertEquals("60 W, +/- 50 %", shown(us, "pump.power"));
  }

  private static String shown(Scenario scenario, String key) {
    return scenario.assumedAsShown().stream()
        .filter(a -> a.key().equals(key))
        .map(a -> a.value() + ", " + a.spread())
        .findFirst()
        .orElse("none");
  }
}
