package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.study.Outcome;
import soakloop.study.Run;

/** Bands against what follows from the spreads alone. */
@Tag("analytic")
class RunBandsTest {
  /** Nothing is assumed of what moves the charge here but what the tests give a spread. */
  private static final String CAR =
      """
      day: {temperature: 20 degC +/- 3 K, pressure: 101.3 kPa, humidity: 50 %, warming: 0 K}
      engine: {displacement: 4 L, volumetric-efficiency: 92 %, idle-speed: 800 rpm,
        idle-manifold-pressure: 38 kPa}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35, volumetric-efficiency: 92 %,
        adiabatic-efficiency: 62 %, inlet-pick-up: 5 K, inlet-loss: 2 kPa,
        case: {mass: 9 kg, conductance: 15 W/K, surroundings-conductance: 5 W/K}}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core, heat-exchanger]
      pump: {flow: 20 L/min}
      heat-exchanger: {face: {width: 660 mm, height: 300 mm}}
      coolant: {glycol: none}
      limits: {charge-temperature: 60 degC}
      start: {loop-coolant: 24 degC}
      session:
        - pulls: 2
          pull: {from: 2600 rpm, to: 6700 rpm, in: 10 s}
          wait: {for: 30 s}
      """;

  private static Outcome outcome(String text) throws Exception {
    return Run.of(ScenarioReader.parse("car", text, Path.of("")));
  }

  private static RunBands bands(String text, int draws, int threads) throws Exception {
    return RunBands.of(outcome(text), draws, threads).orElseThrow();
  }

  @Test
  void areTheSameOnAnyNumberOfThreads() throws Exception {
    assertEquals(bands(CAR, 64, 1), bands(CAR, 64, 3));
  }

  /** A coolant known to 4 K starts 4 K either way; the model's own error adds as squares. */
  @Test
  void aSpreadOfTheStartIsThatOfTheCoolant() throws Exception {
    RunBands bands = bands(CAR.replace("24 degC", "24 degC +/- 4 K"), 512, 2);
    Band start = bands.pulls().get(0).numbers().get(PullNumber.CORE_INLET_START);
    double own = 0.8 * 1.6448536;
    assertEquals(Math.hypot(4, own), start.half(), 0.15);
    assertEquals(297.15, start.middle(), 0.2);
    assertEquals(start.low(), bands.courses().get(Channel.CORE_COOLANT_IN).get(0).low(), 0.01);
  }

  /** What reads wrong throughout is in every level, and does not change how far a reading rises. */
  @Test
  void theSensorsBiasIsInItsLevelAndNotInItsRise() throws Exception {
    RunBands.OfPull little = bands(CAR + bias("0.1 K"), 256, 2).pulls().get(0);
    RunBands.OfPull much = bands(CAR + bias("40 K"), 256, 2).pulls().get(0);
    double level = much.numbers().get(PullNumber.SENSOR_END).half();
    double own = little.numbers().get(PullNumber.SENSOR_END).half();
    // 256 draws give a half width to some 7 %.
    assertEquals(Math.hypot(40, own), level, 3.5);
    assertEquals(
        little.numbers().get(PullNumber.SENSOR_RISE), much.numbers().get(PullNumber.SENSOR_RISE));
    assertEquals(
        little.numbers().get(PullNumber.CHARGE_END), much.numbers().get(PullNumber.CHARGE_END));
  }

  private static String bias(String spread) {
    return fitted("0", "20 degC")
        .replace(
            "{key: blower.inlet-pick-up, value: 5 K +/- 6 K}",
            "{key: bias.charge-temperature, value: 0 K +/- " + spread + "}");
  }

  /**
   * Little but the temperature of the blower's inlet moves its air mass here, and that is the sum
   * of two keys: of half widths 12 K together, 6 sqrt 2 K alone, next to nothing against each
   * other.
   */
  @Test
  void correlationOfAFitIsKept() throws Exception {
    String spread =
        CAR.replace("temperature: 20 degC +/- 3 K", "temperature: 20 degC +/- 6 K")
            .replace("inlet-pick-up: 5 K", "inlet-pick-up: 5 K +/- 6 K");
    double apart = airMass(spread);
    double opposed = airMass(spread + fitted("-0.999", "20 degC")) / apart;
    assertTrue(opposed < 0.35, () -> "opposed " + opposed);
    assertEquals(Math.sqrt(2), airMass(spread + fitted("0.999", "20 degC")) / apart, 0.12);
    // A value that is not the fitted one any more stands for itself.
    assertEquals(1, airMass(spread + fitted("-0.999", "21 degC")) / apart, 0.05);
  }

  private static double airMass(String text) throws Exception {
    return bands(text, 256, 2).pulls().get(0).numbers().get(PullNumber.AIR_MASS_FLOW_PEAK).half();
  }

  private static String fitted(String correlation, String day) {
    return """
        fitted:
          log: x.csv
          sha-256: 0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef
          date: 2026-03-14
          version: 1.2.3
          keys:
            - {key: day.temperature, value: %s +/- 6 K}
            - {key: blower.inlet-pick-up, value: 5 K +/- 6 K}
          correlation: [[1], [%s, 1]]
        """
        .formatted(day, correlation);
  }

  @Test
  void aSummaryHasEveryNumberOfEveryPull() throws Exception {
    RunBands bands = bands(CAR, 32, 2);
    assertEquals(2, bands.pulls().size());
    for (RunBands.OfPull pull : bands.pulls()) {
      for (PullNumber number : PullNumber.values()) {
        boolean ofGeometry =
            number == PullNumber.CORE_LOSS || number == PullNumber.BOOST_BEFORE_CORE;
        assertEquals(!ofGeometry, pull.numbers().containsKey(number), number.name());
      }
    }
    assertEquals(0, bands.lost());
    assertFalse(bands.correlated());
    assertFalse(bands.ownError());
  }
}
