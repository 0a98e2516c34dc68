package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.log.MadeUpLog.column;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.log.MadeUpLog.Course;

/**
 * What names leave open is told by values: idle vacuum, the barometer with the engine off, a warm
 * engine's coolant, what rises in a pull (all common practice, no source). Logs are invented.
 */
@Tag("trade")
class MeaningTest {
  @TempDir Path folder;

  private Log read(Map<String, Course> columns, double offUntil) throws IOException, LogException {
    return read(columns, offUntil, LogColumns.NONE);
  }

  private Log read(Map<String, Course> columns, double offUntil, LogColumns said)
      throws IOException, LogException {
    return MadeUpLog.read(folder, columns, offUntil, said);
  }

  private static double absolute(double t, double load) {
    return t < 10 ? 99 : load > 0 ? 100 + 85 * load : 36;
  }

  @Test
  void theBarometerShowsWithTheEngineOffAndMakesBoost() throws Exception {
    Log log = read(Map.of("Intake pressure [kPa]", MeaningTest::absolute), 10);
    Log.Column column = column(log, "Intake pressure [kPa]");
    assertEquals(Optional.of(Signal.MANIFOLD_PRESSURE), column.signal());
    assertEquals("reads 99 kPa with the engine off, so absolute", column.remark());
    assertEquals(36e3 - 99e3, log.value(Signal.BOOST, 300), 1);
    Log.Column made = column(log, "manifold-pressure less barometer");
    assertEquals(Confidence.LIKELY, made.confidence());
    assertEquals(
        "made from manifold-pressure less 99.0 kPa, the manifold with the engine off",
        made.remark());
  }

  @Test
  void aLoggedBarometerMakesBoost() throws Exception {
    Log log = read(Map.of("MAP [kPa]", MeaningTest::absolute, "Baro [kPa]", (t, load) -> 97), 0);
    assertEquals(36e3 - 97e3, log.value(Signal.BOOST, 300), 1);
  }

  @Test
  void withoutABarometerThereIsNoBoost() throws Exception {
    Log log = read(Map.of("MAP [kPa]", (t, load) -> load > 0 ? 180 : 36), 0);
    assertTrue(log.has(Signal.MANIFOLD_PRESSURE));
    assertFalse(log.has(Signal.BOOST));
  }

  @Test
  void aVacuumBelowZeroIsGaugeWhateverTheName() throws Exception {
    Log log = read(Map.of("MAP [kPa]", (t, load) -> load > 0 ? 85 : -64), 0);
    assertEquals("goes down to -64 kPa, so gauge", column(log, "MAP [kPa]").remark());
    assertEquals(-64e3, log.value(Signal.BOOST, 5), 1);
  }

  @Test
  void pressuresWithoutAUnitAreToldBySize() throws Exception {
    assertEquals("psi", column(read(Map.of("MAP", (t, l) -> l > 0 ? 27 : 5.2), 0), "MAP").unit());
    assertEquals("kPa", column(read(Map.of("MAP", (t, l) -> l > 0 ? 190 : 36), 0), "MAP").unit());
    assertEquals("bar", column(read(Map.of("MAP", (t, l) -> l > 0 ? 1.9 : 0.36), 0), "MAP").unit());
  }

  @Test
  void aWarmEngineTellsTheUnitOfAllTemperatures() throws Exception {
    Log celsius = read(Map.of("ECT", (t, l) -> 88 + t / 100, "IAT2", (t, l) -> 40 + 20 * l), 0);
    assertEquals("degC", column(celsius, "IAT2").unit());
    assertEquals(Confidence.LIKELY, column(celsius, "IAT2").confidence());
    Log fahrenheit =
        read(Map.of("ECT", (t, l) -> 190 + t / 100, "IAT2", (t, l) -> 100 + 30 * l), 0);
    assertEquals("degF", column(fahrenheit, "IAT2").unit());
  }

  @Test
  void aColdEngineTellsNothing() throws Exception {
    Log log = read(Map.of("ECT", (t, l) -> 40 + t / 10, "IAT2", (t, l) -> 40 + 20 * l), 0);
    assertFalse(log.has(Signal.CHARGE_TEMPERATURE));
    assertTrue(column(log, "IAT2").remark().startsWith("has no unit"));
  }

  @Test
  void whatRisesInAPullIsTheChargeAndWhatStaysIsTheInlet() throws Exception {
    Log log =
        read(
            Map.of("Air temp 1 [degC]", (t, l) -> 24, "Air temp 2 [degC]", (t, l) -> 38 + 14 * l),
            0);
    assertEquals(Optional.of(Signal.INLET_AIR), column(log, "Air temp 1 [degC]").signal());
    assertEquals(Optional.of(Signal.CHARGE_TEMPERATURE), column(log, "Air temp 2 [degC]").signal());
    assertEquals(
        "it rises by 14 K as the engine speeds up, as the charge after the core does",
        column(log, "Air temp 2 [degC]").remark());
  }

  @Test
  void whatJumpsInAPullIsAirBeforeTheCore() throws Exception {
    Log log = read(Map.of("IAT [degC]", (t, l) -> 40 + 90 * l), 0);
    assertEquals(Optional.of(Signal.CORE_AIR_IN), column(log, "IAT [degC]").signal());
    // one pull only: it could be chance
    assertEquals(Confidence.GUESSED, column(log, "IAT [degC]").confidence());
  }

  @Test
  void aSmallRiseSettlesNothing() throws Exception {
    Log log = read(Map.of("IAT [degC]", (t, l) -> 30 + 3.5 * l), 0);
    assertEquals(
        "it may be air before the blower or after the core: it rises by 4 K as the engine speeds"
            + " up, which settles nothing; name it in the scenario to use it",
        column(log, "IAT [degC]").remark());
  }

  @Test
  void coolantInAndOutAreOfWhatItWarmsIn() throws Exception {
    Log core =
        read(
            Map.of(
                "Water in [degC]", (t, l) -> 28 + 2 * l, "Water out [degC]", (t, l) -> 29 + 9 * l),
            0);
    assertEquals(Optional.of(Signal.CORE_COOLANT_IN), column(core, "Water in [degC]").signal());
    Log front =
        read(
            Map.of(
                "Water in [degC]", (t, l) -> 29 + 9 * l, "Water out [degC]", (t, l) -> 28 + 2 * l),
            0);
    assertEquals(Optional.of(Signal.CORE_COOLANT_OUT), column(front, "Water in [degC]").signal());
  }

  @Test
  void hotCoolantIsTheEngines() throws Exception {
    Log log = read(Map.of("Coolant temp [degC]", (t, l) -> 90), 0);
    assertEquals(
        "it stands at 90 degC, as a warm engine's does",
        column(log, "Coolant temp [degC]").remark());
  }

  @Test
  void columnsOfTheSameValuesAreOne() throws Exception {
    Log log =
        read(
            Map.of(
                "IAT2 [degC]", (t, l) -> 40 + 20 * l, "Charge temp [degC]", (t, l) -> 40 + 20 * l),
            0);
    assertTrue(log.has(Signal.CHARGE_TEMPERATURE));
  }

  @Test
  void anAirFuelRatioBecomesLambda() throws Exception {
    Log log = read(Map.of("AFR", (t, l) -> l > 0 ? 11.76 : 14.7), 0);
    assertEquals(0.8, log.value(Signal.LAMBDA, 450), 1e-9);
    assertEquals(Confidence.LIKELY, column(log, "AFR").confidence());
  }

  @Test
  void aStatedRateMakesTimesAndGoesBeforeATimeColumn() throws Exception {
    Log log =
        read(
            Map.of("IAT2 [degC]", (t, l) -> 40 + 20 * l),
            0,
            new LogColumns(Map.of(), OptionalDouble.of(20)));
    assertEquals(0.05, log.time(1), 1e-12);
    assertEquals("another column is taken for time", column(log, "Time [s]").remark());
  }
}
