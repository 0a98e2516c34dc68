package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.invented.DressedLog;
import soakloop.invented.LogDress;
import soakloop.invented.LogDresses;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.scenario.StarterScenario;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** Scenarios made from logs run as they stand, with their pulls where the log has them. */
class StarterScenarioTest {
  private static final Path PIN =
      Path.of("src", "test", "resources", "soakloop", "starter", "cool-morning.yaml");

  @TempDir Path folder;

  static List<LogDress> dresses() {
    return LogDresses.all();
  }

  private static String made(Path log, LogColumns columns, Path target) throws Exception {
    LogReading reading = LogStudy.of(LogReader.read(log, columns), LogOptions.DEFAULTS);
    UnitSystem units = StarterScenario.unitsOf(reading.log());
    String text = StarterScenario.of(reading, columns, log, target, units);
    Files.writeString(target, text);
    return text;
  }

  /** The lines that are offered, taken in. */
  private static String takenIn(String text) {
    return text.lines()
        .map(line -> line.replaceFirst("^( *)# ([a-z-]+: )", "$1$2"))
        .collect(Collectors.joining("\n"));
  }

  private static Outcome check(Path log, LogColumns columns, Path target) throws Exception {
    String text = made(log, columns, target);
    Scenario scenario = ScenarioReader.read(target);
    LogReading before = LogStudy.of(LogReader.read(log, columns), LogOptions.DEFAULTS);
    LogReading after = scenario.logged().orElseThrow().reading();
    assertEquals(before.channels().keySet(), after.channels().keySet(), text);
    for (Signal signal : before.channels().keySet()) {
      assertArrayEquals(
          before.updates(signal).values(), after.updates(signal).values(), signal + text);
    }
    Outcome outcome = Run.of(scenario);
    assertEquals(before.pulls().size(), outcome.trace().pulls().size(), text + before.pulls());
    for (int i = 0; i < before.pulls().size(); i++) {
      Trace.Span pull = outcome.trace().pulls().get(i);
      double zero = scenario.logged().orElseThrow().startsAt();
      assertEquals(before.pulls().get(i).start() - zero, pull.start(), 0.6, text);
      assertEquals(before.pulls().get(i).end() - zero, pull.end(), 1.1, text);
    }
    assertEquals(
        List.of(),
        outcome.warnings().stream().filter(w -> w.kind() != Warning.Kind.LOG_INCOMPLETE).toList(),
        text);
    Scenario all =
        ScenarioReader.parse(
            "taken in", takenIn(text), java.util.Objects.requireNonNull(target.getParent()));
    assertTrue(all.assumed().size() < scenario.assumed().size(), text);
    return outcome;
  }

  @ParameterizedTest
  @ValueSource(strings = {"cool-morning.csv", "denser-core.csv", "traffic-recovery.csv"})
  void shippedLogs(String file) throws Exception {
    Path log = Path.of("scenarios", "logs", file).toAbsolutePath();
    Outcome outcome = check(log, LogColumns.NONE, folder.resolve("starter.yaml"));
    assertFalse(outcome.pulls().isEmpty());
    System.out.println(Files.readString(folder.resolve("starter.yaml")));
    outcome
        .pulls()
        .forEach(
            p -> System.out.println(p.sensor().end() - p.logged().orElseThrow().sensor().end()));
  }

  /** A pin of one whole text, to show what changes; no truth. */
  @Test
  @Tag("regression")
  void coolMorningReadsAsPinned() throws Exception {
    Path log = folder.resolve("cool-morning.csv");
    Files.copy(Path.of("scenarios", "logs", "cool-morning.csv"), log);
    String text = made(log, LogColumns.NONE, folder.resolve("starter.yaml"));
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(PIN, text);
    }
    assertEquals(
        Files.readString(PIN),
        text,
        "changed: mvn test -Dtest=StarterScenarioTest -Dsoakloop.write=true");
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void dressedLogs(LogDress dress) throws Exception {
    dressed(dress);
  }

  @RepeatedTest(25)
  void randomDresses(RepetitionInfo repetition) throws Exception {
    dressed(LogDresses.random(new Random(7000 + 8 * repetition.getCurrentRepetition())));
  }

  private void dressed(LogDress dress) throws Exception {
    Path log = folder.resolve("prüf stand").resolve("zug 1.csv");
    Files.createDirectories(folder.resolve("prüf stand"));
    Files.write(log, DressedLog.of(dress).bytes());
    OptionalDouble rate =
        dress.time() == LogDress.Time.ABSENT ? OptionalDouble.of(10) : OptionalDouble.empty();
    Path target = folder.resolve("out").resolve("starter.yaml");
    Files.createDirectories(folder.resolve("out"));
    check(log, new LogColumns(Map.of(), rate), target);
    assertTrue(Files.readString(target).contains("file: \"../prüf stand/zug 1.csv\""));
  }
}
