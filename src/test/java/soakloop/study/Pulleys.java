package soakloop.study;

import java.nio.file.Path;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** An invented blown car in dry air with nothing between blower and core, as a scenario. */
final class Pulleys {
  /** Everything is stated that the boost hangs on; boost itself is not. */
  private static final String TEXT =
      """
      title: Boost from pulleys
      day: {temperature: 25 degC, pressure: 100 kPa, humidity: 0 %}
      engine: {displacement: 4.1 L, volumetric-efficiency: 96 %}
      blower:
        displacement: 1.7 L/rev
        pulleys: {crank: 188 mm, blower: 80 mm}
        volumetric-efficiency: 92 %
        leakage: 6 %
        adiabatic-efficiency: 70 %
        mechanical-efficiency: 95 %
        inlet-pick-up: 0 K
        inlet-loss: 0 kPa
        case: {conductance: 0 W/K}
      core:
        size: {length: 330 mm, width: 150 mm, thickness: 60 mm}
        geometry: {kind: bar-and-plate}
      plenum: {conductance: 0 W/K}
      loop: [reservoir, pump, core]
      reservoir: {volume: 20 L}
      pump: {flow: 30 L/min}
      coolant: {glycol: none}
      start: {loop-coolant: 30 degC}
      session:
        - idle: {for: 5 s}
        - pull: {from: 2600 rpm, to: 6500 rpm, in: 8 s}
      """;

  private Pulleys() {}

  static Scenario scenario() throws Exception {
    return ScenarioReader.parse("pulleys", TEXT, Path.of("."));
  }

  static String text() {
    return TEXT;
  }

  /** Puts a table of two pressure ratios with the same line in place of the efficiency. */
  static Scenario mapped(String low, String high, String line) throws Exception {
    String table =
        "efficiency-table:\n"
            + "    - {pressure-ratio: "
            + low
            + ", efficiency: "
            + line
            + "}\n"
            + "    - {pressure-ratio: "
            + high
            + ", efficiency: "
            + line
            + "}\n";
    return ScenarioReader.parse(
        "pulleys", TEXT.replace("adiabatic-efficiency: 70 %\n", table), Path.of("."));
  }

  /** Adds lines at the end. */
  static Scenario with(String lines) throws Exception {
    return ScenarioReader.parse("pulleys", TEXT + lines, Path.of("."));
  }

  /** Returns a channel where the last pull is counted. */
  static double end(Outcome outcome, Channel channel) {
    Trace trace = outcome.trace();
    return trace.at(channel, outcome.pulls().get(outcome.pulls().size() - 1).countedAt() - 1e-6);
  }
}
