package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.invented.LogDress;
import soakloop.invented.LogDresses;
import soakloop.log.Confidence;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.UnitSystem;

/** What {@code log} prints. */
class LogTextTest {
  @TempDir private Path folder;

  static List<LogDress> dresses() {
    return LogDresses.all();
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void everyLineFitsEightyColumnsInEitherUnits(LogDress dress) throws Exception {
    Log log = LogViews.dressed(dress, folder);
    for (UnitSystem units : UnitSystem.values()) {
      String text = LogText.of(LogViews.set(units, log));
      assertTrue(text.lines().allMatch(l -> l.length() <= TextSummary.COLUMNS), text);
    }
  }

  /** Each column that is not sure is doubted by name, with its reason. */
  @ParameterizedTest
  @MethodSource("dresses")
  void whatIsNotSureIsDoubted(LogDress dress) throws Exception {
    Log log = LogViews.dressed(dress, folder);
    List<LogDoubt> doubts = LogDoubt.of(LogViews.set(UnitSystem.METRIC, log).first());
    String all = String.join("\n", doubts.stream().map(LogDoubt::text).toList());
    for (Log.Column column : log.columns()) {
      if (column.signal().isPresent() && column.confidence() != Confidence.SURE) {
        assertTrue(all.contains("`" + column.header() + "` as "), all);
        assertTrue(all.contains(column.remark()), all);
      }
    }
    log.remarks().forEach(r -> assertTrue(all.contains(r.text().substring(1)), all));
  }

  @Test
  void tellsTheSoakOfFivePulls() throws Exception {
    String text = LogText.of(LogViews.set(UnitSystem.US, LogViews.shipped("cool-morning.csv")));
    assertTrue(text.contains("Pull 5 reads 129 degF at 6500 rpm, 11 degF above pull 1."), text);
    assertTrue(text.contains("It starts 17 degF warmer"), text);
    List<String> lines = text.lines().toList();
    int head =
        IntStream.range(0, lines.size())
            .filter(i -> lines.get(i).startsWith("Pull     At  Start  At 6500"))
            .findFirst()
            .orElseThrow();
    for (int i = 1; i <= 5; i++) {
      assertTrue(lines.get(head + i).startsWith(String.valueOf(i)), text);
    }
  }

  @Test
  void twoLogsAreReadAtOneSpeedAndNotJudged() throws Exception {
    LogSet set =
        LogViews.set(
            UnitSystem.METRIC,
            LogViews.shipped("cool-morning.csv"),
            LogViews.shipped("denser-core.csv"));
    assertEquals(
        set.sheets().get(0).reading().countedSpeed(), set.sheets().get(1).reading().countedSpeed());
    String text = LogText.of(set);
    assertTrue(text.contains("do not yet say"), text);
    assertTrue(text.contains("0 cool-morning.csv\nRows"), text);
    assertTrue(text.contains("1 denser-core.csv\nRows"), text);
  }

  /** Engine speed stands still: no pull, and the reason is said. */
  @Test
  void noPullIsSaidWithItsReason() {
    double[] time = IntStream.range(0, 200).mapToDouble(i -> 0.1 * i).toArray();
    double[] idle = IntStream.range(0, 200).mapToDouble(i -> 14 + 0.05 * (i % 3)).toArray();
    double[] charge = IntStream.range(0, 200).mapToDouble(i -> 300 + 0.01 * i).toArray();
    Log log =
        new Log(
            "idle.csv",
            time,
            Map.of(Signal.ENGINE_SPEED, idle, Signal.CHARGE_TEMPERATURE, charge),
            List.of(),
            List.of());
    String text = LogText.of(LogViews.set(UnitSystem.METRIC, log));
    assertTrue(text.contains("No pull was found: no steady climb of engine speed"), text);
    assertFalse(text.contains("Pulls,"), text);
    Log without =
        new Log("t.csv", time, Map.of(Signal.CHARGE_TEMPERATURE, charge), List.of(), List.of());
    assertTrue(
        LogText.of(LogViews.set(UnitSystem.METRIC, without))
            .contains("neither engine speed nor road speed"));
  }

  @Test
  void aSetHasOneToSixLogsOfDifferentLabels() throws Exception {
    LogSheet sheet = LogViews.set(UnitSystem.METRIC, LogViews.shipped("cool-morning.csv")).first();
    OptionalDouble none = OptionalDouble.empty();
    assertThrows(
        IllegalArgumentException.class, () -> new LogSet(List.of(), UnitSystem.METRIC, none));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LogSet(List.of(sheet, sheet), UnitSystem.METRIC, none));
  }
}
