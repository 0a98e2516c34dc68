package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.invented.DressedLog;
import soakloop.invented.LogDress;
import soakloop.invented.LogDresses;

/** One session in every dress that loggers give their files reads back to the same numbers. */
class DressedLogsTest {
  @TempDir Path folder;

  static List<LogDress> dresses() {
    return LogDresses.all();
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void readsBackWhatWasTrue(LogDress dress) throws Exception {
    check(dress);
  }

  @Test
  void thereAreEnough() {
    assertTrue(dresses().size() >= 40, dresses().size() + " dresses");
  }

  @RepeatedTest(200)
  void readsBackARandomDress(RepetitionInfo repetition) throws Exception {
    check(LogDresses.random(new Random(7000 + repetition.getCurrentRepetition())));
  }

  private void check(LogDress dress) throws Exception {
    DressedLog wanted = DressedLog.of(dress);
    Path file = folder.resolve("dressed.csv");
    Files.write(file, wanted.bytes());
    OptionalDouble rate =
        dress.time() == LogDress.Time.ABSENT ? OptionalDouble.of(10) : OptionalDouble.empty();

    Log log = LogReader.read(file, new LogColumns(Map.of(), rate));

    String of = dress + ": " + log.columns() + log.remarks();
    assertEquals(wanted.times().length, log.size(), of);
    Set<Signal> signals = signals(dress, wanted);
    assertEquals(signals, new TreeSet<>(log.signals()), of);
    for (int i = 0; i < log.size(); i++) {
      assertEquals(wanted.times()[i], log.time(i), wanted.timeGrain(), of);
      for (var entry : wanted.values().entrySet()) {
        if (!log.has(entry.getKey())) {
          continue;
        }
        double grain = wanted.grain().getOrDefault(entry.getKey(), 0.0);
        double value = entry.getValue()[i];
        assertEquals(value, log.value(entry.getKey(), i), grain, () -> entry.getKey() + of);
      }
    }
    if (dress.extra() == LogDress.Extra.TEXTS) {
      assertEquals(1, log.value(Signal.PUMP, 5));
    }
    if (log.has(Signal.BOOST) && log.has(Signal.MANIFOLD_PRESSURE)) {
      assertEquals(
          log.value(Signal.MANIFOLD_PRESSURE, 300) - wanted.barometer(),
          log.value(Signal.BOOST, 300),
          100);
    }
    boolean broken =
        dress.extra() == LogDress.Extra.BROKEN_QUOTE
            && log.remarks().stream().noneMatch(r -> r.text().contains("a quote opens"));
    assertFalse(broken, of);
  }

  /**
   * What a reader must find: what is written, less what nothing tells, and what follows from it.
   */
  private static Set<Signal> signals(LogDress dress, DressedLog wanted) {
    Set<Signal> signals = new TreeSet<>(wanted.values().keySet());
    if (dress.units() == LogDress.Units.NOWHERE) {
      signals.remove(Signal.ROAD_SPEED); // km/h or mph: nothing tells
    }
    if (dress.extra() == LogDress.Extra.TEXTS) {
      signals.add(Signal.PUMP);
    }
    if (dress.extra() == LogDress.Extra.ENGINE_OFF && signals.contains(Signal.MANIFOLD_PRESSURE)) {
      signals.add(Signal.BOOST);
    }
    if (signals.contains(Signal.BAROMETER)) {
      signals.add(Signal.MANIFOLD_PRESSURE);
    }
    return signals;
  }
}
