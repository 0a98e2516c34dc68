package soakloop.validation;

import soakloop.flow.Liquid;
import soakloop.fluid.Coolant;
import soakloop.rig.Branches;
import soakloop.rig.FaceAir;
import soakloop.rig.LoopElement;
import soakloop.rig.PumpDelivery;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Channel;
import soakloop.simulate.LoopPoint;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.LoopText;

/** Flow of coolant and air again, from the text of a scenario to the trace of its run. */
final class LoopFlowChecks implements CheckSuite {
  private static final double LITRE_PER_MINUTE = FlowChecks.LITRE_PER_MINUTE;
  private static final double WARM = 313.15;

  private final CheckList list = new CheckList("Flow, by way of a scenario");

  @Override
  public java.util.List<Check> checks() {
    try {
      hose();
      pump();
      divided();
      air();
      label();
    } catch (ScenarioException | SimulationException e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
    return list.checks();
  }

  private void hose() throws ScenarioException {
    Scenario scenario =
        LoopText.read(
            """
            loop: [pump, core, hose]
            pump: {label: 60 L/min}
            hose: {length: 8 m, bore: 19 mm, roughness: 0 mm, fittings: 6}
            """);
    LoopElement hose = scenario.rig().loop().elements().get(2);
    Liquid mix = new Liquid(1053, 2.10e-3);
    double[][] rows = {{10, 3896.18}, {20, 13_575.81}, {30, 28_442.86}, {40, 48_247.51}};
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "8 m of 19 mm hose and fittings of 6 velocity heads, half glycol, computed in Python");
    for (double[] row : rows) {
      list.add(
          "pressure loss at " + Digits.of(row[0], 3) + " L/min",
          row[1],
          hose.resistance().loss(row[0] * LITRE_PER_MINUTE, mix),
          Tolerance.relative(1e-6),
          "Pa");
    }
  }

  private void pump() throws ScenarioException, SimulationException {
    Scenario full = LoopText.read(LoopText.PARABOLA);
    Tolerance digits = Tolerance.relative(1e-7);
    list.from(
            Kind.ANALYTIC,
            "pump dp0 (1 - (Q/Qm)^2) against k Q^2: Q = (1/Qm^2 + k/dp0)^-1/2; affinity laws")
        .add("flow", 31.333978, flow(full), digits, "L/min")
        .add(
            "flow at 80 % speed", 25.067182, flow(full.with("pump.speed", "80 %")), digits, "L/min")
        .add(
            "flow at 10.8 V of 13.5 V",
            25.067182,
            flow(
                full.with(
                    java.util.Map.of("pump.voltage", "10.8 V", "pump.rated-voltage", "13.5 V"))),
            digits,
            "L/min")
        .add(
            "flow of two in series",
            1 / Math.sqrt(1 / 3600.0 + 30 / 900.0 / 90),
            flow(full.with("pump.in-series", "2")),
            digits,
            "L/min")
        .add(
            "pump heat at 25 % efficiency",
            31.333978 * LITRE_PER_MINUTE * 32_727.27 / 0.25,
            heat(full.with("pump.efficiency", "25 %")),
            Tolerance.relative(1e-6),
            "W")
        .add(
            "pump heat at 80 % speed over full",
            0.512, heat(full.with("pump.speed", "80 %")) / heat(full), digits, "-");
  }

  private static double flow(Scenario scenario) throws SimulationException {
    return run(scenario).at(Channel.COOLANT_FLOW, 2) / LITRE_PER_MINUTE;
  }

  private static double heat(Scenario scenario) throws SimulationException {
    return run(scenario).at(Channel.HEAT_PUMP, 2);
  }

  private static Trace run(Scenario scenario) throws SimulationException {
    return Simulation.run(scenario.setup(), Options.STUDY);
  }

  /** Two ways with losses that go with the square of flow, four to one: flows one to two. */
  private void divided() throws ScenarioException {
    Scenario scenario =
        LoopText.read(
            """
            loop: [pump, core, {parallel: [[a-heat-exchanger], [b-heat-exchanger]]}]
            pump: {label: 60 L/min}
            a-heat-exchanger:
              {face: {width: 400 mm, height: 300 mm}, pressure-loss: {loss: 8 kPa, exponent: 2}}
            b-heat-exchanger:
              {face: {width: 400 mm, height: 300 mm}, pressure-loss: {loss: 2 kPa, exponent: 2}}
            """);
    Coolant coolant = scenario.rig().coolant();
    Branches ways = (Branches) scenario.rig().loop().elements().get(2);
    Liquid liquid = Liquid.of(coolant, WARM);
    double[] split = ways.resistance().split(30 * LITRE_PER_MINUTE, liquid);
    list.from(Kind.ANALYTIC, "side by side, dp = k Q^2 each: Q goes with k^-1/2")
        .add(
            "flow through k = 8 of 30 L/min",
            10,
            split[0] / LITRE_PER_MINUTE,
            Tolerance.relative(1e-9),
            "L/min")
        .add(
            "their loss at 30 L/min, k = 8 at 20 L/min",
            2000,
            ways.resistance().loss(30 * LITRE_PER_MINUTE, liquid),
            Tolerance.relative(1e-9),
            "Pa");
  }

  private void air() throws ScenarioException {
    Scenario scenario =
        LoopText.read(
            """
            loop: [pump, core, heat-exchanger]
            heat-exchanger: {face: {width: 500 mm, height: 400 mm}}
            airflow: {duct: {loss-factor: 35, pressure-coefficient: 0.9}}
            """);
    FaceAir air = scenario.rig().airflow().face();
    list.from(Kind.ANALYTIC, "ram air: vf/V = sqrt(dCp / zeta)")
        .add(
            "face speed at 27.78 m/s, dCp 0.9, zeta 35",
            4.4547,
            air.speed(27.78, true, true),
            Tolerance.absolute(6e-5),
            "m/s");
  }

  /** Reported on the car; the label's guess must not rule it out. */
  private void label() throws ScenarioException {
    Scenario scenario =
        LoopText.read(LoopText.PIECES.replaceFirst("pump: .*\n", "pump: {label: 200 L/min}\n"));
    double low = loopFlow(scenario, "10 %", "12 kPa");
    double high = loopFlow(scenario, "70 %", "48 kPa");
    list.from(
            Kind.TRADE,
            "a pump labelled 200 L/min made 14 L/min in its loop, 40 L/min is strong: common practice,"
                + " no source; middle and half width are of the ends of the label's intervals")
        .add(
            "labelled 200 L/min",
            (low + high) / 2,
            14,
            Tolerance.absolute((high - low) / 2),
            "L/min")
        .add(
            "labelled 200 L/min, as assumed",
            23,
            loopFlow(scenario, "40 %", "30 kPa"),
            Tolerance.absolute(10),
            "L/min");
  }

  private static double loopFlow(Scenario scenario, String share, String shutOff)
      throws ScenarioException {
    Scenario changed =
        scenario.with(java.util.Map.of("pump.label-share", share, "pump.shut-off", shutOff));
    if (!(changed.rig().loop().pump().delivery() instanceof PumpDelivery.Pushing)) {
      throw new IllegalStateException("a pump by its label pushes");
    }
    return LoopPoint.of(changed.rig().loop(), changed.rig().coolant(), WARM).flow()
        / LITRE_PER_MINUTE;
  }
}
