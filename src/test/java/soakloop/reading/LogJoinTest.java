package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.LogException;
import soakloop.log.Remark;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;

/** Two invented logs of one session with a known offset between their clocks. */
class LogJoinTest {
  private static final Signal[] ENGINE = {
    Signal.ENGINE_SPEED, Signal.BOOST, Signal.CHARGE_TEMPERATURE
  };
  private static final Signal[] DYNO = {Signal.ENGINE_SPEED, Signal.WHEEL_POWER, Signal.TORQUE};

  /** Three pulls unlike each other: 10, 8 and 6.5 s long. */
  private static Outing unlike() {
    return new Outing()
        .idle(20)
        .runUp(2600, 3)
        .pull(6700, 10)
        .idle(70)
        .runUp(2600, 3)
        .pull(6700, 8)
        .idle(45)
        .runUp(2600, 3)
        .pull(6700, 6.5)
        .idle(30);
  }

  private static Outing alike(int pulls) {
    Outing outing = new Outing().idle(20);
    for (int i = 0; i < pulls; i++) {
      outing.runUp(2600, 3).pull(6700, 10).idle(60);
    }
    return outing;
  }

  private static RpmMatch match(Log engine, Log dyno) throws LogException {
    return LogJoin.of(engine, dyno, OptionalDouble.empty()).match();
  }

  /** The whole session by both; rows of either at 1 to 50 Hz, noise from 3 to 15 rpm. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.02, 5, 3",
    "0.1, 0.1, 15, 15",
    "0.05, 0.1, 5, 10",
    "0.25, 0.02, 8, 3",
    "1, 0.02, 5, 3",
    "0.02, 0.5, 5, 5"
  })
  @Tag("analytic")
  void findsTheOffsetOfAWholeSession(
      double engineRows, double dynoRows, double engineNoise, double dynoNoise) throws Exception {
    Outing outing = unlike();
    double truth = -137.283;
    Log engine =
        new Recorder(engineRows, 1, ENGINE)
            .with(Signal.ENGINE_SPEED, engineNoise / 60, 1.0 / 60)
            .record(outing);
    Log dyno =
        new Recorder(dynoRows, 2, DYNO)
            .with(Signal.ENGINE_SPEED, dynoNoise / 60, 1.0 / 60)
            .record(outing, 0, outing.duration(), -truth);
    RpmMatch match = match(engine, dyno);
    double off = Math.abs(match.offset().value() - truth);
    assertTrue(off <= match.offset().spread(), off + " outside " + match.offset());
    assertTrue(off < 0.25 * Math.max(engineRows, dynoRows), match.toString());
    assertTrue(match.unique(), match.toString());
    assertEquals(1, match.scale().value(), engineRows > 0.5 ? 0.006 : 0.003);
  }

  /** The 90 % interval holds the truth about nine times in ten, and is not far too wide. */
  @Test
  @Tag("analytic")
  void certaintyIsHonest() throws Exception {
    Outing outing = unlike();
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    int held = 0;
    for (int seed = 0; seed < 20; seed++) {
      double from = 100 + 0.0137 * seed;
      Log dyno =
          new Recorder(0.05, seed, DYNO)
              .with(Signal.ENGINE_SPEED, 12.0 / 60, 1.0 / 60)
              .record(outing, Math.rint(from * 100) / 100, 125, 0);
      RpmMatch match = match(engine, dyno);
      double off = Math.abs(match.offset().value() - Math.rint(from * 100) / 100);
      held += off <= match.offset().spread() ? 1 : 0;
      assertTrue(match.offset().spread() < 0.15, match.toString());
    }
    assertTrue(held >= 18, held + " of 20");
  }

  @Test
  @Tag("analytic")
  void onePullAgainstFiveAlikeHasFourRivals() throws Exception {
    Outing outing = alike(5);
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    double start = outing.pulls().get(2).start();
    Log dyno = new Recorder(0.05, 2, DYNO).record(outing, start, start + 10, 0);
    RpmMatch match = match(engine, dyno);
    assertEquals(4, match.rivals().size(), match.toString());
    assertFalse(match.unique());
    assertTrue(match.drift().isEmpty());
    for (Outing.TruePull pull : outing.pulls()) {
      assertTrue(
          IntStream.range(-1, 4)
              .mapToDouble(i -> i < 0 ? match.offset().value() : match.rivals().get(i).offset())
              .anyMatch(offset -> Math.abs(offset - pull.start()) < 0.05),
          match.toString());
    }
    RpmMatch told = LogJoin.of(engine, dyno, OptionalDouble.of(start + 4)).match();
    assertEquals(start, told.offset().value(), 0.05);
  }

  @Test
  @Tag("analytic")
  void onePullAgainstUnlikeOnesIsUnique() throws Exception {
    Outing outing = unlike();
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    double start = outing.pulls().get(1).start();
    Log dyno = new Recorder(0.05, 2, DYNO).record(outing, start, start + 8, 500);
    RpmMatch match = match(engine, dyno);
    assertTrue(match.unique(), match.toString());
    assertEquals(start - 500, match.offset().value(), 0.05);
  }

  /** A clock that runs 400 parts in a million slow, as a cheap one does on a cold day. */
  @Test
  @Tag("analytic")
  void clockThatRunsSlowIsFoundAndTakenOut() throws Exception {
    Outing outing = alike(6);
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    Log even = new Recorder(0.05, 2, DYNO).record(outing);
    double rate = 400e-6;
    double[] slow = IntStream.range(0, even.size()).mapToDouble(even::time).toArray();
    Arrays.setAll(slow, i -> slow[i] / (1 + rate) + 33);
    LogJoin join = LogJoin.of(engine, withTime(even, slow), OptionalDouble.empty());
    Estimate drift = join.match().drift().orElseThrow();
    assertEquals(rate, drift.value(), drift.spread() + 20e-6);
    assertTrue(join.match().driftApplied(), join.match().toString());
    for (double t : new double[] {25, 200, 400}) {
      assertEquals(t, join.match().toFirst(t / (1 + rate) + 33), 0.05);
    }
  }

  @Test
  @Tag("analytic")
  void equalClocksHaveNoDrift() throws Exception {
    Outing outing = alike(4);
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    RpmMatch match = match(engine, new Recorder(0.05, 2, DYNO).record(outing, 0, 300, 7));
    assertEquals(0, match.drift().orElseThrow().value(), 100e-6);
  }

  /** A dyno that takes engine speed from its rollers is off by a share. */
  @Test
  @Tag("analytic")
  void speedThatIsOffByAShareIsAllowedFor() throws Exception {
    Outing outing = unlike();
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    Log dyno = new Recorder(0.05, 2, DYNO).record(outing, 0, outing.duration(), 40);
    double[] speed =
        IntStream.range(0, dyno.size())
            .mapToDouble(i -> dyno.value(Signal.ENGINE_SPEED, i) / 1.02)
            .toArray();
    Log off =
        new Log(
            "dyno.csv",
            IntStream.range(0, dyno.size()).mapToDouble(dyno::time).toArray(),
            Map.of(Signal.ENGINE_SPEED, speed),
            List.of(),
            List.of());
    RpmMatch match = match(engine, off);
    assertEquals(1.02, match.scale().value(), 0.002);
    assertEquals(-40, match.offset().value(), 0.05);
  }

  @Test
  @Tag("analytic")
  void joinedLogHasTheRowsOfBothAndPowerWhereItBelongs() throws Exception {
    Outing outing = unlike();
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing);
    Log dyno = new Recorder(0.05, 2, DYNO).record(outing, 22.98, 34, 0);
    Log log = LogJoin.of(engine, dyno, OptionalDouble.empty()).log();
    assertEquals(engine.size() + dyno.size(), log.size(), 5);
    LogReading reading = LogStudy.of(log, LogOptions.DEFAULTS);
    assertEquals(3, reading.pulls().size());
    assertTrue(reading.table().get(0).power().isPresent());
    assertTrue(reading.table().get(1).power().isEmpty());
    Updates power = reading.updates(Signal.WHEEL_POWER);
    assertEquals(23, power.time(power.from(power.time(0))), 0.1);
  }

  @Test
  void joinedLogKeepsTheRemarksOfBothWithTheirFilesNames() throws Exception {
    Outing outing = unlike();
    Remark gap = new Remark(Remark.Kind.TIME_GAP, 4, 5, "60.0 s without rows");
    Remark cells = new Remark(Remark.Kind.CELLS, 9, 9, "row 9, column `P`: `x` is no number");
    Log engine = new Recorder(0.1, 1, ENGINE).record(outing).withRemarks(List.of(gap, cells));
    Log dyno = new Recorder(0.05, 2, DYNO).record(outing, 22.98, 34, 0).withRemarks(List.of(gap));
    Log log = LogJoin.of(engine, dyno, OptionalDouble.empty()).log();
    String name = "invented.csv: ";
    assertEquals(
        List.of(gap.of("invented.csv"), cells.of("invented.csv"), gap.of("invented.csv")),
        log.remarks());
    assertEquals(name + "60.0 s without rows", log.remarks().get(2).text());
    assertEquals(9, log.remarks().get(1).firstRow());
  }

  @Test
  void strangersAndLogsWithoutSpeedAreRefused() {
    Log engine = new Recorder(0.1, 1, ENGINE).record(unlike());
    Outing other = new Outing().idle(5).runUp(1500, 2).pull(7300, 25).idle(5);
    assertSays("nowhere", engine, new Recorder(0.1, 2, DYNO).record(other, 6, 33, 0));
    assertSays("no engine speed", engine, new Recorder(0.1, 2, Signal.TORQUE).record(other));
    assertSays("no pull", engine, new Recorder(0.1, 2, DYNO).record(other, 0, 4, 0));
    assertSays("must cover", new Recorder(0.1, 1, ENGINE).record(other, 0, 12, 0), engine);
  }

  private static void assertSays(String what, Log first, Log second) {
    LogException said =
        assertThrows(LogException.class, () -> LogJoin.of(first, second, OptionalDouble.empty()));
    assertTrue(said.problems().toString().contains(what), said.problems().toString());
  }

  private static Log withTime(Log log, double[] time) {
    Map<Signal, double[]> values = new java.util.EnumMap<>(Signal.class);
    for (Signal signal : log.signals()) {
      values.put(
          signal, IntStream.range(0, log.size()).mapToDouble(i -> log.value(signal, i)).toArray());
    }
    return new Log(log.name(), time, values, log.columns(), log.notes());
  }
}
