package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.log.MadeUpLog.column;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One temperature of the loop, place not said: coolant that leaves the core warms with the charge
 * and falls soon after, coolant on its way there warms later and keeps it (common practice, no
 * source). Logs are invented; dresses add the true car's.
 */
@Tag("trade")
class LonePlaceTest {
  private static final String NAME = "Intercooler water temp [degC]";

  @TempDir Path folder;

  private Log read(Map<String, MadeUpLog.Course> columns) throws Exception {
    return MadeUpLog.read(folder, columns, 0, LogColumns.NONE);
  }

  private static List<String> remarks(Log log) {
    return log.remarks().stream()
        .filter(r -> r.kind() == Remark.Kind.COLUMNS)
        .map(Remark::text)
        .toList();
  }

  @Test
  void whatComesAndGoesWithThePullLeavesTheCore() throws Exception {
    Log log = read(Map.of(NAME, (t, l) -> t < 50 ? 28 + 14 * l : 30 + 12 * Math.exp((50 - t) / 3)));
    Log.Column column = column(log, NAME);
    assertEquals(Optional.of(Signal.CORE_COOLANT_OUT), column.signal());
    assertEquals(Confidence.GUESSED, column.confidence(), "one pull could be chance");
    assertEquals(
        "it warms by 14 K in a pull and falls soon after, as coolant that has just left the core"
            + " does",
        column.remark());
    assertEquals(
        List.of(
            "column `"
                + NAME
                + "` is taken for core-coolant-out: "
                + column.remark()
                + "; if it is not, write `core-coolant-in: \""
                + NAME
                + "\"` or `core-coolant-out: \""
                + NAME
                + "\"` or `reservoir: \""
                + NAME
                + "\"` under log, columns"),
        remarks(log));
  }

  @Test
  void whatWarmsAfterThePullOrKeepsItIsOnItsWayToTheCore() throws Exception {
    Log late = read(Map.of(NAME, (t, l) -> 28 + 6 / (1 + Math.exp((58 - t) / 1.5))));
    assertEquals(Optional.of(Signal.CORE_COOLANT_IN), column(late, NAME).signal());
    assertEquals(Confidence.GUESSED, column(late, NAME).confidence());
    assertTrue(column(late, NAME).remark().contains("only after a pull"));
    Log keeps =
        read(Map.of(NAME, (t, l) -> t < 50 ? 28 + 6 * l : 28 + 6 * Math.exp((50 - t) / 200)));
    assertEquals(Optional.of(Signal.CORE_COOLANT_IN), column(keeps, NAME).signal());
    assertTrue(column(keeps, NAME).remark().contains("stays warm, as coolant on its way"));
  }

  @Test
  void whatTellsNothingStaysOpenAndSaysHowToSettleIt() throws Exception {
    for (MadeUpLog.Course course :
        List.<MadeUpLog.Course>of(
            (t, l) -> 28, (t, l) -> t < 50 ? 28 + 6 * l : 28 + 6 * Math.exp((50 - t) / 45))) {
      Log log = read(Map.of(NAME, course));
      assertEquals(Optional.empty(), column(log, NAME).signal());
      assertEquals(1, remarks(log).size());
      assertTrue(remarks(log).get(0).contains("no pull tells; to read it, write `core-coolant-in"));
    }
  }

  @Test
  void besideAKnownPlaceNothingIsGuessed() throws Exception {
    Log log = read(Map.of(NAME, (t, l) -> 28 + 14 * l, "Core coolant in [degC]", (t, l) -> 28));
    assertEquals(Optional.empty(), column(log, NAME).signal());
    assertEquals(List.of(), remarks(log));
  }

  @Test
  void coolWaterBesideTheEnginesIsTheLoops() throws Exception {
    Log log =
        read(
            Map.of(
                "Water temp [degC]",
                (t, l) -> 28 + 6 / (1 + Math.exp((58 - t) / 1.5)),
                "ECT [degC]",
                (t, l) -> 90));
    assertEquals(Optional.of(Signal.CORE_COOLANT_IN), column(log, "Water temp [degC]").signal());
  }
}
