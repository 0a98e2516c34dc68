package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.Signal;

/** Faults put into invented logs are found, named with their rows, and nothing else is. */
class FindingsTest {
  private static final Signal[] ALL = {
    Signal.ENGINE_SPEED,
    Signal.THROTTLE,
    Signal.BOOST,
    Signal.MANIFOLD_PRESSURE,
    Signal.CHARGE_TEMPERATURE,
    Signal.CORE_AIR_IN,
    Signal.CORE_COOLANT_IN,
    Signal.CORE_COOLANT_OUT,
    Signal.INLET_AIR,
    Signal.ENGINE_COOLANT
  };

  private static Log sound() {
    return new Recorder(0.1, 7, ALL).record(Outing.fourPulls());
  }

  /** The log with some of a signal's rows changed. */
  private static Log with(Log log, Signal signal, IntPredicate rows, IntToDoubleFunction value) {
    Map<Signal, double[]> values = columns(log);
    values.put(
        signal,
        IntStream.range(0, log.size())
            .mapToDouble(i -> rows.test(i) ? value.applyAsDouble(i) : log.value(signal, i))
            .toArray());
    return of(values, IntStream.range(0, log.size()).mapToDouble(log::time).toArray());
  }

  private static Map<Signal, double[]> columns(Log log) {
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    for (Signal signal : log.signals()) {
      values.put(
          signal, IntStream.range(0, log.size()).mapToDouble(i -> log.value(signal, i)).toArray());
    }
    return values;
  }

  private static Log of(Map<Signal, double[]> values, double[] time) {
    return new Log("faulty.csv", time, values, List.of(), List.of());
  }

  private static LogReading read(Log log) {
    return LogStudy.of(log, LogOptions.DEFAULTS);
  }

  private static Finding only(LogReading reading, Finding.Kind kind) {
    List<Finding> found = reading.findings().stream().filter(f -> f.kind() == kind).toList();
    assertEquals(1, found.size(), reading.findings().toString());
    assertFalse(found.get(0).seen().isBlank() || found.get(0).done().isBlank());
    return found.get(0);
  }

  @Test
  @Tag("analytic")
  void soundLogHasNoFindings() {
    for (long seed = 0; seed < 8; seed++) {
      LogReading reading = read(new Recorder(0.1, seed, ALL).record(Outing.fourPulls()));
      assertEquals(List.of(), reading.findings());
    }
  }

  @Test
  @Tag("analytic")
  void wholeDegreesAndHalfPsiAreCoarse() {
    double halfPsi = 0.5 * 6894.757293168;
    LogReading reading =
        read(
            new Recorder(0.1, 7, ALL)
                .with(Signal.CHARGE_TEMPERATURE, 0.3, 1)
                .with(Signal.BOOST, 500, halfPsi)
                .record(Outing.fourPulls()));
    List<Finding> coarse =
        reading.findings().stream().filter(f -> f.kind() == Finding.Kind.RESOLUTION).toList();
    assertEquals(2, coarse.size(), coarse.toString());
    assertTrue(coarse.get(0).seen().contains("0.50 psi"), coarse.toString());
    assertTrue(coarse.get(1).seen().contains("1 K"), coarse.toString());
    double quantum = Channels.quantum(reading.updates(Signal.BOOST));
    assertEquals(halfPsi, quantum, 1e-6 * halfPsi);
  }

  @Test
  @Tag("analytic")
  void pressureThatEndsAt255KilopascalIsCutOff() {
    Log log = sound();
    Log cut =
        with(
            log,
            Signal.MANIFOLD_PRESSURE,
            i -> true,
            i -> Math.min(255e3, Math.rint(log.value(Signal.MANIFOLD_PRESSURE, i) * 1.4e-3) * 1e3));
    LogReading reading = read(cut);
    Finding found = only(reading, Finding.Kind.SATURATION);
    assertEquals(Optional.of(Signal.MANIFOLD_PRESSURE), found.signal());
    assertEquals(Sureness.SURE, found.sureness());
    assertTrue(found.seen().contains("255 kPa"), found.seen());
    assertTrue(reading.table().stream().allMatch(PullReading::boostIsLeast));
  }

  /** Another sensor's end of scale: 60 kPa gauge, of 90 that are there. */
  @Test
  @Tag("analytic")
  void boostThatBreaksOffFlatIsPerhapsCutOff() {
    Outing ramp = new Outing().idle(10).runUp(2600, 3).pull(6700, 10).idle(20);
    Log log = new Recorder(0.1, 7, ALL).record(ramp);
    double[] time = IntStream.range(0, log.size()).mapToDouble(log::time).toArray();
    Log cut =
        with(
            log,
            Signal.BOOST,
            i -> true,
            i ->
                Math.min(
                    60e3,
                    time[i] < 13.5 || time[i] > 23
                        ? -60e3
                        : Math.rint((time[i] - 13.5) * 12) * 1e3));
    Finding found = only(read(cut), Finding.Kind.SATURATION);
    assertEquals(Sureness.POSSIBLE, found.sureness());
  }

  @Test
  @Tag("analytic")
  void channelThatFreezesInAPullIsStuck() {
    Log log = sound();
    Outing.TruePull third = Outing.fourPulls().pulls().get(2);
    double frozen = log.value(Signal.CORE_AIR_IN, (int) (10 * third.start()) - 50);
    Log stuck =
        with(
            log,
            Signal.CORE_AIR_IN,
            i -> i > 10 * third.start() - 50 && i < 10 * third.end() + 200,
            i -> frozen);
    Finding found = only(read(stuck), Finding.Kind.STUCK);
    assertEquals(Optional.of(Signal.CORE_AIR_IN), found.signal());
    assertEquals(third.start(), found.span().from(), 0.3);
    LogReading dead = read(with(log, Signal.CHARGE_TEMPERATURE, i -> true, i -> 300));
    assertEquals(Sureness.SURE, only(dead, Finding.Kind.STUCK).sureness());
    assertTrue(dead.table().get(0).counted().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  @Tag("analytic")
  void spikesAreFoundAndLeftOut(long seed) {
    Log log = sound();
    Random random = new Random(seed);
    List<Integer> rows =
        random.ints(12, 100, log.size() - 100).boxed().map(i -> i / 40 * 40).distinct().toList();
    Log spiky =
        with(
            log,
            Signal.CHARGE_TEMPERATURE,
            i -> rows.contains(i) || rows.contains(i - 1),
            i -> rows.contains(i / 2 * 2) && i % 80 < 40 ? 233.15 : 420);
    LogReading reading = read(spiky);
    Finding found = only(reading, Finding.Kind.SPIKE);
    String count = rows.size() == 1 ? "one" : Integer.toString(rows.size());
    assertTrue(found.seen().contains(count), found.seen() + rows);
    Updates sound = read(log).updates(Signal.CHARGE_TEMPERATURE);
    Updates cleaned = reading.updates(Signal.CHARGE_TEMPERATURE);
    assertEquals(sound.size() - 2 * rows.size(), cleaned.size());
    assertEquals(sound.highest(), cleaned.highest(), 0.5);
    assertEquals(4, reading.pulls().size());
  }

  @Test
  @Tag("analytic")
  void swappedAirAndCoolantAreExchanged() {
    Log log = sound();
    Map<Signal, double[]> values = columns(log);
    Map<Signal, double[]> right = columns(log);
    swap(values, right, Signal.CORE_AIR_IN, Signal.CHARGE_TEMPERATURE);
    LogReading swapped = read(of(values, times(log)));
    Finding found = only(swapped, Finding.Kind.SWAPPED);
    assertEquals(Sureness.SURE, found.sureness());
    LogReading straight = read(log);
    assertEquals(
        straight.effectiveness().mean().orElseThrow().value(),
        swapped.effectiveness().mean().orElseThrow().value(),
        1e-9);
    assertEquals(straight.table().get(1).counted(), swapped.table().get(1).counted());
    swap(values, right, Signal.CORE_COOLANT_OUT, Signal.CORE_COOLANT_IN);
    LogReading both = read(of(values, times(log)));
    assertEquals(2, both.findings().stream().filter(f -> f.kind() == Finding.Kind.SWAPPED).count());
  }

  private static void swap(
      Map<Signal, double[]> values, Map<Signal, double[]> right, Signal one, Signal other) {
    values.put(one, right.getOrDefault(other, new double[0]));
    values.put(other, right.getOrDefault(one, new double[0]));
  }

  private static double[] times(Log log) {
    return IntStream.range(0, log.size()).mapToDouble(log::time).toArray();
  }

  /** With the engine off the sensor drifts to the metal; the table does not take that for air. */
  @Test
  @Tag("analytic")
  void soakWithTheEngineOffIsNoPeak() {
    Outing outing =
        new Outing()
            .idle(10)
            .runUp(2600, 3)
            .pull(6700, 10)
            .idle(10)
            .off(240)
            .crank()
            .idle(30)
            .runUp(2600, 3)
            .pull(6700, 10)
            .idle(20);
    Log log = new Recorder(0.1, 7, ALL).record(outing);
    Log soaked =
        with(
            log,
            Signal.CHARGE_TEMPERATURE,
            i -> log.time(i) > 34 && log.time(i) < 273,
            i -> 305 + 50 * (1 - Math.exp(-(log.time(i) - 34) / 60)));
    LogReading reading = read(soaked);
    Finding found = only(reading, Finding.Kind.SENSOR_SOAK);
    assertEquals(33, found.span().from(), 3);
    assertEquals(274, found.span().to(), 3);
    assertTrue(reading.table().get(0).peak().orElseThrow() < 335);
    assertEquals(Wait.Engine.OFF_FOR_A_PART, reading.waits().get(0).engine());
    assertEquals(240, reading.waits().get(0).engineOff(), 3);
  }

  @Test
  @Tag("analytic")
  void dipBelowEverythingThatCoolsIsNoCooling() {
    Log log = sound();
    double end = Outing.fourPulls().pulls().get(1).end();
    Log dip =
        with(
            log,
            Signal.CHARGE_TEMPERATURE,
            i -> log.time(i) > end + 0.5 && log.time(i) < end + 4,
            i -> 287);
    LogReading reading = read(dip);
    Finding found = only(reading, Finding.Kind.LIFT_DIP);
    assertEquals(Sureness.SURE, found.sureness());
    assertTrue(found.seen().contains("pull 2"), found.seen());
  }

  @Test
  @Tag("analytic")
  void gapsAreNamedAndNoPullIsFollowedAcrossOne() {
    Log log = sound();
    double start = Outing.fourPulls().pulls().get(1).start();
    int[] kept =
        IntStream.range(0, log.size())
            .filter(i -> log.time(i) < start + 4 || log.time(i) > start + 44)
            .toArray();
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    for (Signal signal : log.signals()) {
      values.put(signal, IntStream.of(kept).mapToDouble(i -> log.value(signal, i)).toArray());
    }
    LogReading reading = read(of(values, IntStream.of(kept).mapToDouble(log::time).toArray()));
    Finding gap = only(reading, Finding.Kind.TIME_GAP);
    assertEquals(start + 4, gap.span().from(), 0.15);
    assertEquals(start + 44, gap.span().to(), 0.15);
    assertEquals(gap.span().firstRow() + 1, gap.span().lastRow());
    assertTrue(reading.pulls().stream().allMatch(p -> p.end() - p.start() < 10.5));
    assertTrue(reading.waits().stream().anyMatch(w -> w.unknown() > 39));
  }

  @Test
  @Tag("analytic")
  void tableReadsWhatTheOutingDid() {
    Log log =
        new Recorder(0.1, 7, Signal.ENGINE_SPEED, Signal.CHARGE_TEMPERATURE, Signal.WHEEL_POWER)
            .record(Outing.fourPulls());
    LogReading reading =
        LogStudy.of(log, LogOptions.DEFAULTS.countedTo(6000 / 60.0).withLimit(318));
    for (int i = 0; i < 4; i++) {
      PullReading row = reading.table().get(i);
      double counted = Outing.fourPulls().pulls().get(i).start() + 10 * 3400 / 4100.0;
      int at = (int) Math.rint(counted * 10);
      assertEquals(counted, row.countedAt().orElseThrow(), 0.1);
      assertEquals(log.value(Signal.CHARGE_TEMPERATURE, at), row.counted().orElseThrow(), 0.4);
      double over =
          IntStream.range(0, log.size())
                  .filter(k -> log.time(k) >= row.pull().start())
                  .filter(k -> log.time(k) < row.pull().start() + 73)
                  .filter(k -> log.value(Signal.CHARGE_TEMPERATURE, k) > 318)
                  .count()
              / 10.0;
      assertEquals(over, row.overLimit().orElseThrow(), 0.3);
      assertEquals(420e3, row.power().orElseThrow(), 15e3);
      assertTrue(row.boost().isEmpty() && row.coolantStart().isEmpty());
    }
  }
}
