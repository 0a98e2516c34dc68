package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.log.MadeUpLog.column;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Gauge is absolute less the barometer, wherever that is known from. Logs are invented. */
@Tag("analytic")
class BarometerTest {
  @TempDir Path folder;

  private static double absolute(double t, double load) {
    return t < 10 ? 99 : load > 0 ? 100 + 85 * load : 36;
  }

  private Log read(Map<String, MadeUpLog.Course> columns, double offUntil) throws Exception {
    return MadeUpLog.read(folder, columns, offUntil, LogColumns.NONE);
  }

  private static List<String> remarks(Log log) {
    return log.remarks().stream()
        .filter(r -> r.kind() == Remark.Kind.BAROMETER)
        .map(Remark::text)
        .toList();
  }

  @Test
  void aStatedOneMakesBoost() throws Exception {
    Log bare = read(Map.of("MAP [kPa]", BarometerTest::absolute), 0);
    assertFalse(bare.has(Signal.BOOST));
    Log log = bare.withBarometer(97.5e3);
    assertEquals(36e3 - 97.5e3, log.value(Signal.BOOST, 300), 1e-6);
    String reason = "made from manifold-pressure less 97.5 kPa, the stated barometer";
    Log.Column made = column(log, "manifold-pressure less barometer");
    assertEquals(reason, made.remark());
    assertEquals(Optional.of(Signal.BOOST), made.signal());
    assertEquals(List.of("boost is " + reason), remarks(log));
    assertFalse(bare.has(Signal.BOOST), "the log as read stays");
  }

  @Test
  void aStatedOneMakesAnAbsolutePressure() throws Exception {
    Log log = read(Map.of("Boost [kPa]", (t, l) -> l > 0 ? 90 * l : -62), 0).withBarometer(100.4e3);
    assertEquals(38.4e3, log.value(Signal.MANIFOLD_PRESSURE, 300), 1e-6);
    assertEquals(
        List.of("manifold-pressure is made from boost plus 100.4 kPa, the stated barometer"),
        remarks(log));
  }

  @Test
  void theLogsOwnGoesBeforeAndAContradictionIsSaid() throws Exception {
    Map<String, MadeUpLog.Course> columns =
        Map.of("MAP [kPa]", BarometerTest::absolute, "Baro [kPa]", (t, l) -> 97);
    Log log = read(columns, 0).withBarometer(101.3e3);
    assertEquals(36e3 - 97e3, log.value(Signal.BOOST, 300), 1e-6);
    assertEquals(
        List.of(
            "the stated barometer, 101.3 kPa, is 4.3 kPa above the log's own, 97.0 kPa (the"
                + " barometer's usual value); one of the two is wrong; pressures of the log are"
                + " reckoned by its own"),
        remarks(log));
    assertEquals(List.of(), remarks(read(columns, 0).withBarometer(97.9e3)));
  }

  @Test
  void anEngineThatStandsAndTwoScalesTellItToo() throws Exception {
    Log off = read(Map.of("MAP [kPa]", BarometerTest::absolute), 10).withBarometer(92e3);
    assertTrue(remarks(off).get(0).contains("7.0 kPa below the log's own, 99.0 kPa"));
    Log both =
        read(
                Map.of(
                    "MAP [kPa]",
                    (t, l) -> 36 + 150 * l,
                    "Boost [kPa]",
                    (t, l) -> 36 + 150 * l - 95),
                0)
            .withBarometer(101e3);
    assertTrue(
        remarks(both).get(0).contains("95.0 kPa (what manifold-pressure and boost differ by"));
  }

  @Test
  void whatIsNoBarometerIsRefused() throws Exception {
    Log log = read(Map.of("MAP [kPa]", BarometerTest::absolute), 0);
    assertThrows(IllegalArgumentException.class, () -> log.withBarometer(101.3));
    assertThrows(IllegalArgumentException.class, () -> log.withBarometer(Double.NaN));
  }
}
