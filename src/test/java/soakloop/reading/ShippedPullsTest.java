package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.invented.Outing.TruePull;
import soakloop.invented.ShippedTruth;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;
import soakloop.quantity.Dimension;

/** What the shipped logs show, against what their generator was asked for. */
class ShippedPullsTest {
  private static final double THIRD_GEAR_RPM_PER_KMH = 1 / 0.024;

  private static LogReading read(String file) throws Exception {
    return LogStudy.of(
        LogReader.read(Path.of("scenarios", "logs", file), LogColumns.NONE), LogOptions.DEFAULTS);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cool-morning.csv", "denser-core.csv", "traffic-recovery.csv"})
  @Tag("analytic")
  void pullsAreFoundWithinThreeTenths(String file) throws Exception {
    List<TruePull> truth = ShippedTruth.pulls(file);
    LogReading reading = read(file);
    assertEquals(truth.size(), reading.pulls().size(), reading.pulls().toString());
    for (int i = 0; i < truth.size(); i++) {
      Pull pull = reading.pulls().get(i);
      assertEquals(truth.get(i).start(), pull.start(), 0.3);
      assertEquals(truth.get(i).end(), pull.end(), 0.3);
      assertTrue(!pull.aborted());
      assertEquals(truth.get(i).to(), pull.sweep().orElseThrow().to() * 60, 60);
    }
    assertEquals(truth.size() - 1, reading.waits().size());
    assertTrue(
        reading.waits().stream().allMatch(w -> w.engine() == Wait.Engine.RUNNING),
        reading.waits().toString());
  }

  /** The scenario beside it counts its pulls to 6500 rpm: the highest round speed below 6700. */
  @Test
  @Tag("trade")
  void coolMorningIsCountedWhereItsScenarioCountsIt() throws Exception {
    LogReading reading = read("cool-morning.csv");
    assertEquals(6500, reading.countedSpeed().orElseThrow() * 60, 1e-6);
    double counted = 10 * (6500 - 2600) / 4100.0;
    for (PullReading row : reading.table()) {
      assertEquals(row.pull().start() + counted, row.countedAt().orElseThrow(), 0.15);
      assertTrue(row.rise().orElseThrow() > 10 && row.boost().isPresent(), row.toString());
      assertTrue(row.power().isEmpty() && row.overLimit().isEmpty());
    }
    assertEquals(
        List.of("core-air-in"),
        reading.effectiveness().missing().stream().map(s -> s.key()).toList());
  }

  @Test
  @Tag("analytic")
  void gearingOfTheRoadPullIsThatOfThirdGear() throws Exception {
    double perMetre = read("traffic-recovery.csv").pulls().get(0).gearing().orElseThrow();
    double expected = THIRD_GEAR_RPM_PER_KMH / 60 * 3.6;
    assertEquals(expected, perMetre, 0.02 * expected);
    assertEquals("m/s", Dimension.SPEED.si().symbol());
  }
}
