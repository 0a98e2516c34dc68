package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * What a change of the core's geometry does to a run, over random cores with the flow of the loop
 * held: three minutes of steady boost, so that what the core has stored no longer counts.
 */
@Tag("analytic")
class ThickerCoreTest {
  /** Tables of the run keep an air side within 0.1 %, and integration the temperatures. */
  private static final double SLACK = 5e-4;

  private static Scenario draw(SplittableRandom random) throws Exception {
    String text =
        """
        title: Invented core
        day: {temperature: 20 degC, humidity: 0 %}
        engine: {displacement: 4.1 L}
        blower: {displacement: 1.7 L/rev, drive-ratio: 2.2}
        boost: 80 kPa
        core:
          size: {length: L mm, width: W mm, thickness: T mm}
          geometry:
            kind: bar-and-plate
            fins: {kind: FIN, density: D fpi, height: H mm}
        loop: [reservoir, pump, core, heat-exchanger]
        reservoir: {volume: 3 L}
        pump: {flow: F L/min}
        heat-exchanger: {face: {width: 600 mm, height: 280 mm}}
        coolant: {glycol: ethylene, by-volume: 30 %}
        airflow: {shop-fan: strong}
        start: {loop-coolant: 30 degC}
        session:
          - cruise: {for: 3 min, engine-speed: 4200 rpm, road-speed: 0 km/h, manifold-pressure: 170 kPa}
        """;
    return ScenarioReader.parse(
        "core",
        text.replace("L mm", random.nextInt(250, 450) + " mm")
            .replace("W mm", random.nextInt(120, 220) + " mm")
            .replace("T mm", random.nextInt(30, 80) + " mm")
            .replace("FIN", random.nextBoolean() ? "offset-strip" : "plain")
            .replace("D fpi", random.nextInt(12, 19) + " fpi")
            .replace("H mm", random.nextInt(5, 9) + " mm")
            .replace("F L/min", random.nextInt(10, 35) + " L/min"),
        Path.of(""));
  }

  private static Trace run(Scenario scenario) throws Exception {
    return Run.of(scenario).trace();
  }

  private static double effectiveness(Trace trace) {
    double in = last(trace, Channel.CORE_AIR_IN);
    return (in - last(trace, Channel.CORE_AIR_OUT)) / (in - last(trace, Channel.CORE_COOLANT_IN));
  }

  private static double last(Trace trace, Channel channel) {
    return trace.value(channel, trace.size() - 1);
  }

  /** Thicker, or denser fins: never a lower effectiveness, always more pressure lost. */
  @Test
  void thickerOrDenserNeverLowersEffectiveness() throws Exception {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 12; i++) {
      Scenario scenario = draw(random);
      Trace as = run(scenario);
      double effectiveness = effectiveness(as);
      assertTrue(effectiveness > 0.3 && effectiveness < 1, "effectiveness " + effectiveness);
      for (String[] more :
          new String[][] {
            {"core.size.thickness", " m"}, {"core.geometry.fins.density", " fins/m"}
          }) {
        Scenario other = scenario.with(more[0], 1.2 * value(scenario, more[0]) + more[1]);
        Trace changed = run(other);
        assertTrue(
            effectiveness(changed) > effectiveness - SLACK,
            () -> more[0] + ": " + effectiveness(changed) + " after " + effectiveness);
        assertTrue(last(changed, Channel.CORE_LOSS) > last(as, Channel.CORE_LOSS), more[0]);
        assertTrue(
            last(changed, Channel.CHARGE) < last(as, Channel.CHARGE) + 0.05,
            () -> more[0] + " leaves a hotter charge");
      }
    }
  }

  private static double value(Scenario scenario, String key) {
    return scenario.values().stream()
        .filter(v -> v.key().equals(key))
        .findFirst()
        .orElseThrow()
        .estimate()
        .value();
  }
}
