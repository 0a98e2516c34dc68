package soakloop.study;

import java.nio.file.Path;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** An invented car whose loop is written anew by each test. */
public final class LoopText {
  /** A pump and a loop of one known point, as in the handbook check of pump against parabola. */
  public static final String PARABOLA =
      """
      loop: [pump, core]
      pump: {label: 60 L/min, label-share: 100 %, shut-off: 45 kPa}
      plumbing: {pressure-loss: 30 kPa, at-flow: 30 L/min, exponent: 2}
      """;

  /** A whole loop whose pieces' losses count. */
  public static final String PIECES =
      """
      loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]
      reservoir: {volume: 4 L}
      pump: {curve: [[0 L/min, 60 kPa], [30 L/min, 42 kPa], [55 L/min, 0 kPa]]}
      supply-hose: {length: 1.8 m}
      return-hose: {length: 1.5 m}
      heat-exchanger: {face: {width: 660 mm, height: 300 mm}}
      airflow: {shop-fan: weak}
      """;

  /** The same with two heat exchangers side by side. */
  public static final String SIDE_BY_SIDE =
      """
      loop: [reservoir, pump, supply-hose, core, {parallel: [[left-hose, left-heat-exchanger], [right-heat-exchanger]]}]
      reservoir: {volume: 4 L}
      pump: {curve: [[0 L/min, 60 kPa], [30 L/min, 42 kPa], [55 L/min, 0 kPa]], efficiency: 25 %}
      supply-hose: {length: 1.8 m}
      left-hose: {length: 1.2 m, fittings: 4}
      left-heat-exchanger: {face: {width: 400 mm, height: 300 mm}}
      right-heat-exchanger: {face: {width: 300 mm, height: 300 mm}}
      airflow: {shop-fan: weak}
      """;

  private static final String CAR =
      """
      day: {temperature: 20 degC, pressure: 100 kPa}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
      coolant: {glycol: ethylene, by-volume: 50 %}
      start: {loop-coolant: 40 degC}
      session: [{idle: {for: 5 s}}, {pull: {from: 2600 rpm, to: 6700 rpm, in: 10 s}}, {wait: {for: 60 s}}]
      """;

  private LoopText() {}

  /** Reads the car with a loop. */
  public static Scenario read(String loop) throws ScenarioException {
    return ScenarioReader.parse("loop", CAR + loop, Path.of("."));
  }
}
