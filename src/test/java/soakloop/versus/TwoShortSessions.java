package soakloop.versus;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import soakloop.fit.FitCase;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** Two invented cores in short sessions, quickly run. */
final class TwoShortSessions {
  private TwoShortSessions() {}

  /**
   * Writes a scenario.
   *
   * @param core conductance, W/K
   * @param start of the loop, degC
   * @param day degC
   * @param boost psi
   * @param wait s
   */
  static Scenario scenario(
      String name, double core, double start, double day, double boost, double wait)
      throws ScenarioException {
    String text =
        String.format(
            Locale.ROOT,
            """
            title: Invented short session, %s
            units: us
            day: {temperature: %.3f degC, pressure: 100 kPa, humidity: 40 %%}
            engine: {displacement: 4.1 L, volumetric-efficiency: 96 %%, idle-speed: 850 rpm}
            blower: {displacement: 1.7 L/rev, drive-ratio: 2.35, adiabatic-efficiency: 62 %% +/- 4 points}
            boost: %.3f psi
            core:
              mass: 3.4 kg
              coolant: 0.9 L
              conductance: {value: %.3f W/K +/- 8 %%, air-flow: 0.5 kg/s, coolant-flow: 25 L/min}
            loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]
            reservoir: {volume: 5 L}
            pump: {flow: 22 L/min +/- 15 %%}
            heat-exchanger: {face: {width: 660 mm, height: 300 mm}}
            coolant: {glycol: ethylene, by-volume: 30 %%}
            airflow: {shop-fan: weak}
            limits: {charge-temperature: 54 degC}
            start: {loop-coolant: %.3f degC, engine-coolant: 88 degC}
            session:
              - pulls: 2
                pull: {from: 2600 rpm, to: 6700 rpm, in: 8 s, counted-to: 6500 rpm}
                wait: {for: %.3f s}
            """,
            name,
            day,
            boost,
            core,
            start,
            wait);
    return ScenarioReader.parse(name, text, Path.of("."));
  }

  /** Draws a scenario about another. */
  static Scenario drawn(String name, Random random) throws ScenarioException {
    return scenario(
        name,
        500 + 500 * random.nextDouble(),
        20 + 15 * random.nextDouble(),
        12 + 20 * random.nextDouble(),
        8 + 5 * random.nextDouble(),
        40 + 60 * random.nextDouble());
  }

  static Contender contender(String label, Scenario scenario) {
    return new Contender(
        label, List.of(FitCase.planned(label, scenario, List.of(Signal.CHARGE_TEMPERATURE))));
  }

  static VersusPlan plan(int threads, Contender... contenders) {
    return new VersusPlan(
        List.of(contenders),
        List.of("core"),
        Optional.empty(),
        PullFigure.END,
        0,
        0.95,
        VersusPlan.FEWEST_DRAWS,
        threads);
  }
}
