package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** Grids of runs and the crossings found between them. */
@Tag("analytic")
class VaryRunnerTest {
  /** A study samples a trace more thinly than a run does; K. */
  private static final double SAMPLED = 2e-3;

  private static LimitLine line(Variation variation, Measure measure) {
    return variation.lines().stream().filter(l -> l.measure() == measure).findFirst().orElseThrow();
  }

  private static double at(VaryPlan plan, Measure measure, double value) {
    VaryPoint.Ran ran = (VaryPoint.Ran) VaryRunner.point(plan, -1, List.of(value));
    return ran.values().get(plan.measures().indexOf(measure));
  }

  @Test
  void everyPointIsTheRunOfThatScenario() throws Exception {
    Scenario scenario = CoolMorning.pulls(2);
    VaryPlan plan =
        CoolMorning.plan(scenario, "reservoir.volume=3 L,9 L", "airflow.shop-fan=1 m/s,4 m/s");
    Variation variation = CoolMorning.run(plan, 2);
    Outcome alone =
        Run.of(scenario.with("reservoir.volume", "9 L").with("airflow.shop-fan", "1 m/s"));
    Scenario changed = alone.scenario();
    Trace sampled = Simulation.run(changed.setup().withoutLimit(), Options.STUDY);
    List<PullResult> read =
        PullResults.of(sampled, changed.limits().chargeTemperature(), Optional.empty());
    for (Measure measure : plan.measures()) {
      assertEquals(
          measure.of(new Measured(changed, sampled, read)), variation.value(2, measure), 0);
    }
    PullResult last = alone.pulls().get(1);
    assertEquals(last.sensor().end(), variation.value(2, Measure.END_CHARGE), SAMPLED);
    assertEquals(last.coolant().coreInletStart(), variation.value(2, Measure.COOLANT), SAMPLED);
    double peak =
        Math.max(alone.pulls().get(0).sensor().peakToNextPull(), last.sensor().peakToNextPull());
    assertEquals(peak, variation.value(2, Measure.PEAK_CHARGE), SAMPLED);
    assertEquals(
        Run.of(scenario).pulls().get(1).sensor().end(),
        variation.own(Measure.END_CHARGE).orElseThrow(),
        0);
  }

  @Test
  void logIsReadAsTheRunIs() throws Exception {
    Variation variation =
        CoolMorning.run(CoolMorning.plan(CoolMorning.pulls(5), "reservoir.volume=3 L,9 L"), 2);
    List<PullResult> pulls = variation.own().orElseThrow().pulls();
    double end = pulls.get(4).logged().orElseThrow().sensor().end();
    assertEquals(end, variation.logged(Measure.END_CHARGE).orElseThrow(), 0);
    double over =
        pulls.stream().mapToDouble(p -> p.logged().orElseThrow().sensor().overLimit()).sum();
    assertEquals(over, variation.logged(Measure.OVER_LIMIT).orElseThrow(), 1e-12);
    double coolant = variation.logged(Measure.COOLANT).orElseThrow();
    assertTrue(coolant <= pulls.get(4).logged().orElseThrow().coreInletPeak().orElseThrow());
  }

  @Test
  void threadsChangeNothing() throws Exception {
    VaryPlan plan =
        CoolMorning.plan(
            CoolMorning.pulls(2),
            "reservoir.volume=3 L..9 L/5",
            "airflow.shop-fan=0.5 m/s..4 m/s/5");
    Variation one = CoolMorning.run(plan, 1);
    for (int threads : new int[] {2, 5}) {
      Variation more = CoolMorning.run(plan, threads);
      assertEquals(one.points(), more.points());
      assertEquals(one.lines(), more.lines());
    }
  }

  @Test
  void progressGoesToTheEnd() throws Exception {
    VaryPlan plan = CoolMorning.plan(CoolMorning.pulls(1), "reservoir.volume=3 L..9 L/20");
    List<Integer> told = new ArrayList<>();
    new VaryRunner(plan, 2, (done, all) -> told.add(done * 100 + all)).points(2, 20);
    assertEquals(List.of(818, 1618, 1818), told);
  }

  @Test
  void crossingLiesWhereAFineScanFindsIt() throws Exception {
    Scenario scenario = CoolMorning.pulls(3);
    VaryPlan plan =
        CoolMorning.limited(
            scenario, List.of("end-charge=52 degC"), "airflow.shop-fan=0.3 m/s..3.3 m/s/4");
    LimitLine.Crossing found =
        line(CoolMorning.run(plan, 2), Measure.END_CHARGE).crossings().get(0);
    double limit = plan.limit(Measure.END_CHARGE).orElseThrow();
    assertFalse(found.rises());
    assertTrue(found.found());
    double step = 0.0005;
    int n = (int) (found.under() / step) - 20;
    while (at(plan, Measure.END_CHARGE, n * step) > limit) {
      n++;
    }
    assertTrue(n * step > found.over() - step && (n - 1) * step < found.under(), found.toString());
    assertEquals(n * step, found.under(), 1.5 * step);
  }

  @Test
  void severalCrossingsAreAllFound() throws Exception {
    // A small tank recovers sooner, a large one soaks later: the peak is highest in between.
    Scenario scenario = CoolMorning.pulls(5);
    VaryPlan coarse = CoolMorning.plan(scenario, "reservoir.volume=1 L,6 L,16 L");
    double ends = Math.max(at(coarse, Measure.PEAK_CHARGE, 1), at(coarse, Measure.PEAK_CHARGE, 16));
    double limit = (ends + at(coarse, Measure.PEAK_CHARGE, 6)) / 2;
    VaryPlan plan =
        CoolMorning.limited(
            scenario, List.of("peak-charge=" + limit + " K"), "reservoir.volume=1 L,6 L,16 L");
    LimitLine line = line(CoolMorning.run(plan, 2), Measure.PEAK_CHARGE);
    assertFalse(line.startsOver());
    assertEquals(2, line.crossings().size());
    for (LimitLine.Crossing crossing : line.crossings()) {
      assertTrue(at(plan, Measure.PEAK_CHARGE, crossing.under()) <= limit);
      assertTrue(at(plan, Measure.PEAK_CHARGE, crossing.over()) > limit);
      assertTrue(crossing.found());
    }
    assertTrue(line.crossings().get(0).rises());
    assertFalse(line.crossings().get(1).rises());
  }

  @Test
  void timeThatLeavesZeroIsFoundToo() throws Exception {
    VaryPlan plan =
        CoolMorning.limited(
            CoolMorning.pulls(2), List.of("over-limit=0 s"), "airflow.inlet-rise=0 K..40 K/5");
    LimitLine.Crossing crossing =
        line(CoolMorning.run(plan, 2), Measure.OVER_LIMIT).crossings().get(0);
    assertEquals(0, at(plan, Measure.OVER_LIMIT, crossing.under()), 0);
    assertTrue(at(plan, Measure.OVER_LIMIT, crossing.over()) > 0);
  }

  @Test
  void countsCrossBetweenWholeNumbers() throws Exception {
    Scenario scenario = CoolMorning.pulls(5);
    VaryPlan one = CoolMorning.plan(scenario, "session.2.pulls=1,8");
    double limit =
        (at(one, Measure.END_CHARGE, 3) + at(one, Measure.END_CHARGE, 4)) / 2; // between two pulls
    VaryPlan plan =
        CoolMorning.limited(scenario, List.of("end-charge=" + limit + " K"), "session.2.pulls=1,8");
    assertEquals(
        List.of(new LimitLine.Crossing(3, 4)),
        line(CoolMorning.run(plan, 1), Measure.END_CHARGE).crossings());
  }

  @Test
  void bothKeysAreSearchedBesideTheScenariosValue() throws Exception {
    VaryPlan plan =
        CoolMorning.limited(
            CoolMorning.pulls(2),
            List.of("end-charge=51 degC"),
            "reservoir.volume=3 L,5 L,9 L",
            "airflow.shop-fan=0.3 m/s,1.5 m/s,4 m/s");
    Variation variation = CoolMorning.run(plan, 2);
    List<LimitLine> lines =
        variation.lines().stream().filter(l -> l.measure() == Measure.END_CHARGE).toList();
    assertEquals(3, lines.stream().filter(l -> l.along() == 0).count());
    LimitLine own =
        lines.stream()
            .filter(l -> l.along() == 1 && l.beside().equals(OptionalInt.of(1)))
            .findFirst()
            .orElseThrow();
    VaryPlan alone =
        CoolMorning.limited(
            CoolMorning.pulls(2),
            List.of("end-charge=51 degC"),
            "airflow.shop-fan=0.3 m/s,1.5 m/s,4 m/s");
    assertEquals(line(CoolMorning.run(alone, 1), Measure.END_CHARGE).crossings(), own.crossings());
  }

  @Test
  void failedRunIsAHoleWithItsReason() throws Exception {
    VaryPlan plan = CoolMorning.plan(CoolMorning.pulls(1), "start.charge=-30 degC,29 degC,32 degC");
    Variation variation = CoolMorning.run(plan, 2);
    assertEquals(1, variation.holes().size());
    assertEquals(0, variation.holes().get(0).index());
    assertTrue(variation.holes().get(0).reason().contains("start.charge"));
    assertTrue(Double.isNaN(variation.value(0, Measure.COOLANT)));
    assertTrue(variation.value(1, Measure.COOLANT) > 273);
  }

  @Test
  void nothingButHolesIsNoAnswer() throws Exception {
    VaryPlan plan = CoolMorning.plan(CoolMorning.pulls(1), "start.charge=-35 degC,-30 degC");
    SimulationException e = assertThrows(SimulationException.class, () -> CoolMorning.run(plan, 1));
    assertTrue(String.valueOf(e.getMessage()).startsWith("none of the runs could finish"));
  }
}
