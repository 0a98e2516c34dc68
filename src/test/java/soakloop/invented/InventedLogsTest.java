package soakloop.invented;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The shipped logs are what the generator makes, and the generator behaves.
 *
 * <p>To write the logs anew: {@code mvn test -Dtest=InventedLogsTest -Dsoakloop.write=true}.
 */
class InventedLogsTest {
  private static final Path FOLDER = Path.of("scenarios", "logs");
  private static final Map<InventedLog, TruthRun> RUNS = new EnumMap<>(InventedLog.class);

  @BeforeAll
  static void runEverySessionOnce() throws IOException {
    for (InventedLog log : InventedLog.values()) {
      RUNS.put(log, log.run());
    }
    if (Boolean.getBoolean("soakloop.write")) {
      WriteInventedLogs.main(new String[] {FOLDER.toString()});
    }
  }

  private static TruthRun run(InventedLog log) {
    TruthRun run = RUNS.get(log);
    if (run == null) {
      throw new IllegalStateException("no run of " + log);
    }
    return run;
  }

  @ParameterizedTest
  @EnumSource
  @Tag("regression")
  void shippedLogIsTheGeneratorsToTheByte(InventedLog log) throws IOException {
    byte[] shipped = Files.readAllBytes(FOLDER.resolve(log.fileName()));
    byte[] made = log.text(run(log)).getBytes(StandardCharsets.UTF_8);
    assertArrayEquals(made, shipped);
  }

  /** What entered and did not leave is stored: exact, whatever the session. */
  @ParameterizedTest
  @EnumSource
  @Tag("analytic")
  void heatIsNeitherMadeNorLost(InventedLog log) {
    assertEquals(0, run(log).residual(), 0.005);
  }

  /** Later pulls start and end hotter, in shrinking steps: common practice, no source. */
  @ParameterizedTest
  @EnumSource(names = {"COOL_MORNING", "DENSER_CORE"})
  @Tag("trade")
  void laterPullsRunHotterInShrinkingSteps(InventedLog log) {
    TruthRun run = run(log);
    assertShrinkingRise(pull -> run.at(DynoDay.pullStart(pull)).sensor());
    assertShrinkingRise(pull -> run.at(DynoDay.pullStart(pull) + DynoDay.countedAfter()).sensor());
    for (int pull = 1; pull < 5; pull++) {
      double before = run.at(DynoDay.pullStart(pull - 1)).coreIn();
      assertTrue(run.at(DynoDay.pullStart(pull)).coreIn() > before, "coolant, pull " + (pull + 1));
    }
  }

  private static void assertShrinkingRise(ToDoubleFunction<Integer> ofPull) {
    double last = Double.POSITIVE_INFINITY;
    for (int pull = 1; pull < 5; pull++) {
      double rise = ofPull.applyAsDouble(pull) - ofPull.applyAsDouble(pull - 1);
      assertTrue(rise > 0 && rise < last, "pull " + (pull + 1) + " rose by " + rise);
      last = rise;
    }
  }

  /** A moving car cools its soaked loop: common practice, no source. */
  @ParameterizedTest
  @EnumSource(names = "TRAFFIC_RECOVERY")
  @Tag("trade")
  void roadSpeedCoolsTheSoakedCar(InventedLog log) {
    TruthRun run = run(log);
    double jam = run.at(0).sensor();
    double road = run.at(RoadHome.PULL_START).sensor();
    double cruise = run.at(log.duty().duration()).sensor();
    assertTrue(jam > road + 10 && road > cruise + 3, jam + " " + road + " " + cruise);
    assertTrue(run.at(RoadHome.PULL_START).coreIn() < run.at(0).coreIn() - 8);
  }
}
