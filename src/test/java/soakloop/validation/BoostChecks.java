package soakloop.validation;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Simulation;
import soakloop.simulate.Trace;

/** Blower and boost as a whole run gives them, from the text of a scenario on. */
final class BoostChecks implements CheckSuite {
  private static final String TEXT =
      """
      day: {temperature: 25 degC, pressure: 100 kPa, humidity: 0 %}
      engine: {displacement: 4 L, volumetric-efficiency: 90 %}
      blower:
        displacement: 1.6 L/rev
        drive-ratio: 2.5
        volumetric-efficiency: 90 %
        leakage: 0 %
        adiabatic-efficiency: EFFICIENCY
        inlet-pick-up: 0 K
        inlet-loss: 0 kPa
        case: {conductance: 0 W/K}
      boost: BOOST
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        conductance: {value: CONDUCTANCE, air-flow: 0.5 kg/s}
      plenum: {conductance: 0 W/K}
      loop: [pump, reservoir, core]
      reservoir: {volume: 100 L}
      coolant: {glycol: none}
      start: {loop-coolant: 25 degC}
      session: [{idle: {for: 1 s}}, {pull: {from: 3000 rpm, to: 6000 rpm, in: 5 s}}]
      """;

  private final CheckList list = new CheckList("Blower and boost, whole run");

  @Override
  public List<Check> checks() {
    outlet();
    pulleys();
    return list.checks();
  }

  private void outlet() {
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "heat capacity after Lemmon et al. 2000, gas constant 287.117, computed in Python; from"
                + " 25 degC")
        .add(
            "blower outlet at 140 kPa on a day of 100 kPa, efficiency 0.7",
            418.610,
            end(run("140 kPa", 0.70, "0.7 kW/K"), Channel.BLOWER_OUTLET),
            Tolerance.absolute(0.05),
            "K")
        .from(
            Kind.ANALYTIC, "ideal gas, g = 1.4, from 25 degC; the program's heat capacity varies");
    double[][] rows = {{80, 0.65, 382.0285}, {100, 0.75, 385.2152}};
    for (double[] row : rows) {
      list.add(
          "blower outlet at " + Digits.of(row[0], 3) + " kPa, efficiency " + Digits.of(row[1], 3),
          row[2],
          end(run(row[0] + " kPa", row[1], "0.7 kW/K"), Channel.BLOWER_OUTLET),
          Tolerance.absolute(0.7),
          "K");
    }
  }

  /**
   * Blower and engine of one filling: 1.6 x 2.5 L against 4 / 2 L a turn make twice the density.
   */
  private void pulleys() {
    Trace trace = run("from-pulleys", 0.70, "20 kW/K");
    list.from(
            Kind.ANALYTIC,
            "equal volumetric efficiencies, nothing lost: density behind over before is the ratio of"
                + " the volumes, 1.6 L x 2.5 over 4 L / 2")
        .add(
            "density in the manifold over that of the day",
            2,
            (100e3 + end(trace, Channel.BOOST)) / 100e3 * 298.15 / end(trace, Channel.CHARGE),
            Tolerance.relative(2e-6),
            "-");
    Trace less = run("from-pulleys", 0.70, "0.1 kW/K");
    list.add(
        "air mass with a far poorer core",
        end(trace, Channel.AIR_MASS_FLOW),
        end(less, Channel.AIR_MASS_FLOW),
        Tolerance.relative(1e-12),
        "kg/s");
    list.from(
            Kind.ANALYTIC,
            "a core that lets nothing pass: PR = 2 [1 + (PR^(1/3.5) - 1) / 0.7], g = 1.4; the run's core"
                + " lets 10 W/K pass and its heat capacity of air varies")
        .add(
            "pressure ratio without cooling",
            uncooled(),
            end(run("from-pulleys", 0.70, "10 W/K"), Channel.PRESSURE_RATIO),
            Tolerance.relative(0.03),
            "-");
  }

  private static double uncooled() {
    double ratio = 2;
    for (int i = 0; i < 200; i++) {
      ratio = 2 * (1 + (Math.pow(ratio, 1 / 3.5) - 1) / 0.7);
    }
    return ratio;
  }

  private static double end(Trace trace, Channel channel) {
    return trace.at(channel, trace.pulls().get(0).end());
  }

  private static Trace run(String boost, double efficiency, String conductance) {
    String text =
        TEXT.replace("BOOST", boost)
            .replace("EFFICIENCY", String.format(Locale.ROOT, "%.0f %%", 100 * efficiency))
            .replace("CONDUCTANCE", conductance);
    try {
      return Simulation.run(ScenarioReader.parse("boost", text, Path.of(".")).setup());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
