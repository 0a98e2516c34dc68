package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.Dimension;
import soakloop.rig.AirDelivery;
import soakloop.rig.LoopElement;
import soakloop.session.Drive;
import soakloop.session.Phase;

/** What the reader makes of scenarios that are right. */
class ScenarioReaderTest {
  private static final String US =
      """
      day: {temperature: 68 degF, pressure: 14.5 psi}
      engine: {displacement: 250 in3}
      blower: {displacement: 100 in3/rev, pulleys: {crank: 8 in, blower: 3 in}, inlet-pick-up: 9 degF}
      boost: 12 psi +/- 1 psi
      core:
        size: {length: 14 in, width: 7 in, thickness: 2 in}
        mass: 8 lb
        conductance: {value: 1500 Btu/(h degF), air-flow: 60 lb/min, coolant-flow: 6 gpm}
      loop: [reservoir, pump, supply-hose, core, heat-exchanger]
      reservoir: {volume: 2 gal}
      pump: {flow: 6 gpm +/- 20 %, power: 0.1 hp}
      supply-hose: {length: 6 ft, bore: 0.75 in}
      heat-exchanger: {face: {width: 26 in, height: 12 in}}
      coolant: {glycol: ethylene, by-volume: 30 %}
      airflow: {shop-fan: 10 mph}
      start: {loop-coolant: 77 degF +/- 9 degF}
      session: [{cruise: {for: 10 min, engine-speed: 2000 rpm, road-speed: 30 mph}}]
      """;

  /** The same by the exact definitions of the units. */
  private static final String METRIC =
      """
      day: {temperature: 20 degC, pressure: 99.97398075094 kPa}
      engine: {displacement: 4.096766 L}
      blower: {displacement: 1.6387064 L/rev, pulleys: {crank: 203.2 mm, blower: 76.2 mm}, inlet-pick-up: 5 K}
      boost: 82.73708751802 kPa +/- 6.894757293168 kPa
      core:
        size: {length: 355.6 mm, width: 177.8 mm, thickness: 50.8 mm}
        mass: 3.62873896 kg
        conductance: {value: 791.291889465 W/K, air-flow: 0.45359237 kg/s, coolant-flow: 22.712470704 L/min}
      loop: [reservoir, pump, supply-hose, core, heat-exchanger]
      reservoir: {volume: 7.570823568 L}
      pump: {flow: 22.712470704 L/min +/- 20 %, power: 74.56998715823 W}
      supply-hose: {length: 1.8288 m, bore: 19.05 mm}
      heat-exchanger: {face: {width: 660.4 mm, height: 304.8 mm}}
      coolant: {glycol: ethylene, by-volume: 30 %}
      airflow: {shop-fan: 16.09344 km/h}
      start: {loop-coolant: 25 degC +/- 5 K}
      session: [{cruise: {for: 600 s, engine-speed: 2000 rpm, road-speed: 48.28032 km/h}}]
      """;

  @Test
  @Tag("analytic")
  void unitsOfUsAndMetricGiveTheSameValues() throws ScenarioException {
    Scenario us = Scenarios.read(US);
    Scenario metric = Scenarios.read(METRIC);
    assertEquals(keys(metric), keys(us));
    for (Stated stated : metric.values()) {
      double value = stated.estimate().value();
      double spread = stated.estimate().spread();
      Stated other = stated(us, stated.key());
      assertEquals(value, other.estimate().value(), 1e-11 * Math.abs(value), stated.key());
      assertEquals(spread, other.estimate().spread(), 1e-11 * spread, stated.key());
    }
  }

  @Test
  @Tag("analytic")
  void pulleysMakeTheRatioOfTheirDiameters() throws ScenarioException {
    Scenario pulleys = Scenarios.read(US);
    Scenario ratio = pulleys.with("blower", "{displacement: 100 in3/rev, drive-ratio: 2.6666667}");
    assertEquals(8.0 / 3, ratioOf(pulleys), 1e-12);
    assertEquals(ratioOf(pulleys), ratioOf(ratio), 1e-6);
    assertEquals(2 * ratioOf(pulleys), ratioOf(pulleys.with("blower.pulleys.step-up", "2")), 1e-12);
  }

  private static double ratioOf(Scenario scenario) {
    return ((AirDelivery.PositiveDisplacement) scenario.rig().blower().delivery())
        .size()
        .driveRatio();
  }

  @Test
  @Tag("regression")
  void theLoopHasTheOrderThatIsWritten() throws ScenarioException {
    Scenario scenario = Scenarios.read(US);
    List<String> order = List.of("core", "heat-exchanger", "reservoir", "pump", "supply-hose");
    Scenario turned = scenario.with("loop", "[" + String.join(", ", order) + "]");
    assertEquals(order, turned.rig().loop().elements().stream().map(LoopElement::name).toList());
    assertEquals(
        new HashSet<>(scenario.rig().loop().elements()),
        new HashSet<>(turned.rig().loop().elements()));
  }

  @Test
  @Tag("regression")
  void aLoopMayHaveManyPiecesOfAKindAndHosesWithoutASection() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(
            Scenarios.SHORT.replace("[pump, core]", "[pump, a-hose, core, b-hose, ice-reservoir]")
                + "a-hose: {length: 3 m}\n");
    assertEquals(5, scenario.rig().loop().elements().size());
    List<String> assumed = scenario.assumed().stream().map(Assumed::key).toList();
    assertTrue(assumed.containsAll(List.of("b-hose.length", "ice-reservoir.volume")), "" + assumed);
    assertFalse(assumed.contains("a-hose.length"));
  }

  @Test
  @Tag("regression")
  void scalarsAreReadAsWritten() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(
            "title: 14:05\nabout: no\n"
                + Scenarios.SHORT.replace(
                    "{idle: {for: 10 s}}", "{wait: {for: 10 s, engine: off, pump: off}}"));
    assertEquals("14:05", scenario.title());
    assertEquals("no", scenario.about());
    Phase phase = scenario.session().phases().get(0);
    assertInstanceOf(Drive.EngineOff.class, phase.drive());
    assertFalse(phase.cooling().pump());
    assertTrue(phase.cooling().shopFan());
  }

  @Test
  @Tag("regression")
  void repeatsAreWrittenOut() throws ScenarioException {
    List<String> names =
        Scenarios.read(Scenarios.BY_SIZE).session().phases().stream().map(Phase::name).toList();
    assertEquals(
        List.of(
            "settle",
            "idle",
            "pull 1",
            "cruise",
            "pull 2",
            "cruise",
            "pull 3",
            "wait after pull 3",
            "pull 4",
            "wait after pull 4",
            "pull 5",
            "wait after pull 5"),
        names);
  }

  /** By hand: 6500 rpm is a tenth of the last second's 300 rpm after 6400 at 9 s. */
  @Test
  @Tag("analytic")
  void aPullIsCountedWhereItReachesItsSpeed() throws ScenarioException {
    List<Phase> phases = Scenarios.read(Scenarios.BY_SIZE).session().phases();
    assertEquals(9 + 1.0 / 3, phases.get(2).countedAt().orElseThrow(), 1e-9);
    assertEquals(
        10.0 * (6500 - 2600) / (6700 - 2600), phases.get(6).countedAt().orElseThrow(), 1e-9);
  }

  @Test
  @Tag("regression")
  void spreadsAreKeptWithTheirValues() throws ScenarioException {
    Scenario us = Scenarios.read(US);
    double flow = stated(us, "pump.flow").estimate().value();
    assertEquals(0.2 * flow, spread(us, "pump.flow"), 1e-12);
    assertEquals(5, spread(us, "start.loop-coolant"), 1e-12);
    assertEquals(0, spread(us, "reservoir.volume"));
    assertTrue(stated(us, "sensor.time-constant").assumed());
    assertEquals(1.8, spread(us, "sensor.time-constant"), 1e-12);
    Scenario points = Scenarios.read(Scenarios.BY_SIZE);
    assertEquals(5000, spread(points, "boost.2.2"), 1e-9);
    assertEquals(Dimension.GAUGE_PRESSURE, stated(points, "boost.2.2").dimension());
  }

  private static double spread(Scenario scenario, String key) {
    return stated(scenario, key).estimate().spread();
  }

  private static List<String> keys(Scenario scenario) {
    return scenario.values().stream().map(Stated::key).toList();
  }

  private static Stated stated(Scenario scenario, String key) {
    return scenario.values().stream().filter(v -> v.key().equals(key)).findFirst().orElseThrow();
  }
}
