package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.Signal;

/** True refresh found from held values, against how the rows were made. */
class RefreshFinderTest {
  private static final Signal[] TEN = {
    Signal.ENGINE_SPEED,
    Signal.THROTTLE,
    Signal.BOOST,
    Signal.MANIFOLD_PRESSURE,
    Signal.CHARGE_TEMPERATURE,
    Signal.CORE_AIR_IN,
    Signal.CORE_COOLANT_IN,
    Signal.CORE_COOLANT_OUT,
    Signal.INLET_AIR,
    Signal.ROAD_SPEED
  };

  private static Channel channel(Log log, Signal signal) {
    return Channels.of(log).find(signal).orElseThrow();
  }

  /** Ten channels in turn, 1 K, 1 kPa: each is measured every tenth row. */
  @Test
  @Tag("analytic")
  void tenChannelsPolledInTurnAreEachMeasuredEveryTenthRow() {
    Recorder recorder = new Recorder(0.1, 3, TEN).allInTurn();
    recorder.with(Signal.CHARGE_TEMPERATURE, 0.2, 1).with(Signal.CORE_COOLANT_IN, 0.2, 1);
    Channels channels = Channels.of(recorder.record(Outing.fourPulls()));
    for (Signal signal : TEN) {
      Channel channel = channels.find(signal).orElseThrow();
      assertEquals(Refresh.Kind.IN_TURN, channel.refresh().kind(), signal.toString());
      assertEquals(10, channel.refresh().rows(), signal.toString());
      assertEquals(1.0, channel.refresh().period(), 1e-9);
    }
    assertEquals(10, channels.findings().stream().filter(RefreshFinderTest::isRefresh).count());
  }

  private static boolean isRefresh(Finding finding) {
    return finding.kind() == Finding.Kind.REFRESH;
  }

  /** The measurements are on the rows of the channel's own place in the turn. */
  @Test
  @Tag("analytic")
  void valuesAreUsedAtTheTimesTheyWereMeasured() {
    Log log = new Recorder(0.1, 3, TEN).allInTurn().record(Outing.fourPulls());
    Updates updates = channel(log, Signal.ENGINE_SPEED).updates();
    double phase = updates.time(5) % 1.0;
    for (int i = 3; i < updates.size(); i++) {
      double after = (updates.time(i) - phase) % 1.0;
      assertEquals(0, Math.min(after, 1 - after), 1e-6, "update " + i);
    }
    assertEquals(log.size() / 10.0, updates.size(), 2);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7, 25})
  @Tag("analytic")
  void anyTurnIsFound(int rows) {
    Log log =
        new Recorder(0.02, 4, Signal.ENGINE_SPEED, Signal.BOOST)
            .inTurn(Signal.BOOST, rows)
            .record(Outing.fourPulls());
    assertEquals(rows, channel(log, Signal.BOOST).refresh().rows());
    assertEquals(Refresh.Kind.EVERY_ROW, channel(log, Signal.ENGINE_SPEED).refresh().kind());
  }

  /** A sender at 0.37 s in rows of 0.1 s holds for 3 or 4 rows. */
  @Test
  @Tag("analytic")
  void clockOfItsOwnIsFoundToo() {
    Log log =
        new Recorder(0.1, 5, Signal.ENGINE_SPEED, Signal.BOOST)
            .held(Signal.ENGINE_SPEED, 0.37)
            .record(Outing.fourPulls());
    Refresh refresh = channel(log, Signal.ENGINE_SPEED).refresh();
    assertEquals(Refresh.Kind.HELD, refresh.kind());
    assertEquals(0.37, refresh.period(), 0.05);
  }

  /** Coarse and slow, but measured on each row: whole K at 10 Hz. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.05, 0.3})
  @Tag("analytic")
  void slowAndCoarseIsNotHeld(double noise) {
    for (long seed = 0; seed < 10; seed++) {
      Log log =
          new Recorder(0.1, seed, TEN)
              .with(Signal.CHARGE_TEMPERATURE, noise, 1)
              .with(Signal.CORE_COOLANT_IN, noise, 1)
              .record(Outing.fourPulls());
      assertTrue(!channel(log, Signal.CHARGE_TEMPERATURE).refresh().held());
      assertTrue(!channel(log, Signal.CORE_COOLANT_IN).refresh().held());
    }
  }

  @Test
  @Tag("analytic")
  void rowsLeftEmptyBetweenMeasurementsAreNoHold() {
    int n = 500;
    double[] time = IntStream.range(0, n).mapToDouble(i -> 0.1 * i).toArray();
    double[] value =
        IntStream.range(0, n).mapToDouble(i -> i % 5 == 2 ? Math.sin(i) : Double.NaN).toArray();
    Log log = new Log("x", time, Map.of(Signal.BOOST, value), List.of(), List.of());
    Channel channel = channel(log, Signal.BOOST);
    assertEquals(Refresh.Kind.EVERY_ROW, channel.refresh().kind());
    assertEquals(0.5, channel.refresh().period(), 1e-9);
    assertEquals(100, channel.updates().size());
  }

  /** A long standstill is bridged by measurements, so that no ramp is drawn across it. */
  @Test
  @Tag("analytic")
  void standstillOfAHeldChannelStaysLevel() {
    int n = 600;
    double[] time = IntStream.range(0, n).mapToDouble(i -> 0.1 * i).toArray();
    double[] value = new double[n];
    for (int i = 0; i < n; i++) {
      int measured = Math.max(0, (i - 3) / 10 * 10 + 3);
      value[i] = measured < 200 || measured > 400 ? Math.rint(30 * Math.sin(measured)) : 12;
    }
    Log log = new Log("x", time, Map.of(Signal.BOOST, value), List.of(), List.of());
    Updates updates = channel(log, Signal.BOOST).updates();
    assertEquals(12, updates.at(39.2), 1e-12);
    assertEquals(10, channel(log, Signal.BOOST).refresh().rows());
  }
}
