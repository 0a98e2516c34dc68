package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * Two cores on one car and one loop, three pulls each (common practice, no source; degF, sensor
 * after the core): the first from 108 to 155 at the counted end and 162 just past it, then peaks of
 * 170 and 171; the other, lighter and with other fins, 109 to 141, 124 to 153, 135 to 162. Fitted
 * to the first two pulls of both, the model is asked for the third ones; fitted to all, it must
 * show them all. The rig is invented; what nobody knows of it is a key with a wide prior, waits (1
 * to 16 minutes) among them.
 */
@Tag("trade")
class TwoCoresTest {
  /** What model and hand-written readings are believed to be off by, K (our judgement). */
  private static final double OFF = 1.0;

  private static final double STEP = 0.05;

  /** What a reading is of. */
  private enum Of {
    START,
    END,
    PEAK
  }

  /** One reading, degF. */
  private record Reading(int core, int pull, Of of, double fahrenheit) {}

  private static final List<Reading> FACTS =
      List.of(
          new Reading(0, 0, Of.START, 108),
          new Reading(0, 0, Of.END, 155),
          new Reading(0, 0, Of.PEAK, 162),
          new Reading(0, 1, Of.PEAK, 170),
          new Reading(0, 2, Of.PEAK, 171),
          new Reading(1, 0, Of.START, 109),
          new Reading(1, 0, Of.END, 141),
          new Reading(1, 1, Of.START, 124),
          new Reading(1, 1, Of.END, 153),
          new Reading(1, 2, Of.START, 135),
          new Reading(1, 2, Of.END, 162));

  /**
   * A key: the cores it belongs to, its middle, and its deviation (of the logarithm if it has a
   * unit that begins at zero).
   */
  private record Key(
      String path,
      String unit,
      boolean first,
      boolean second,
      double middle,
      double deviation,
      boolean even) {
    String at(double place) {
      double value = even ? middle + deviation * place : middle * Math.exp(deviation * place);
      return String.format(Locale.ROOT, "%.9g %s", value, unit);
    }
  }

  private static final List<Key> KEYS =
      List.of(
          new Key("core.conductance.value", "W/K", true, false, 1500, 0.3, false),
          new Key("core.conductance.value", "W/K", false, true, 1500, 0.3, false),
          new Key("core.mass", "kg", true, false, 5, 0.25, false),
          new Key("core.mass", "kg", false, true, 4, 0.25, false),
          new Key("session.3.wait.for", "s", true, false, 240, 0.85, false),
          new Key("session.3.wait.for", "s", false, true, 240, 0.85, false),
          new Key("session.5.wait.for", "s", true, false, 240, 0.85, false),
          new Key("session.5.wait.for", "s", false, true, 240, 0.85, false),
          new Key("start.charge", "degF", true, false, 108, 2, true),
          new Key("start.charge", "degF", false, true, 109, 2, true),
          new Key("start.loop-coolant", "degF", true, false, 105, 3, true),
          new Key("start.loop-coolant", "degF", false, true, 105, 3, true),
          new Key("pump.flow", "L/min", true, true, 35, 0.25, false),
          new Key("reservoir.volume", "L", true, true, 12, 0.35, false),
          new Key("heat-exchanger.conductance.value", "W/K", true, true, 200, 0.4, false),
          new Key("sensor.time-constant", "s", true, true, 2, 0.4, false),
          new Key("plenum.conductance", "W/K", true, true, 15, 0.4, false),
          new Key("plenum.engine-conductance", "W/K", true, true, 8, 0.4, false),
          new Key("blower.adiabatic-efficiency", "%", true, true, 66, 3, true),
          new Key("day.temperature", "degF", true, true, 104, 3, true));

  private static final String RIG =
      """
      title: Invented blown V8, one of two cores
      units: us
      day: {temperature: 104 degF, pressure: 100 kPa, humidity: 30 %}
      engine: {displacement: 5.5 L, idle-speed: 850 rpm}
      blower: {displacement: 2.65 L/rev, drive-ratio: 2.5, adiabatic-efficiency: 66 %}
      boost: [[2000 rpm, 20.5 psi], [3500 rpm, 21.5 psi], [8000 rpm, 22 psi]]
      core:
        mass: 5 kg
        coolant: 1.5 L
        conductance: {value: 1500 W/K, air-flow: 0.6 kg/s, coolant-flow: 30 L/min}
        passes: {count: 2, arranged: depth}
      plenum: {conductance: 15 W/K, engine-conductance: 8 W/K}
      sensor: {time-constant: 2 s}
      loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]
      reservoir: {volume: 12 L}
      pump: {flow: 35 L/min}
      heat-exchanger:
        face: {width: 600 mm, height: 400 mm}
        coolant: 2 L
        conductance: {value: 200 W/K, air-flow: 1 kg/s, coolant-flow: 20 L/min}
      coolant: {glycol: ethylene, by-volume: 40 %}
      start: {charge: 108 degF, loop-coolant: 105 degF, engine-coolant: 200 degF}
      session:
        - idle: {for: 10 s}
        - pull: {from: 2000 rpm, to: 8000 rpm, in: 10 s, counted-to: 7400 rpm}
        - wait: {for: 240 s}
        - pull: {from: 2000 rpm, to: 8000 rpm, in: 10 s, counted-to: 7400 rpm}
        - wait: {for: 240 s}
        - pull: {from: 2000 rpm, to: 8000 rpm, in: 10 s, counted-to: 7400 rpm}
        - wait: {for: 30 s}
      """;

  private static double kelvin(double fahrenheit) {
    return (fahrenheit - 32) / 1.8 + 273.15;
  }

  private final Scenario rig;

  TwoCoresTest() throws ScenarioException {
    rig = ScenarioReader.parse("two-cores", RIG, Path.of("."));
  }

  private Trace run(int core, double[] place) {
    Map<String, String> changes = new LinkedHashMap<>();
    for (int k = 0; k < place.length; k++) {
      Key key = KEYS.get(k);
      if (core == 0 ? key.first() : key.second()) {
        changes.put(key.path(), key.at(place[k]));
      }
    }
    try {
      return Simulation.run(rig.with(changes).setup().withoutLimit(), FitModel.OPTIONS);
    } catch (ScenarioException | SimulationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What the model says of each reading, K. */
  private double[] shown(double[] place, List<Reading> readings) {
    List<Trace> traces = List.of(run(0, place), run(1, place));
    double[] shown = new double[readings.size()];
    for (int i = 0; i < shown.length; i++) {
      Reading reading = readings.get(i);
      Trace trace = traces.get(reading.core());
      Trace.Span pull = trace.pulls().get(reading.pull());
      shown[i] =
          switch (reading.of()) {
            case START -> trace.at(Channel.SENSOR, pull.start());
            case END -> trace.at(Channel.SENSOR, pull.countedAt());
            case PEAK -> peak(trace, pull);
          };
    }
    return shown;
  }

  private static double peak(Trace trace, Trace.Span pull) {
    double peak = 0;
    for (int i = trace.firstFrom(pull.start());
        i < trace.size() && trace.time(i) < pull.end() + 20;
        i++) {
      peak = Math.max(peak, trace.value(Channel.SENSOR, i));
    }
    return peak;
  }

  /** What each reading changes by for each key, K. */
  private double[][] slopes(double[] place, double[] here, List<Reading> readings) {
    double[][] slopes = new double[here.length][place.length];
    for (int k = 0; k < place.length; k++) {
      double[] moved = place.clone();
      moved[k] += STEP;
      double[] there = shown(moved, readings);
      for (int i = 0; i < here.length; i++) {
        slopes[i][k] = (there[i] - here[i]) / STEP;
      }
    }
    return slopes;
  }

  private LeastSquares.Solution fitted(List<Reading> readings) {
    return LeastSquares.search(
        residuals(readings), new double[KEYS.size()], new LeastSquares.Patience(1e-4, 1e-4, 25));
  }

  private LeastSquares.Residuals residuals(List<Reading> readings) {
    return new LeastSquares.Residuals() {
      @Override
      public double[] at(double[] place) {
        double[] all = Arrays.copyOf(shown(place, readings), readings.size() + place.length);
        for (int i = 0; i < readings.size(); i++) {
          all[i] = (all[i] - kelvin(readings.get(i).fahrenheit())) / OFF;
        }
        System.arraycopy(place, 0, all, readings.size(), place.length);
        return all;
      }

      @Override
      public double[][] slopes(double[] place) {
        double[][] raw = TwoCoresTest.this.slopes(place, shown(place, readings), readings);
        double[][] all = new double[readings.size() + place.length][place.length];
        for (int k = 0; k < place.length; k++) {
          for (int i = 0; i < readings.size(); i++) {
            all[i][k] = raw[i][k] / OFF;
          }
          all[readings.size() + k][k] = 1;
        }
        return all;
      }
    };
  }

  /**
   * The lighter core's third pull follows within 6 degF. The other's does not: the likeliest keys
   * let it peak at 180 +/- 5 degF, 9 above what is seen, so nothing is asserted of it. Its second
   * peak alone does not tell that its loop settles as quickly as the third one shows; fitted to
   * all, it does.
   */
  @Test
  void thirdPullOfTheLighterCoreFollowsFromTheFirstTwo() {
    List<Reading> firstTwo = FACTS.stream().filter(r -> r.pull() < 2).toList();
    List<Reading> third = FACTS.stream().filter(r -> r.pull() == 2 && r.core() == 1).toList();
    double[] shown = shown(fitted(firstTwo).point().toArray(), third);
    for (int i = 0; i < shown.length; i++) {
      assertEquals(kelvin(third.get(i).fahrenheit()), shown[i], 6 / 1.8, third.get(i).toString());
    }
  }

  /**
   * All eleven readings within 4 degF, with 5 to 7 of the 20 keys decided by them, none further
   * from what was believed than 3 deviations and all within what a scenario takes (it would throw).
   * The lighter core takes 1 to 15 % more heat from air 100 K above its coolant.
   */
  @Test
  void allPullsAreShown() {
    LeastSquares.Solution found = fitted(FACTS);
    double[] place = found.point().toArray();
    double[] shown = shown(place, FACTS);
    for (int i = 0; i < shown.length; i++) {
      assertEquals(kelvin(FACTS.get(i).fahrenheit()), shown[i], 4 / 1.8, FACTS.get(i).toString());
    }
    assertTrue(found.point().getLInfNorm() < 3, found.point().toString());
    RealMatrix covariance = covariance(residuals(FACTS).slopes(place));
    double effective = KEYS.size() - covariance.getTrace();
    assertTrue(effective > 4 && effective < 7, effective + " keys decided by " + FACTS.size());
    double ratio = ratio(place);
    double[] gradient = new double[place.length];
    for (int k = 0; k < place.length; k++) {
      double[] moved = place.clone();
      moved[k] += 2 * STEP;
      gradient[k] = Math.log(ratio(moved) / ratio) / (2 * STEP);
    }
    double half = FitKey.NINETY * deviation(gradient, covariance);
    assertTrue(
        ratio * Math.exp(-half) > 1.01 && ratio * Math.exp(half) < 1.15, ratio + " within " + half);
  }

  /** Returns what the first pull rises by with a core when both start as the first did, K. */
  private double riseAtOneStart(int core, double[] place) {
    double[] alike = place.clone();
    for (int k = 0; k < alike.length; k++) {
      if (KEYS.get(k).path().startsWith("start.") && KEYS.get(k).second()) {
        alike[k] =
            (KEYS.get(k - 1).middle()
                    + KEYS.get(k - 1).deviation() * place[k - 1]
                    - KEYS.get(k).middle())
                / KEYS.get(k).deviation();
      }
    }
    Trace trace = run(core, alike);
    Trace.Span pull = trace.pulls().get(0);
    return trace.at(Channel.SENSOR, pull.countedAt()) - trace.at(Channel.SENSOR, pull.start());
  }

  private double reduction(double[] place) {
    return 1 - riseAtOneStart(1, place) / riseAtOneStart(0, place);
  }

  /**
   * By the readings the lighter core's first pull rises 32 instead of 47 degF, 32 % less. Started
   * alike on one loop it would rise 29 +/- 9 % less by the fit: the starts were only 1 degF apart,
   * so here the raw number is nearly fair. The interval is wide because nobody logged the coolant,
   * and what a core's mass takes up in a first pull cannot be told from what its fins pass on.
   */
  @Test
  void firstPullsRiseIsReducedAtOneStart() {
    double raw = 1 - (141 - 109) / (155.0 - 108);
    double[] place = fitted(FACTS).point().toArray();
    double same = reduction(place);
    double[] gradient = new double[place.length];
    for (int k = 0; k < place.length; k++) {
      double[] moved = place.clone();
      moved[k] += 2 * STEP;
      gradient[k] = (reduction(moved) - same) / (2 * STEP);
    }
    double half = FitKey.NINETY * deviation(gradient, covariance(residuals(FACTS).slopes(place)));
    assertEquals(0.319, raw, 5e-4);
    assertTrue(Math.abs(same - raw) < half, same + " +/- " + half);
    assertTrue(same - half > 0.2 && same + half < 0.45, same + " +/- " + half);
  }

  private static RealMatrix covariance(double[][] slopes) {
    RealMatrix white = MatrixUtils.createRealMatrix(slopes);
    return Evidence.inverse(white.transposeMultiply(white));
  }

  private static double deviation(double[] gradient, RealMatrix covariance) {
    RealVector vector = new ArrayRealVector(gradient);
    return Math.sqrt(vector.dotProduct(covariance.operate(vector)));
  }

  private double ratio(double[] place) {
    return duty(1, place) / duty(0, place);
  }

  private double duty(int core, double[] place) {
    Trace trace = run(core, place);
    return Quantity.CORE_DUTY.of(trace);
  }
}
