package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.Signal;

/** Logs that lack what is usually there. */
class OddLogsTest {
  private static final double THIRD = 0.024;

  private static Outing road() {
    Outing outing = new Outing().idle(10);
    for (int i = 0; i < 3; i++) {
      outing.drive(80).runUp(2500, 2).pull(6200, 7, 0.4, THIRD, false).coast(1600, 12, THIRD);
    }
    return outing.idle(20);
  }

  private static void assertFound(Outing outing, Log log, double within) {
    List<Pull> found = LogStudy.of(log, LogOptions.DEFAULTS).pulls();
    assertEquals(outing.pulls().size(), found.size(), found.toString());
    for (int i = 0; i < found.size(); i++) {
      assertEquals(outing.pulls().get(i).start(), found.get(i).start(), within);
      assertEquals(outing.pulls().get(i).end(), found.get(i).end(), within);
      assertTrue(found.get(i).sweep().isEmpty());
    }
  }

  /** Without engine speed the pulls are there, their speeds and values at a speed are not. */
  @Test
  @Tag("analytic")
  void throttleAloneShowsPulls() {
    Outing outing = road();
    assertFound(outing, new Recorder(0.1, 1, Signal.THROTTLE).record(outing), 0.3);
  }

  @Test
  @Tag("analytic")
  void roadSpeedAndBoostShowPulls() {
    Outing outing = road();
    Log log = new Recorder(0.1, 1, Signal.ROAD_SPEED, Signal.BOOST).record(outing);
    assertFound(outing, log, 0.6);
  }

  @Test
  void chargeTemperatureAloneShowsNone() {
    Log log = new Recorder(0.1, 1, Signal.CHARGE_TEMPERATURE).record(road());
    LogReading reading = LogStudy.of(log, LogOptions.DEFAULTS);
    assertTrue(reading.pulls().isEmpty() && reading.table().isEmpty());
    assertTrue(reading.countedSpeed().isEmpty());
  }

  /** Any one channel, two rows, and rows without values do no harm. */
  @ParameterizedTest
  @EnumSource(value = Signal.class, mode = EnumSource.Mode.EXCLUDE, names = "TIME")
  void scrapsAreRead(Signal signal) {
    for (int rows : new int[] {2, 3, 7, 200}) {
      double[] time = IntStream.range(0, rows).mapToDouble(i -> 0.1 * i).toArray();
      Random random = new Random(rows);
      for (double holes : new double[] {0, 0.5, 1}) {
        double[] value =
            IntStream.range(0, rows)
                .mapToDouble(i -> random.nextDouble() < holes ? Double.NaN : random.nextInt(120))
                .toArray();
        Log log = new Log("scrap", time, Map.of(signal, value), List.of(), List.of());
        LogReading reading = LogStudy.of(log, LogOptions.DEFAULTS.withLimit(320));
        assertEquals(reading.pulls().size(), reading.table().size());
        Log all = new Log("noise", time, noise(rows, holes, random), List.of(), List.of());
        LogReading mess = LogStudy.of(all, LogOptions.DEFAULTS.withLimit(320));
        assertEquals(mess.pulls().size(), mess.table().size());
      }
    }
  }

  private static Map<Signal, double[]> noise(int rows, double holes, Random random) {
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    for (Signal signal : Signal.values()) {
      if (signal != Signal.TIME) {
        values.put(
            signal,
            IntStream.range(0, rows)
                .mapToDouble(
                    i -> random.nextDouble() < holes ? Double.NaN : 400 * random.nextDouble())
                .toArray());
      }
    }
    return values;
  }
}
