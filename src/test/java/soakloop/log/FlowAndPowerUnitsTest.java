package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.log.MadeUpLog.column;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Air mass flow, power and torque that say no unit. Conversions: pound 0.45359237 kg, horsepower
 * 550 ft lbf/s, so that power in hp and torque in lb-ft cross at 5252 rpm (by definition). Logs are
 * invented.
 */
class FlowAndPowerUnitsTest {
  @TempDir Path folder;

  private Log read(Map<String, MadeUpLog.Course> columns) throws Exception {
    return MadeUpLog.read(folder, columns, 0, LogColumns.NONE);
  }

  private static double kilopascal(double load) {
    return load > 0 ? 150 + 40 * load : 38;
  }

  /** What an engine swallows at 320 K, g/s: a volume each two turns of gas at that pressure. */
  private static double flow(double litres, double t, double load) {
    double density = kilopascal(load) * 1e3 / (287.05 * 320);
    return litres * density * MadeUpLog.rpm(t) / 120;
  }

  @ParameterizedTest
  @Tag("analytic")
  @CsvSource({
    "1.4, g/s, 1",
    "2.0, g/s, 1",
    "4.1, g/s, 1",
    "2.4, kg/h, 3.6",
    "4.1, kg/h, 3.6",
    "6.2, kg/h, 3.6",
    "1.4, lb/min, 0.13227736",
    "4.1, lb/min, 0.13227736",
    "7.5, lb/min, 0.13227736",
    "4.1, kg/s, 0.001"
  })
  void theEngineThatWouldSwallowItTellsTheUnit(double litres, String unit, double each)
      throws Exception {
    Log log =
        read(
            Map.of(
                "MAF", (t, l) -> flow(litres, t, l) * each, "MAP [kPa]", (t, l) -> kilopascal(l)));
    assertEquals(unit, column(log, "MAF").unit(), column(log, "MAF").remark());
    assertEquals(Confidence.LIKELY, column(log, "MAF").confidence());
    assertTrue(column(log, "MAF").remark().contains(litres + " L as " + unit));
  }

  @Test
  void twoEnginesThatBothExistLeaveItOpen() throws Exception {
    Log log = read(Map.of("MAF", (t, l) -> flow(6.2, t, l), "MAP [kPa]", (t, l) -> kilopascal(l)));
    assertFalse(log.has(Signal.AIR_MASS_FLOW));
    assertTrue(
        column(log, "MAF").remark().contains("6.2 L as g/s, 1.7 L as kg/h, 46.9 L as lb/min"),
        column(log, "MAF").remark());
    assertTrue(column(log, "MAF").remark().endsWith("which leaves g/s and kg/h"));
  }

  @Test
  @Tag("trade")
  void powerSettlesWhatTheSizeLeavesOpen() throws Exception {
    Log log =
        read(
            Map.of(
                "MAF",
                (t, l) -> flow(6.2, t, l),
                "MAP [kPa]",
                (t, l) -> kilopascal(l),
                "Power [kW]",
                (t, l) -> l > 0 ? 0.85 * flow(6.2, t, l) : 0));
    assertEquals("g/s", column(log, "MAF").unit());
    assertTrue(column(log, "MAF").remark().contains("0.85 kW a g/s"));
  }

  @ParameterizedTest
  @Tag("analytic")
  @CsvSource({
    "Power, Torque [Nm], kW, N m, 9549.297",
    "Power, Torque [lb-ft], hp, lb-ft, 5252.113",
    "Power, Torque [Nm], hp, N m, 7120.909",
    "Power [hp], Torque, hp, lb-ft, 5252.113",
    "Power [hp], Torque, hp, N m, 7120.909",
    "Power, Torque, hp, lb-ft, 5252.113",
    "Power, Torque, kW, N m, 9549.297",
  })
  void powerIsTorqueTimesSpeed(
      String power, String torque, String powerUnit, String torqueUnit, double crossing)
      throws Exception {
    MadeUpLog.Course course = (t, l) -> l > 0 ? 300 + 80 * l : 10;
    Log log =
        read(
            Map.of(power, (t, l) -> course.at(t, l) * MadeUpLog.rpm(t) / crossing, torque, course));
    assertEquals(powerUnit, column(log, power).unit(), column(log, power).remark());
    assertTrue(log.has(Signal.TORQUE) && log.has(Signal.WHEEL_POWER));
    assertEquals(
        log.value(Signal.TORQUE, 450) * log.value(Signal.ENGINE_SPEED, 450) * 2 * Math.PI,
        log.value(Signal.WHEEL_POWER, 450),
        3e-3 * log.value(Signal.WHEEL_POWER, 450));
    assertTrue(torqueUnit.replace(" ", "").equals(column(log, torque).unit().replace(" ", "")));
  }

  @Test
  @Tag("analytic")
  void powerAloneAndTorqueOfTheWheelsLeaveItOpen() throws Exception {
    Log alone = read(Map.of("Power", (t, l) -> 300 * l));
    assertFalse(alone.has(Signal.WHEEL_POWER));
    Log wheels = read(Map.of("Power", (t, l) -> l > 0 ? 300 * l : 0, "Torque", (t, l) -> 3400 * l));
    assertFalse(wheels.has(Signal.WHEEL_POWER) || wheels.has(Signal.TORQUE));
  }
}
