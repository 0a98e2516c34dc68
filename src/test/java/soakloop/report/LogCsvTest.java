package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.invented.LogDress;
import soakloop.invented.LogDresses;
import soakloop.log.Confidence;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.quantity.UnitSystem;
import soakloop.reading.PullReading;
import soakloop.reading.Updates;

/** A clean log says the same as the one it was made from, and nothing of it is a guess. */
class LogCsvTest {
  @TempDir private Path folder;

  static List<LogDress> dresses() {
    return LogDresses.all();
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void readsBackToTheSame(LogDress dress) throws Exception {
    LogSet set = LogViews.set(UnitSystem.METRIC, LogViews.dressed(dress, folder));
    Path clean = folder.resolve("clean.csv");
    Files.writeString(clean, LogCsv.of(set.first()));
    Log again = LogReader.read(clean, LogColumns.NONE);
    LogSheet second = LogViews.set(UnitSystem.METRIC, again).first();

    assertEquals(set.first().log().signals(), again.signals());
    assertTrue(
        again.columns().stream().allMatch(c -> c.confidence() != Confidence.GUESSED),
        again.columns().toString());
    for (Signal signal : again.signals()) {
      Updates before = set.first().reading().updates(signal);
      Updates after = second.reading().updates(signal);
      assertEquals(before.size(), after.size(), signal.key());
      for (int i = 0; i < before.size(); i++) {
        assertEquals(before.value(i), after.value(i), 1e-9 * Math.abs(before.value(i)) + 1e-9);
        assertEquals(before.time(i), after.time(i), 1e-9);
      }
    }
    pulls(set.first().reading().table(), second.reading().table());
  }

  private static void pulls(List<PullReading> before, List<PullReading> after) {
    assertEquals(before.size(), after.size());
    for (int i = 0; i < before.size(); i++) {
      assertEquals(before.get(i).pull().start(), after.get(i).pull().start(), 0.05);
      assertEquals(before.get(i).pull().end(), after.get(i).pull().end(), 0.05);
      same(before.get(i).counted(), after.get(i).counted());
      same(before.get(i).coolantStart(), after.get(i).coolantStart());
    }
  }

  private static void same(OptionalDouble before, OptionalDouble after) {
    assertEquals(before.isPresent(), after.isPresent());
    if (before.isPresent()) {
      assertEquals(before.getAsDouble(), after.getAsDouble(), 0.05);
    }
  }
}
