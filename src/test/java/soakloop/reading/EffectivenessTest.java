package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;

/** Effectiveness read from invented logs whose true one is known. */
class EffectivenessTest {
  private static final Signal[] FOUR = {
    Signal.ENGINE_SPEED, Signal.CHARGE_TEMPERATURE, Signal.CORE_AIR_IN, Signal.CORE_COOLANT_IN
  };

  /** Of the invented core, by its maker. */
  private static final double TRUE = 0.72;

  /** True lags of the invented sensors: 1.2 s after, 1.5 s before the core, none in the coolant. */
  private static final LogOptions KNOWN =
      LogOptions.DEFAULTS.withSensors(new Estimate(1.35, 0.2), new Estimate(0, 0), 2);

  private static Outing outing() {
    Outing outing = new Outing().idle(20);
    for (int i = 0; i < 3; i++) {
      outing.runUp(2600, 3).pull(6700, 10).idle(60);
    }
    return outing;
  }

  private static Effectiveness read(Log log, LogOptions options) {
    return LogStudy.of(log, options).effectiveness();
  }

  /** The sensor is screwed into metal, which takes 2 % of its reading: the rest is exact. */
  @Test
  @Tag("analytic")
  void intervalHoldsTheTrueEffectiveness() {
    for (LogOptions options : List.of(KNOWN, LogOptions.DEFAULTS)) {
      Effectiveness found = read(new Recorder(0.1, 1, FOUR).record(outing()), options);
      assertEquals(3, found.pulls().size(), found.why());
      for (Effectiveness.OfPull pull : found.pulls()) {
        assertEquals(TRUE, pull.value().value(), pull.value().spread());
      }
      assertEquals(TRUE, found.mean().orElseThrow().value(), 0.025);
    }
  }

  @Test
  @Tag("analytic")
  void channelsPolledInTurnGiveTheSameWithinTheirInterval() {
    Effectiveness found = read(new Recorder(0.25, 1, FOUR).allInTurn().record(outing()), KNOWN);
    assertEquals(3, found.pulls().size(), found.why());
    assertEquals(TRUE, found.mean().orElseThrow().value(), found.mean().orElseThrow().spread());
  }

  /** Steady air at 80.4, 54.6 and 44 degC: 0.71 over a difference of 36.4 K. */
  private static Log steady(double chargeBias) {
    int n = 400;
    double[] time = IntStream.range(0, n).mapToDouble(i -> 0.1 * i).toArray();
    double[] speed =
        IntStream.range(0, n)
            .mapToDouble(i -> (i < 100 ? 2600 : i < 200 ? 2600 + 41 * (i - 100) : 850) / 60.0)
            .toArray();
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    values.put(Signal.ENGINE_SPEED, speed);
    values.put(Signal.CORE_AIR_IN, level(n, 353.55));
    values.put(Signal.CHARGE_TEMPERATURE, level(n, 353.55 - 0.71 * 36.4 + chargeBias));
    values.put(Signal.CORE_COOLANT_IN, level(n, 317.15));
    return new Log("steady.csv", time, values, List.of(), List.of());
  }

  private static double[] level(int n, double value) {
    return IntStream.range(0, n).mapToDouble(i -> value).toArray();
  }

  /**
   * A bias of 2 K in one sensor moves 0.71 to between 0.66 and 0.77: common practice, no source,
   * and arithmetic. The interval told holds both.
   */
  @Test
  @Tag("trade")
  void biasOfTwoKelvinMovesItAsFarAsTheInterval() {
    Estimate told = read(steady(0), LogOptions.DEFAULTS).mean().orElseThrow();
    double low = read(steady(2), LogOptions.DEFAULTS).mean().orElseThrow().value();
    double high = read(steady(-2), LogOptions.DEFAULTS).mean().orElseThrow().value();
    assertEquals(0.71, told.value(), 1e-6);
    assertEquals(0.66, low, 0.006);
    assertEquals(0.77, high, 0.006);
    assertTrue(told.value() - told.spread() < low && told.value() + told.spread() > high);
    // Three sensors, each off by 2 K by itself: 2 / 36.4 sqrt(0.29^2 + 1 + 0.71^2).
    assertEquals(2 / 36.4 * Math.sqrt(0.29 * 0.29 + 1 + 0.71 * 0.71), told.spread(), 1e-4);
  }

  @Test
  @Tag("analytic")
  void biasDoesNotAverageOutOverPulls() {
    Effectiveness found = read(new Recorder(0.1, 1, FOUR).record(outing()), KNOWN);
    double least =
        found.pulls().stream().mapToDouble(Effectiveness.OfPull::bias).min().orElseThrow();
    assertTrue(found.mean().orElseThrow().spread() >= 0.99 * least);
  }

  @Test
  void missingChannelsAreNamed() {
    for (Signal missing : List.of(FOUR).subList(1, 4)) {
      List<Signal> kept = new ArrayList<>(List.of(FOUR));
      kept.remove(missing);
      Log log = new Recorder(0.1, 1, kept.toArray(Signal[]::new)).record(outing());
      Effectiveness found = read(log, KNOWN);
      assertEquals(List.of(missing), found.missing());
      assertTrue(found.why().contains(missing.label()), found.why());
      assertTrue(found.mean().isEmpty() && found.pulls().isEmpty());
    }
  }

  /** Ramp of 3 K/s through a sensor of 5 s lags by 15 K in the end: exact solution. */
  @Test
  @Tag("analytic")
  void lagOfARampIsTakenOutExactly() {
    int n = 400;
    double[] time = IntStream.range(0, n).mapToDouble(i -> 0.1 * i).toArray();
    double[] shown =
        IntStream.range(0, n)
            .mapToDouble(i -> 300 + 3 * (time[i] - 5 * (1 - Math.exp(-time[i] / 5))))
            .toArray();
    Updates updates = Updates.of(time, shown);
    Channel channel =
        new Channel(
            Signal.CHARGE_TEMPERATURE, new Refresh(Refresh.Kind.EVERY_ROW, 1, 0.1), 0, 0, updates);
    assertEquals(17.030029, updates.at(10) - 300, 1e-6);
    Unlagged unlagged = Unlagged.of(channel, 10, 0, 40, new Estimate(5, 0.5)).orElseThrow();
    assertEquals(330, unlagged.value(), 0.05);
    assertEquals(0.5 * 3 * (1 - Math.exp(-2)), unlagged.lag(), 0.02);
  }

  /** Unknown sensors are taken as a scenario takes them: the key table is the law. */
  @Test
  void defaultLagIsTheKeyTables() throws Exception {
    String table = Files.readString(Path.of("src/main/resources/soakloop/scenario/keys.yaml"));
    String row =
        table
            .lines()
            .filter(line -> line.contains("key: sensor.time-constant,"))
            .findFirst()
            .orElseThrow();
    Estimate lag = LogOptions.DEFAULTS.airLag();
    long percent = Math.round(100 * lag.spread() / lag.value());
    String said = "default: " + Math.round(lag.value()) + " s +/- " + percent + " %";
    assertTrue(row.contains(said), row);
  }
}
