package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.scenario.StarterScenario;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Warning;

/** What a scenario made from a log says, against the invented session that the log recorded. */
class StarterSessionTest {
  private static final double THIRD = 0.024;
  private static final Signal[] USUAL = {
    Signal.ENGINE_SPEED,
    Signal.THROTTLE,
    Signal.BOOST,
    Signal.CHARGE_TEMPERATURE,
    Signal.CORE_COOLANT_IN,
    Signal.INLET_AIR
  };

  @TempDir Path folder;

  private record Made(String text, Scenario scenario, Outcome outcome) {
    List<Phase> phases() {
      return scenario.session().phases();
    }
  }

  private Made made(Log invented) throws Exception {
    WrittenLog log = WrittenLog.of(invented, folder.resolve("invented.csv"));
    LogReading reading =
        LogStudy.of(LogReader.read(log.file(), log.columns()), LogOptions.DEFAULTS);
    Path target = folder.resolve("made.yaml");
    String text = StarterScenario.of(reading, log.columns(), log.file(), target, UnitSystem.METRIC);
    Files.writeString(target, text);
    Scenario scenario = ScenarioReader.read(target);
    return new Made(text, scenario, Run.of(scenario));
  }

  private static void assertAligned(Outing outing, Made made) {
    double zero = made.scenario().logged().orElseThrow().startsAt();
    assertEquals(outing.pulls().size(), made.outcome().pulls().size(), made.text());
    for (int i = 0; i < outing.pulls().size(); i++) {
      PullResult pull = made.outcome().pulls().get(i);
      assertEquals(outing.pulls().get(i).start() - zero, pull.startTime(), 0.8, made.text());
      assertEquals(outing.pulls().get(i).end() - zero, pull.endTime(), 0.8, made.text());
    }
    assertTrue(
        made.outcome().warnings().stream().noneMatch(w -> w.kind() == Warning.Kind.PULLS_APART),
        made.outcome().warnings() + made.text());
  }

  /** Pulls alike are one step; a longer wait and a lifted pull stand by themselves. */
  @Test
  @Tag("analytic")
  void pullsAlikeAreOneStep() throws Exception {
    Outing outing = new Outing().idle(15);
    for (int i = 0; i < 4; i++) {
      outing.runUp(2600, 3).pull(6700, 10).idle(60);
    }
    outing.idle(45).runUp(2600, 3).abort(4400, 4.4).idle(40).runUp(2600, 3).pull(6700, 10).idle(20);
    Made made = made(new Recorder(0.1, 1, USUAL).record(outing));

    assertAligned(outing, made);
    assertTrue(made.text().contains("  - pulls: 4 "), made.text());
    assertEquals(1, made.text().split("lifted early", -1).length - 1, made.text());
  }

  /** The engine off for 150 s between pulls is off in the scenario, within 3 s. */
  @Test
  @Tag("analytic")
  void engineOffIsKept() throws Exception {
    Outing outing = new Outing().idle(10);
    for (int i = 0; i < 3; i++) {
      outing.runUp(2400, 3).hold(4).pull(6500, 9).idle(12).off(150).crank().idle(25);
    }
    Made made = made(new Recorder(0.1, 8, USUAL).record(outing));

    assertAligned(outing, made);
    double[] off =
        made.phases().stream()
            .filter(p -> p.drive() instanceof Drive.EngineOff)
            .mapToDouble(Phase::duration)
            .toArray();
    assertEquals(3, off.length, made.text());
    for (double each : off) {
      assertEquals(150, each, 3);
    }
  }

  /** A car that drives for most of the log is followed; its pulls are stated. */
  @Test
  @Tag("analytic")
  void aDriveIsReplayed() throws Exception {
    Outing outing = new Outing().idle(5);
    for (int i = 0; i < 3; i++) {
      outing.drive(80).runUp(2500, 2).pull(6200, 7, 0.4, THIRD, false).coast(1600, 12, THIRD);
    }
    outing.drive(40);
    Signal[] signals = {
      Signal.ENGINE_SPEED, Signal.ROAD_SPEED, Signal.BOOST, Signal.CHARGE_TEMPERATURE
    };
    Made made = made(new Recorder(0.1, 5, signals).record(outing));

    assertAligned(outing, made);
    assertTrue(made.phases().stream().allMatch(p -> p.drive() instanceof Drive.Replay));
    assertEquals(outing.duration(), made.scenario().session().endTime(), 0.2);
  }

  /** Without boost a drive is no full load: it becomes cruises. */
  @Test
  @Tag("analytic")
  void aDriveWithoutBoostIsCruised() throws Exception {
    Outing outing = new Outing().idle(5);
    for (int i = 0; i < 2; i++) {
      outing.drive(80).runUp(2500, 2).pull(6200, 7, 0.4, THIRD, false).coast(1600, 12, THIRD);
    }
    outing.drive(40);
    Signal[] signals = {
      Signal.ENGINE_SPEED, Signal.ROAD_SPEED, Signal.THROTTLE, Signal.CHARGE_TEMPERATURE
    };
    Made made = made(new Recorder(0.1, 6, signals).record(outing));

    assertAligned(outing, made);
    assertTrue(made.phases().stream().anyMatch(p -> p.drive() instanceof Drive.Cruise));
    assertTrue(made.text().contains("boost: 70 kPa +/- 30 %"), made.text());
    assertTrue(made.text().contains("curve: [[0 s, "), made.text());
  }

  /** Throttle alone shows pulls but no speeds; a charge temperature alone shows neither. */
  @Test
  void poorLogsRunToo() throws Exception {
    Outing outing = Outing.fourPulls();
    Made throttle =
        made(new Recorder(0.1, 1, Signal.THROTTLE, Signal.CHARGE_TEMPERATURE).record(outing));
    assertAligned(outing, throttle);
    assertTrue(throttle.text().contains("GUESS: replace from and to"), throttle.text());
    Made charge = made(new Recorder(0.1, 1, Signal.CHARGE_TEMPERATURE).record(outing));
    assertTrue(charge.outcome().pulls().isEmpty());
    assertEquals(outing.duration(), charge.scenario().session().endTime(), 0.2);
  }

  /**
   * Boost of the invented logs: the top value times 1 - 0.11 s^2, s the share of the sweep that is
   * left. Read from the middle of five noisy pulls it is off by 0.2 psi at the most, three steps of
   * its display.
   */
  @Test
  @Tag("analytic")
  void boostIsTheMiddleOfThePulls() throws Exception {
    Path log = Path.of("scenarios", "logs", "cool-morning.csv").toAbsolutePath();
    LogReading reading = LogStudy.of(LogReader.read(log, LogColumns.NONE), LogOptions.DEFAULTS);
    Path target = folder.resolve("made.yaml");
    Files.writeString(
        target, StarterScenario.of(reading, LogColumns.NONE, log, target, UnitSystem.US));
    Curve boost = ScenarioReader.read(target).rig().boost().orElseThrow();
    assertTrue(boost.size() >= 4 && boost.size() <= 8, boost.toString());
    for (int i = 0; i < boost.size(); i++) {
      double left = (6700 - 60 * boost.place(i)) / 4100;
      double truth = 13 * 6894.757 * (1 - 0.11 * left * left);
      assertEquals(truth, boost.value(i), 0.2 * 6894.757, "at " + 60 * boost.place(i));
    }
    assertTrue(60 * boost.place(0) < 3600 && 60 * boost.place(boost.size() - 1) > 6300);
  }

  /** Swapped channels are named the right way round, so that the scenario reads them so. */
  @Test
  @Tag("analytic")
  void swappedChannelsAreNamedTheRightWayRound() throws Exception {
    Outing outing = Outing.fourPulls();
    Log right =
        new Recorder(
                0.1,
                3,
                Signal.ENGINE_SPEED,
                Signal.BOOST,
                Signal.CORE_AIR_IN,
                Signal.CHARGE_TEMPERATURE)
            .record(outing);
    java.util.Map<Signal, double[]> values = new java.util.EnumMap<>(Signal.class);
    for (Signal signal : right.signals()) {
      Signal held =
          switch (signal) {
            case CORE_AIR_IN -> Signal.CHARGE_TEMPERATURE;
            case CHARGE_TEMPERATURE -> Signal.CORE_AIR_IN;
            default -> signal;
          };
      values.put(
          signal,
          IntStream.range(0, right.size()).mapToDouble(i -> right.value(held, i)).toArray());
    }
    double[] time = IntStream.range(0, right.size()).mapToDouble(right::time).toArray();
    Made made = made(new Log("swapped.csv", time, values, List.of(), List.of()));

    LogReading reading = made.scenario().logged().orElseThrow().reading();
    assertEquals(
        right.value(Signal.CHARGE_TEMPERATURE, 500),
        reading.log().value(Signal.CHARGE_TEMPERATURE, 500),
        1e-9);
    assertFalse(
        reading.findings().stream()
            .anyMatch(f -> f.kind() == soakloop.reading.Finding.Kind.SWAPPED));
  }

  /** The log is found from another folder, above or beside, and far away. */
  @Test
  void theLogIsFoundFromAnywhere() throws Exception {
    Path log = Files.createDirectories(folder.resolve("a b/ü")).resolve("zug #1, \"kalt\".csv");
    Files.copy(Path.of("scenarios", "logs", "cool-morning.csv"), log);
    LogReading reading = LogStudy.of(LogReader.read(log, LogColumns.NONE), LogOptions.DEFAULTS);
    for (String place : List.of("a b/ü", "a b", "c", "d/e/f/g/h/i")) {
      Path target = Files.createDirectories(folder.resolve(place)).resolve("made.yaml");
      String text = StarterScenario.of(reading, LogColumns.NONE, log, target, UnitSystem.US);
      Files.writeString(target, text);
      assertEquals(
          reading.log().size(),
          ScenarioReader.read(target).logged().orElseThrow().log().size(),
          text);
      assertEquals(!place.startsWith("d"), !text.contains(folder.toString()), text);
    }
  }
}
