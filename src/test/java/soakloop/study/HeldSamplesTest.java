package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** Values that a logger repeats are used when they were measured, and cut-off ones as a least. */
@Tag("analytic")
class HeldSamplesTest {
  private static final double EXACT = 1e-9;
  private static final int ROWS = 401;

  @TempDir Path folder;

  private static double[] rows(java.util.function.IntToDoubleFunction value) {
    return IntStream.range(0, ROWS).mapToDouble(value).toArray();
  }

  /** A model that is right to the digit: its sensor climbs by 2 K a second. */
  private static Trace exact() {
    return new HandMade(0, 40)
        .with(Channel.SENSOR, 300, 380)
        .pull("pull 1", 10, 20, OptionalDouble.empty())
        .trace();
  }

  /** The log shows it once a second on ten rows: by rows it would seem 0.9 K low on average. */
  @Test
  void aRightModelIsNotOffAHeldLog() {
    Scenario.Logged logged =
        HandMade.logged(
            500,
            rows(i -> 0.1 * i),
            Map.of(Signal.CHARGE_TEMPERATURE, rows(i -> 300 + 2 * Math.floor(i / 10.0))));
    Comparison comparison = Comparisons.of(exact(), logged, Set.of(), OptionalDouble.of(330));

    Misfit misfit = comparison.misfit(Signal.CHARGE_TEMPERATURE).orElseThrow();
    assertEquals(41, misfit.count());
    assertEquals(0, misfit.rms(), EXACT);
    WholeRun whole = comparison.charge().orElseThrow();
    assertEquals(whole.modelled().overLimit(), whole.logged().overLimit(), EXACT);
    PullResult.Logged pull =
        PullResults.of(exact(), OptionalDouble.of(330), java.util.Optional.of(logged))
            .get(0)
            .logged()
            .orElseThrow();
    assertEquals(320, pull.sensor().start(), EXACT);
    assertEquals(340, pull.sensor().end(), EXACT);
    assertEquals(0, pull.fit().rms(), EXACT);
  }

  /** An impossible value is no misfit either: it is left out as the finding says. */
  @Test
  void aSpikeIsNoMisfit() {
    Scenario.Logged logged =
        HandMade.logged(
            0,
            rows(i -> 0.1 * i),
            Map.of(Signal.CHARGE_TEMPERATURE, rows(i -> i == 150 ? 500 : 300 + 0.2 * i)));
    Misfit misfit =
        Comparisons.of(exact(), logged, Set.of(), OptionalDouble.empty())
            .misfit(Signal.CHARGE_TEMPERATURE)
            .orElseThrow();
    assertEquals(ROWS - 1, misfit.count());
    assertEquals(0, misfit.rms(), 1e-6);
  }

  private Drive.Replay replayed(String log, String columns, String boost) throws Exception {
    Files.writeString(folder.resolve("log.csv"), log);
    String text = Files.readString(Path.of("scenarios", "traffic-recovery.yaml"));
    text =
        text.substring(0, text.indexOf("session:")).replaceFirst("boost: .*", "boost: " + boost)
            + "session: [{replay: {}}]\nlog: {file: log.csv, columns: {"
            + columns
            + "}}\n";
    Scenario scenario = ScenarioReader.parse("replayed", text, folder);
    return (Drive.Replay) scenario.session().phases().get(0).drive();
  }

  /** Engine speed climbs by 100 rpm a second and is held over five rows of a tenth each. */
  @Test
  void aReplayGoesStraightFromUpdateToUpdate() throws Exception {
    StringBuilder log = new StringBuilder("Time [s],Engine speed [rpm],Boost [kPa]\n");
    for (int i = 0; i < ROWS; i++) {
      log.append(String.format(Locale.ROOT, "%.1f,%d,%d%n", 0.1 * i, 2000 + 50 * (i / 5), i));
    }
    Drive.Replay replay = replayed(log.toString(), "engine-speed: 'Engine speed [rpm]'", "9 psi");
    for (double t = 0; t < 39.9; t += 0.07) {
      assertEquals(2000 + 100 * t, 60 * replay.engineSpeed().at(t), 1e-6);
    }
  }

  /**
   * Absolute pressure climbs by 6 kPa a second and ends at the 255 kPa of its byte: from there the
   * stated boost stands in, 180 kPa, since the true one is at least 155 kPa. Below it is as logged.
   */
  @Test
  void cutOffBoostGivesWayToTheStatedOne() throws Exception {
    StringBuilder log =
        new StringBuilder("Time [s],Engine speed [rpm],Manifold pressure [kPa],Barometer [kPa]\n");
    for (int i = 0; i < ROWS; i++) {
      log.append(
          String.format(
              Locale.ROOT,
              "%.1f,%d,%d,100%n",
              0.1 * i,
              2000 + 10 * i,
              Math.min(255, 55 + (int) Math.rint(0.6 * i))));
    }
    String pressure = "manifold-pressure: 'Manifold pressure [kPa]'";
    Drive.Replay replay = replayed(log.toString(), pressure, "180 kPa");
    double[] boost =
        Arrays.stream(new double[] {10, 30, 34, 39})
            .map(replay.boost().orElseThrow()::at)
            .toArray();
    assertEquals(15e3, boost[0], 600);
    assertEquals(135e3, boost[1], 600);
    assertEquals(180e3, boost[2], EXACT);
    assertEquals(180e3, boost[3], EXACT);
    Drive.Replay lower = replayed(log.toString(), pressure, "120 kPa");
    assertTrue(lower.boost().orElseThrow().at(35) >= 155e3 - 1);
  }
}
