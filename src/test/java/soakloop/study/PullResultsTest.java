package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.study.HandMade.row;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.reading.LogOptions;
import soakloop.reading.LogStudy;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** Pull results of straight lines, against values worked out by hand. */
@Tag("analytic")
class PullResultsTest {
  private static final double EXACT = 1e-9;
  private static final OptionalDouble LIMIT = OptionalDouble.of(316);

  /** Two pulls of 10 s at 10 s and 50 s, counted after 9.5 s, and the waits around them. */
  private static Trace twoPulls() {
    double low = 2600.0 / 60;
    double high = 6700.0 / 60;
    return new HandMade(0, 10, 10, 20, 20, 25, 50, 50, 60, 60, 80)
        .with(Channel.SENSOR, 300, 300, 300, 320, 320, 326, 306, 306, 330, 330, 310)
        .with(Channel.CHARGE, 310, 310, 295, 315, 340, 330, 310, 300, 325, 322, 305)
        .with(Channel.CORE_COOLANT_IN, 295, 295, 295, 297, 297, 301, 296, 296, 298, 298, 303)
        .with(Channel.CORE_COOLANT_OUT, 296, 296, 296, 304, 304, 302, 297, 297, 306, 306, 303)
        .with(Channel.ENGINE_SPEED, 14, 14, low, high, 14, 14, 14, low, high, 14, 14)
        .with(Channel.AIR_MASS_FLOW, .02, .02, .2, .6, .02, .9, .02, .2, .5, .02, .02)
        .with(Channel.HEAT_CORE, 1e3, 1e3, 10e3, 50e3, 2e3, 2e3, 1e3, 10e3, 40e3, 2e3, 1e3)
        .with(Channel.BOOST, -60e3, -60e3, 80e3, 95e3, 0, 0, 0, 82e3, 90e3, 99e3, 0)
        .idle(0, 10)
        .pull("pull 1", 10, 20, OptionalDouble.of(9.5))
        .idle(20, 50)
        .pull("pull 2", 50, 60, OptionalDouble.of(9.5))
        .idle(60, 80)
        .trace();
  }

  private static List<PullResult> results(Scenario.Logged logged) {
    return PullResults.of(twoPulls(), LIMIT, Optional.of(logged));
  }

  private static void assertReadings(Readings wanted, Readings got) {
    assertEquals(wanted.start(), got.start(), EXACT, "start");
    assertEquals(wanted.end(), got.end(), EXACT, "end");
    assertEquals(wanted.peakInPull(), got.peakInPull(), EXACT, "peak in pull");
    assertEquals(wanted.peakToNextPull(), got.peakToNextPull(), EXACT, "peak to next pull");
    assertEquals(wanted.rise(), got.rise(), EXACT, "rise");
    assertEquals(wanted.overLimit(), got.overLimit(), EXACT, "over limit");
  }

  @Test
  void readsTheSensorOfEachPull() {
    List<PullResult> pulls = PullResults.of(twoPulls(), LIMIT, Optional.empty());
    assertEquals(2, pulls.size());
    // Over 316 K from 18 to 25 s, then down 0.8 K/s from 326 K: 12.5 s more.
    assertReadings(new Readings(300, 319, 320, 326, 19, 19.5), pulls.get(0).sensor());
    // Up 2.4 K/s from 306 K, down 1 K/s from 330 K.
    assertReadings(
        new Readings(306, 328.8, 330, 330, 22.8, 10 - 10 / 2.4 + 14), pulls.get(1).sensor());
    assertTrue(pulls.get(0).logged().isEmpty());
  }

  @Test
  void ofAJumpOnlyTheSideWithinThePullCounts() {
    PullResult first = PullResults.of(twoPulls(), LIMIT, Optional.empty()).get(0);
    // 340 to 330 K in 5 s, then 330 K down 0.8 K/s: 17.5 s more; in the pull never.
    assertReadings(new Readings(295, 314, 315, 340, 19, 22.5), first.charge());
    assertEquals(0.6, first.airMassFlowPeak(), EXACT);
    assertEquals(95e3, first.boostPeak(), EXACT);
    assertEquals(300e3, first.heatToCoolant(), 1e-6);
  }

  @Test
  void readsTimesSpeedAndCoolant() {
    PullResult second = PullResults.of(twoPulls(), LIMIT, Optional.empty()).get(1);
    assertEquals("pull 2", second.name());
    assertEquals(50, second.startTime());
    assertEquals(60, second.endTime());
    assertEquals(59.5, second.countedAt(), EXACT);
    assertEquals(6495.0 / 60, second.countedTo(), EXACT);
    assertEquals(296, second.coolant().coreInletStart(), EXACT);
    assertEquals(303, second.coolant().coreInletPeak(), EXACT);
    assertEquals(306, second.coolant().coreOutletPeak(), EXACT);
    assertEquals(250e3, second.heatToCoolant(), 1e-6);
  }

  @Test
  void aLaterPullsPeakIsNotTheEarlierOnes() {
    PullResult first = PullResults.of(twoPulls(), LIMIT, Optional.empty()).get(0);
    assertEquals(301, first.coolant().coreInletPeak(), EXACT);
    assertEquals(304, first.coolant().coreOutletPeak(), EXACT);
  }

  @Test
  void countsAtTheEndWhereNothingElseIsSaid() {
    Trace trace =
        new HandMade(0, 8)
            .with(Channel.SENSOR, 290, 306)
            .with(Channel.ENGINE_SPEED, 50, 110)
            .pull("pull 1", 0, 8, OptionalDouble.empty())
            .trace();
    PullResult pull = PullResults.of(trace, OptionalDouble.empty(), Optional.empty()).get(0);
    assertReadings(new Readings(290, 306, 306, 306, 16, 0), pull.sensor());
    assertEquals(110, pull.countedTo(), EXACT);
  }

  @Test
  void addsUpSeveralCrossings() {
    // Over 302 K: 1 s going up, 1 s coming down, not while it lies on the limit, 2 s at the end.
    Trace trace =
        new HandMade(0, 2, 4, 6, 8, 10)
            .with(Channel.SENSOR, 300, 304, 300, 302, 302, 306)
            .pull("pull 1", 0, 10, OptionalDouble.empty())
            .trace();
    OptionalDouble limit = OptionalDouble.of(302);
    assertEquals(
        4, PullResults.of(trace, limit, Optional.empty()).get(0).sensor().overLimit(), EXACT);
  }

  @Test
  void withoutPullsThereAreNoResults() {
    Trace trace = new HandMade(0, 5).idle(0, 5).trace();
    assertEquals(List.of(), PullResults.of(trace, LIMIT, Optional.empty()));
  }

  @Test
  void laysTheLogBeside() {
    Scenario.Logged logged =
        HandMade.logged(
            100,
            row(5, 10, 15, 20, 25, 50),
            Map.of(
                Signal.CHARGE_TEMPERATURE,
                row(299, 300, 312, 324, 322, 302),
                Signal.ENGINE_SPEED,
                row(15, 2600 / 60., 4700 / 60., 6800 / 60., 15, 2600 / 60.),
                Signal.CORE_COOLANT_IN,
                row(310, 295, 296, 298, 299, 296)));
    PullResult.Logged first = results(logged).get(0).logged().orElseThrow();
    // The log reaches 6495 rpm between 15 and 20 s.
    double share = (6495.0 - 4700) / 2100;
    assertEquals(15 + 5 * share, first.countedAt(), EXACT);
    assertReadings(
        new Readings(300, 312 + 12 * share, 324, 324, 12 + 12 * share, 10 / 3. + 5 + 7.5),
        first.sensor());
    assertEquals(50, first.coveredTo(), EXACT);
    assertEquals(299, first.coreInletPeak().orElseThrow(), EXACT);
    // Modelled 300, 310, 320 K.
    assertEquals(3, first.fit().count());
    assertEquals(-2, first.fit().bias(), EXACT);
    assertEquals(Math.sqrt(20 / 3.), first.fit().rms(), EXACT);
    assertEquals(-4, first.fit().largest(), EXACT);
    assertTrue(results(logged).get(1).logged().isEmpty());
  }

  @Test
  void countsAtTheSameTimeWhereTheLogDoesNotRiseToTheSpeed() {
    double[] time = row(10, 20, 50);
    double[] charge = row(300, 320, 310);
    Map<Signal, double[]> without = Map.of(Signal.CHARGE_TEMPERATURE, charge);
    Map<Signal, double[]> slower =
        Map.of(Signal.CHARGE_TEMPERATURE, charge, Signal.ENGINE_SPEED, row(50, 108, 15));
    Map<Signal, double[]> faster =
        Map.of(Signal.CHARGE_TEMPERATURE, charge, Signal.ENGINE_SPEED, row(120, 110, 15));
    for (Map<Signal, double[]> values : List.of(without, slower, faster)) {
      PullResult.Logged beside =
          results(HandMade.logged(0, time, values)).get(0).logged().orElseThrow();
      assertEquals(19.5, beside.countedAt(), EXACT);
      assertEquals(319, beside.sensor().end(), EXACT);
    }
  }

  @Test
  void aLogThatStopsEarlySaysHowFarItGoes() {
    Scenario.Logged logged =
        HandMade.logged(
            0,
            row(9, 12, 15, 18, 21, 24),
            Map.of(Signal.CHARGE_TEMPERATURE, row(300, 304, 310, 316, 322, 328)));
    List<PullResult> pulls = results(logged);
    PullResult.Logged first = pulls.get(0).logged().orElseThrow();
    assertEquals(24, first.coveredTo(), EXACT);
    assertEquals(328, first.sensor().peakToNextPull(), EXACT);
    assertEquals(6, first.sensor().overLimit(), EXACT);
    assertTrue(first.coreInletPeak().isEmpty());
    assertTrue(pulls.get(1).logged().isEmpty());
  }

  @Test
  void aLogThatDoesNotCoverThePullIsNotBeside() {
    // One starts late, one ends early, one has a single row in the pull.
    List<double[]> times = List.of(row(13, 15, 17, 50), row(8, 10, 12, 14), row(2, 4, 15, 50));
    for (double[] time : times) {
      Scenario.Logged logged =
          HandMade.logged(0, time, Map.of(Signal.CHARGE_TEMPERATURE, row(300, 304, 306, 308)));
      assertTrue(results(logged).get(0).logged().isEmpty(), time[0] + " s");
    }
  }

  @Test
  void rowsWithoutAValueAreBridged() {
    double no = Double.NaN;
    Scenario.Logged logged =
        HandMade.logged(
            0,
            row(8, 10, 12, 14, 16, 18, 20),
            Map.of(Signal.CHARGE_TEMPERATURE, row(300, 300, no, no, 306, no, 310)));
    PullResult.Logged first = results(logged).get(0).logged().orElseThrow();
    assertEquals(309.5, first.sensor().end(), EXACT);
    assertEquals(3, first.fit().count());
    assertEquals((0 + 6 + 10) / 3., first.fit().bias(), EXACT);
  }

  @Test
  void aLogWithoutChargeTemperatureIsNotBeside() {
    Scenario.Logged logged =
        HandMade.logged(0, row(0, 40, 80), Map.of(Signal.RESERVOIR, row(300, 301, 302)));
    assertTrue(results(logged).stream().allMatch(p -> p.logged().isEmpty()));
  }

  @Test
  void readsALogInOtherUnits(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("invented.csv");
    Files.writeString(
        file,
        """
        # invented
        Time [ms];IAT2 [degF];RPM
        105000;80.33;900
        110000;80.33;2600
        120000;116.33;6700
        150000;89.33;900
        """);
    Scenario.Logged logged =
        new Scenario.Logged(
            LogStudy.of(LogReader.read(file, LogColumns.NONE), LogOptions.DEFAULTS), 100);
    PullResult.Logged first = results(logged).get(0).logged().orElseThrow();
    // 80.33 degF is 300 K; 36 and 9 degF above it are 20 and 5 K.
    assertEquals(19.5, first.countedAt(), EXACT);
    assertReadings(new Readings(300, 319, 320, 320, 19, 2 + 30 * 4 / 15.), first.sensor());
    assertEquals(0, first.fit().rms(), EXACT);
  }
}
