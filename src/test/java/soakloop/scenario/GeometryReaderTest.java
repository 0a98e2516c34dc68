package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.CoreGeometry;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.exchange.PassedCrossflow;
import soakloop.flow.Liquid;
import soakloop.fluid.Air;
import soakloop.fluid.Coolant;
import soakloop.rig.Exchanger;
import soakloop.rig.GeometricConductance;
import soakloop.rig.HeatExchanger;
import soakloop.rig.PowerLawConductance;

/** From a scenario's text to a conductance: geometry, and measured points. */
class GeometryReaderTest {
  /**
   * The charge cooler core that was worked in Python for this project (offset strip fins 1.1 x 6 x
   * 3 mm, 0.075 mm thick, 14 layers of 300 x 75 mm; 15 tubes of 41 ports 1.5 x 1.5 mm), as a
   * scenario says it.
   */
  private static final String WORKED =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 300 mm, width: 119.55 mm, thickness: 75 mm}
        geometry:
          kind: tube-and-fin
          uneven-air: 0 %
          wall: 0.4 mm
          metal-conductivity: 180 W/(m K)
          tank-metal: 25 %
          tank-coolant: 60 %
          fins: {kind: offset-strip, density: 851.063829787234 fins/m, height: 6.075 mm, sheet: 0.075 mm, strip: 3 mm}
          ports: {width: 1.5 mm, height: 1.5 mm, web: 0.329268292682927 mm}
      loop: [pump, core]
      pump: {flow: 15 L/min}
      coolant: {glycol: ethylene, by-mass: 30 %}
      session: [{idle: {for: 10 s}}]
      """;

  private static final double AIR_FLOW = 0.45;
  private static final double COOLANT_FLOW = 15e-3 / 60;
  private static final FluidState AIR = new FluidState(2.16e-5, 1010, 2.16e-5 * 1010 / 0.7);
  private static final FluidState COOLANT = new FluidState(1.15e-3, 3775, 0.48);
  private static final double COOLANT_DENSITY = 1029;

  private static Exchanger core(Scenario scenario) {
    return scenario.rig().loop().core().exchanger();
  }

  private static GeometricCore geometry(Scenario scenario) {
    return core(scenario).conductance().geometry().orElseThrow();
  }

  private static double overall(GeometricCore core) {
    return core.overall(AIR_FLOW, AIR, COOLANT_FLOW * COOLANT_DENSITY, COOLANT);
  }

  private static double airLoss(GeometricCore core) {
    return core.airLoss(AIR_FLOW, AIR.viscosity(), 1.95, 2.166, 2.40);
  }

  /** 566.183 W/K and 553.006 Pa: computed in Python for this project with the properties given. */
  @Test
  @Tag("library")
  void aScenarioGivesTheWorkedCore() throws ScenarioException {
    Scenario scenario = Scenarios.read(WORKED);
    assertEquals(14, geometry(scenario).geometry().airLayers());
    assertEquals(566.183, overall(geometry(scenario)), 1e-3 * 566.183);
    assertEquals(553.006, airLoss(geometry(scenario)), 1e-3 * 553.006);
    // With the project's own fluids at 366 K and 45 degC, whose properties are nearly those given.
    GeometricConductance conductance = (GeometricConductance) core(scenario).conductance();
    Coolant coolant = scenario.rig().coolant();
    double a = conductance.airSide(AIR_FLOW, 366);
    double c = conductance.coolantSide(COOLANT_FLOW, 318.15, coolant);
    assertEquals(566.183, a * c / (a + c), 0.01 * 566.183);
    // Friction 891.2 Pa at Re 214.51; entry and exit come on top.
    double friction =
        geometry(scenario)
            .coolantFriction(COOLANT_FLOW * COOLANT_DENSITY, viscosityAt(214.51), COOLANT_DENSITY);
    assertEquals(891.2, friction, 1e-3 * 891.2);
    double loss =
        core(scenario)
            .coolantResistance()
            .orElseThrow()
            .loss(COOLANT_FLOW, new Liquid(COOLANT_DENSITY, viscosityAt(214.51)));
    assertTrue(loss > friction && loss < 1.2 * friction, "loss " + loss);
  }

  private static double viscosityAt(double reynolds) {
    return COOLANT_FLOW * COOLANT_DENSITY / (615 * 1.5e-3 * 1.5e-3) * 1.5e-3 / reynolds;
  }

  @Test
  @Tag("analytic")
  void oneEditMakesTheCoreTwentyPercentThicker() throws ScenarioException {
    Scenario scenario = Scenarios.read(WORKED);
    Scenario thick = scenario.with("core.size.thickness", "90 mm");
    CoreGeometry expected = geometry(scenario).geometry().thicker(1.2);
    assertEquals(overall(new GeometricCore(expected)), overall(geometry(thick)), 1e-9);
    assertEquals(1.2, core(thick).coolantVolume() / core(scenario).coolantVolume(), 1e-9);
    assertEquals(1.2, core(thick).metalHeatCapacity() / core(scenario).metalHeatCapacity(), 1e-9);
    assertTrue(airLoss(geometry(thick)) > 1.1 * airLoss(geometry(scenario)));
    Liquid liquid = new Liquid(COOLANT_DENSITY, 1.15e-3);
    assertTrue(
        core(thick).coolantResistance().orElseThrow().loss(COOLANT_FLOW, liquid)
            < core(scenario).coolantResistance().orElseThrow().loss(COOLANT_FLOW, liquid));
  }

  @Test
  @Tag("analytic")
  void twiceTheFinsChangeWhatThePureFunctionSays() throws ScenarioException {
    Scenario dense = Scenarios.read(WORKED);
    Scenario scenario = dense.with("core.geometry.fins.density", "425.531914893617 fins/m");
    GeometricCore expected =
        new GeometricCore(geometry(scenario).geometry().withFinDensity(2 * 425.531914893617));
    assertEquals(overall(expected), overall(geometry(dense)), 1e-9);
    assertEquals(airLoss(expected), airLoss(geometry(dense)), 1e-9);
    assertTrue(overall(geometry(dense)) > 1.1 * overall(geometry(scenario)));
    assertTrue(airLoss(geometry(dense)) > 2 * airLoss(geometry(scenario)));
    assertEquals(core(scenario).coolantVolume(), core(dense).coolantVolume(), 1e-12);
  }

  @Test
  @Tag("analytic")
  void finsAreCountedByInchOrCentimetre() throws ScenarioException {
    Scenario scenario = Scenarios.read(WORKED);
    double inch = overall(geometry(scenario.with("core.geometry.fins.density", "12.7 fpi")));
    double centimetre = overall(geometry(scenario.with("core.geometry.fins.density", "5 fins/cm")));
    assertEquals(inch, centimetre, 1e-9);
  }

  @Test
  @Tag("analytic")
  void stillCoolantStillConducts() throws ScenarioException {
    for (String text : new String[] {WORKED, Scenarios.BY_GEOMETRY}) {
      Scenario scenario = Scenarios.read(text);
      GeometricConductance conductance = (GeometricConductance) core(scenario).conductance();
      Coolant coolant = scenario.rig().coolant();
      double still = conductance.coolantSide(0, 320, coolant);
      assertTrue(still > 0);
      assertEquals(still, conductance.coolantSide(1e-9, 320, coolant), 1e-3 * still);
    }
  }

  @Test
  @Tag("analytic")
  void freeHeightRefusesAThickerCore() throws ScenarioException {
    Scenario scenario = Scenarios.read(WORKED).with("core.free-height", "80 mm");
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> scenario.with("core.size.thickness", "90 mm"));
    assertEquals("is 90 mm; free-height leaves 80 mm", e.problems().get(0).message());
    assertEquals("core.size.thickness", e.problems().get(0).key());
  }

  /**
   * Put back into the effectiveness, the conductance of a measured point gives what was measured.
   */
  @Test
  @Tag("analytic")
  void aMeasuredPointGivesItsConductance() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(Scenarios.MEASURED)
            .with("core.size", "{length: 350 mm, width: 170 mm, thickness: 55 mm}");
    PowerLawConductance conductance = (PowerLawConductance) core(scenario).conductance();
    Coolant coolant = scenario.rig().coolant();
    double airRate = 0.45 * Air.heatCapacity(350);
    double flow = 22e-3 / 60;
    double coolantRate = flow * coolant.density(318.15) * coolant.heatCapacity(318.15);
    assertEquals(
        0.72,
        new PassedCrossflow(1, true)
            .airEffectiveness(conductance.overall(0.45, flow), airRate, coolantRate),
        1e-9);
    // 72 % of the way from 140 to 40 degC is 68 degC: the same point by temperatures.
    Scenario warm =
        Scenarios.read(Scenarios.MEASURED_TOO)
            .with(
                java.util.Map.of(
                    "core.size", "{length: 350 mm, width: 170 mm, thickness: 55 mm}",
                    "core.conductance.measured.air-out", "68 degC"));
    double again = ((PowerLawConductance) core(warm).conductance()).overall(0.45, flow);
    assertEquals(conductance.overall(0.45, flow), again, 0.01 * again);
  }

  /** A thicker block: the air side grows with its surface, the coolant side by less. */
  @Test
  @Tag("analytic")
  void anotherSizeScalesAMeasuredPoint() throws ScenarioException {
    Scenario there =
        Scenarios.read(Scenarios.MEASURED)
            .with("core.size", "{length: 350 mm, width: 170 mm, thickness: 55 mm}");
    Scenario thick = there.with("core.size.thickness", "66 mm");
    PowerLawConductance a = ((PowerLawConductance) core(there).conductance()).scaled(1, 1, 1);
    PowerLawConductance b = (PowerLawConductance) core(thick).conductance();
    double air = b.value() / b.airSideShare() / (a.value() / a.airSideShare());
    double coolant =
        b.value()
            / (1 - b.airSideShare() - b.wallShare())
            / (a.value() / (1 - a.airSideShare() - a.wallShare()));
    assertEquals(1.2, air, 1e-9);
    assertEquals(Math.pow(1.2, 1 - a.coolantExponent()), coolant, 1e-9);
    assertTrue(b.value() > a.value() && b.value() < 1.2 * a.value());
    assertEquals(a.value(), ((PowerLawConductance) core(there).conductance()).value(), 1e-9);
  }

  /** The coolant's fall at a heat exchanger is its heat: 20 L/min by 6 K. */
  @Test
  @Tag("analytic")
  void coolantTemperaturesGiveTheHeat() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(Scenarios.MEASURED)
            .with(
                java.util.Map.of(
                    "heat-exchanger.face", "{width: 600 mm, height: 320 mm}",
                    "heat-exchanger.thickness", "26 mm"));
    HeatExchanger exchanger = (HeatExchanger) scenario.rig().loop().elements().get(2);
    PowerLawConductance conductance = (PowerLawConductance) exchanger.exchanger().conductance();
    Coolant coolant = scenario.rig().coolant();
    double coolantRate = 20e-3 / 60 * coolant.density(333.15) * coolant.heatCapacity(333.15);
    double airRate = conductance.airFlow() * Air.heatCapacity(293.15);
    double heat =
        new PassedCrossflow(1, true).airEffectiveness(conductance.value(), airRate, coolantRate)
            * airRate
            * (60 - 20);
    assertEquals(coolantRate * 6, heat, 1e-6 * heat);
  }
}
