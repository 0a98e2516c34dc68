package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.Condensation;
import soakloop.fluid.MoistAir;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** Water that condenses in a core at the temperature of ice, on an invented humid day. */
@Tag("analytic")
class IcedCoreTest {
  private static final String TEXT =
      """
      title: An invented iced loop
      day: {temperature: 30 degC, humidity: 70 %, pressure: 101 kPa}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.3}
      boost: 90 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        geometry: {fins: {density: 16 fpi, height: 7 mm}}
      loop: [reservoir, pump, core]
      reservoir: {volume: 10 L}
      coolant: {glycol: ethylene, by-volume: 30 %}
      start: {loop-coolant: 0.5 degC}
      session:
        - idle: {for: 5 s}
        - pull: {from: 2600 rpm, to: 6000 rpm, in: 6 s}
        - wait: {for: 20 s}
      """;

  private static Scenario scenario() throws ScenarioException {
    return ScenarioReader.parse("iced", TEXT, Path.of(""));
  }

  private static double water(Trace trace) {
    double sum = 0;
    for (int i = 1; i < trace.size(); i++) {
      sum +=
          0.5
              * (trace.value(Channel.CONDENSATE, i) + trace.value(Channel.CONDENSATE, i - 1))
              * (trace.time(i) - trace.time(i - 1));
    }
    return sum;
  }

  @Test
  void theBooksCloseWithTheHeatOfWater() throws Exception {
    Trace trace = Simulation.run(scenario().setup());
    assertTrue(water(trace) > 5e-3, "water " + water(trace));
    assertTrue(trace.energy().residualFraction() < 1e-10, trace.energy().toString());
  }

  /**
   * Ice in the tank and water out of the air at once. The heat of the water comes out of the air
   * and goes into coolant and ice, so the books close; and the water is no more than what the air
   * brings above saturation at the coldest wall.
   */
  @Test
  void theBooksCloseWithIceAndWaterAtOnce() throws Exception {
    Scenario scenario =
        ScenarioReader.parse(
            "iced tank",
            TEXT.replace(
                    "{volume: 10 L}",
                    "{volume: 6 L, capacity: 20 L, ice: {mass: 3 kg, temperature: -10 degC}}")
                .replace("- wait: {for: 20 s}", "- wait: {for: 60 s}")
                .replace("glycol: ethylene, by-volume: 30 %", "glycol: none"),
            Path.of(""));
    Trace moist = Simulation.run(scenario.setup());
    Trace dry = Simulation.run(scenario.with("day.humidity", "0 %").setup());
    assertTrue(moist.energy().residualFraction() < 1e-10, moist.energy().toString());
    assertEquals(0, water(dry));
    int last = moist.size() - 1;
    double left = moist.value(Channel.ICE_LEFT, last);
    assertTrue(left > 0.2 && left < 2.9, "ice left " + left);
    assertTrue(left < dry.value(Channel.ICE_LEFT, last) - 5e-3, "the water's heat melts ice too");
    double most = 0;
    MoistAir air = MoistAir.of(303.15, 101e3, 0.7);
    for (int i = 1; i < moist.size(); i++) {
      double pressure = 101e3 + moist.value(Channel.BOOST, i);
      double colder = Math.min(moist.value(Channel.CORE_COOLANT_IN, i), 300);
      double dryest = MoistAir.of(colder, pressure, 1).humidityRatio();
      double vapour = Math.max(0, air.humidityRatio() - dryest);
      most += vapour * moist.value(Channel.AIR_MASS_FLOW, i) * (moist.time(i) - moist.time(i - 1));
    }
    assertTrue(water(moist) > 5e-3 && water(moist) <= 1.02 * most, water(moist) + " of " + most);
  }

  /**
   * Early in the pull, with the metal nearly at one temperature: latent over sensible heat, against
   * the local ratio worked by hand at the mean of the air and of the metal. At the temperature of
   * ice the trade's arithmetic gives 15 to 70 % (computed for this project from moist-air
   * enthalpies).
   */
  @Test
  void theShareOfLatentHeatIsTheOneWorkedByHand() throws Exception {
    Trace trace = Simulation.run(scenario().setup());
    double at = 6;
    double latent =
        trace.at(Channel.CONDENSATE, at)
            * Condensation.heatOfVaporisation(trace.at(Channel.CORE_METAL, at));
    double sensible = trace.at(Channel.HEAT_CORE, at) - latent;
    double share = latent / sensible;
    assertTrue(share > 0.15 && share < 0.7, "share " + share);
    MoistAir air = MoistAir.of(303.15, 101e3, 0.7);
    double pressure = 101e3 + trace.at(Channel.BOOST, at);
    // Humidity and temperature fall together, so the mean of the air is where both are half way.
    double mean = 0.5 * (trace.at(Channel.CORE_AIR_IN, at) + trace.at(Channel.CORE_AIR_OUT, at));
    double metal = trace.at(Channel.CORE_METAL, at);
    double dry = MoistAir.of(metal, pressure, 1).humidityRatio();
    double closed =
        (trace.at(Channel.CORE_AIR_IN, at) - mean) / (trace.at(Channel.CORE_AIR_IN, at) - metal);
    MoistAir there = new MoistAir(air.humidityRatio() - closed * (air.humidityRatio() - dry));
    double byHand = Condensation.latentToSensible(there, pressure, mean, metal);
    assertEquals(byHand, share, 0.15 * byHand);
  }

  @Test
  void dryAirAndWarmWallsLeaveNoWater() throws Exception {
    assertEquals(0, water(Simulation.run(scenario().with("day.humidity", "0 %").setup())));
    Trace warm = Simulation.run(scenario().with("start.loop-coolant", "50 degC").setup());
    assertEquals(0, water(warm));
  }

  /** The heat of the water ends in the coolant, and the charge is warmer for it. */
  @Test
  void waterWarmsTheCoolantAndTheCharge() throws Exception {
    Trace humid = Simulation.run(scenario().setup());
    Trace dry = Simulation.run(scenario().with("day.humidity", "0 %").setup());
    double end = 11;
    assertTrue(
        humid.at(Channel.CORE_COOLANT_OUT, end) > dry.at(Channel.CORE_COOLANT_OUT, end) + 0.5);
    assertTrue(humid.at(Channel.CORE_AIR_OUT, end) > dry.at(Channel.CORE_AIR_OUT, end));
  }

  /** The Jacobian only speeds the method up: another one without it gives the same. */
  @Test
  void anotherIntegratorGivesTheSame() throws Exception {
    Trace implicit = Simulation.run(scenario().setup());
    Trace explicit = Simulation.run(scenario().setup(), Options.DEFAULT.explicitly());
    for (double t = 1; t < 30; t += 0.5) {
      assertEquals(explicit.at(Channel.SENSOR, t), implicit.at(Channel.SENSOR, t), 0.02);
      assertEquals(
          explicit.at(Channel.CORE_COOLANT_OUT, t), implicit.at(Channel.CORE_COOLANT_OUT, t), 0.05);
    }
  }

  @Test
  void theReaderIsTold() throws Exception {
    Outcome outcome = Run.of(scenario());
    Warning warning =
        outcome.warnings().stream()
            .filter(w -> w.kind() == Warning.Kind.CONDENSATION)
            .findFirst()
            .orElseThrow();
    assertTrue(
        warning.message().matches("0\\.0\\d\\d kg of water condenses .*dew point is 3[0-9] degC.*"),
        warning.message());
  }
}
