package soakloop.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.Curve;

@Tag("analytic")
class FlowSolverTest {
  private static final Liquid COOLANT = new Liquid(1050, 2e-3);
  private static final double LITRE_PER_MINUTE = 1 / 60e3;
  private static final Mover PUMP = new Mover.Parabola(45e3, 60 * LITRE_PER_MINUTE);
  private static final Resistance LOOP = new Resistance.KnownPoint(30e3, 30 * LITRE_PER_MINUTE, 2);

  @Test
  void tenThousandRandomLoopsBalanceOrSayWhy() {
    RandomLoops loops = new RandomLoops(20_261_125);
    Map<Outcome, Integer> seen = new EnumMap<>(Outcome.class);
    for (int i = 0; i < 10_000; i++) {
      RandomLoops.Loop loop = loops.next();
      OperatingPoint point = FlowSolver.solve(loop.mover(), loop.resistance(), loop.liquid());
      seen.merge(check(loop, point), 1, Integer::sum);
    }
    // Every kind of answer must have been asked for, or the loops are not random enough.
    for (Outcome outcome : Outcome.values()) {
      assertTrue(seen.getOrDefault(outcome, 0) >= 10, outcome + ": " + seen);
    }
  }

  private enum Outcome {
    BALANCED,
    SEVERAL_BALANCES,
    NO_PRESSURE,
    DEAD_HEADED,
    CLOGGED,
    PAST_CURVE,
    UNBRAKED
  }

  /** Checks an answer by what it claims, without the solver. */
  private static Outcome check(RandomLoops.Loop loop, OperatingPoint point) {
    Mover mover = loop.mover();
    double flow = point.flow();
    if (point instanceof OperatingPoint.Balanced balanced) {
      double loss = loop.resistance().loss(flow, loop.liquid());
      double scale = Math.max(Math.abs(mover.rise(0)), loss);
      assertTrue(flow > 0, loop.toString());
      assertEquals(mover.rise(flow), loss, 1e-6 * scale, loop.toString());
      // Stable: a little more flow is braked.
      double more = flow * 1.000_01;
      assertTrue(mover.rise(more) < loop.resistance().loss(more, loop.liquid()), loop.toString());
      assertEquals(1, balanced.balances() % 2, loop.toString());
      return balanced.balances() == 1 ? Outcome.BALANCED : Outcome.SEVERAL_BALANCES;
    }
    if (point instanceof OperatingPoint.PastCurve past) {
      assertEquals(mover.reach(), past.flow(), loop.toString());
      assertTrue(past.loss() < past.pressure(), loop.toString());
      return Outcome.PAST_CURVE;
    }
    if (point instanceof OperatingPoint.Unbraked) {
      assertTrue(mover.rise(1e3) > loop.resistance().loss(1e3, loop.liquid()), loop.toString());
      return Outcome.UNBRAKED;
    }
    OperatingPoint.Still still = assertInstanceOf(OperatingPoint.Still.class, point);
    assertEquals(0, flow);
    return switch (still.cause()) {
      case NO_PRESSURE -> {
        assertTrue(mover.rise(0) <= 0, loop.toString());
        yield Outcome.NO_PRESSURE;
      }
      case DEAD_HEADED -> {
        assertEquals(Double.POSITIVE_INFINITY, loop.resistance().loss(1e-12, loop.liquid()));
        yield Outcome.DEAD_HEADED;
      }
      case CLOGGED -> {
        // A drop in some minutes already loses more than the pump gives.
        assertTrue(loop.resistance().loss(1e-9, loop.liquid()) > mover.rise(0), loop.toString());
        yield Outcome.CLOGGED;
      }
    };
  }

  @Test
  void aSlowerPumpFollowsTheAffinityLaws() {
    double full = FlowSolver.solve(PUMP, LOOP, COOLANT).flow();
    for (double speed : new double[] {0.01, 0.3, 0.8, 1.5}) {
      OperatingPoint point = FlowSolver.solve(new Mover.AtSpeed(PUMP, speed), LOOP, COOLANT);
      assertEquals(speed * full, point.flow(), 1e-9 * full);
    }
    OperatingPoint still = FlowSolver.solve(new Mover.AtSpeed(PUMP, 0), LOOP, COOLANT);
    assertEquals(
        OperatingPoint.Cause.NO_PRESSURE,
        assertInstanceOf(OperatingPoint.Still.class, still).cause());
  }

  @Test
  void twoPumpsInSeriesGiveTwiceThePressure() {
    Mover two = new Mover.InSeries(List.of(PUMP, PUMP));
    Mover strong = new Mover.Parabola(90e3, 60 * LITRE_PER_MINUTE);
    assertEquals(
        FlowSolver.solve(strong, LOOP, COOLANT).flow(),
        FlowSolver.solve(two, LOOP, COOLANT).flow(),
        1e-12);
  }

  @Test
  void equalBranchesShareEqually() {
    Resistance hose = new Resistance.Pipe(3, 19e-3, 0, 2);
    Parallel three = new Parallel(List.of(hose, hose, hose));
    double flow = 30 * LITRE_PER_MINUTE;
    assertEquals(
        hose.loss(flow / 3, COOLANT), three.loss(flow, COOLANT), 1e-8 * three.loss(flow, COOLANT));
    for (double share : three.split(flow, COOLANT)) {
      assertEquals(flow / 3, share, 1e-9 * flow);
    }
  }

  @Test
  void squareLawBranchesAddAsConductances() {
    // Q = sqrt(dp / k): 1 / sqrt(k) adds.
    Resistance one = new Resistance.KnownPoint(20e3, 1e-3, 2);
    Resistance other = new Resistance.KnownPoint(45e3, 1e-3, 2);
    double sum = 1 / Math.sqrt(20e3) + 1 / Math.sqrt(45e3);
    Parallel both = new Parallel(List.of(one, other));
    assertEquals(1 / (sum * sum), both.loss(1e-3, COOLANT), 1e-7 / (sum * sum));
    double[] split = both.split(1e-3, COOLANT);
    assertEquals(1.5, split[0] / split[1], 1e-8);
  }

  @Test
  void aBlockedBranchCarriesNothing() {
    Parallel half = new Parallel(List.of(LOOP, Resistance.BLOCKED));
    assertEquals(LOOP.loss(1e-4, COOLANT), half.loss(1e-4, COOLANT), 1e-9);
    assertEquals(0, half.split(1e-4, COOLANT)[1]);
    Parallel shut = new Parallel(List.of(Resistance.BLOCKED, Resistance.BLOCKED));
    assertEquals(0, shut.loss(0, COOLANT));
    assertEquals(Double.POSITIVE_INFINITY, shut.loss(1e-9, COOLANT));
    assertEquals(0, shut.split(1e-4, COOLANT)[0]);
  }

  @Test
  void aCurveThatRisesHasSeveralBalances() {
    Mover hump =
        new Mover.Table(
            Curve.of(new double[] {0, 5e-4, 8e-4, 1e-3}, new double[] {10e3, 30e3, 5e3, 0}));
    Resistance steep = new Resistance.KnownPoint(9.5e3, 1e-4, 1);
    OperatingPoint one = FlowSolver.solve(hump, steep, COOLANT);
    assertEquals(1, assertInstanceOf(OperatingPoint.Balanced.class, one).balances());
    // Constant back pressure of a check valve in the way, felt only once it opens.
    Resistance valve = (flow, liquid) -> 15e3 * Math.min(1, flow / 1e-5) + 1e3 * flow / 1e-3;
    OperatingPoint several = FlowSolver.solve(hump, valve, COOLANT);
    OperatingPoint.Balanced found = assertInstanceOf(OperatingPoint.Balanced.class, several);
    assertEquals(3, found.balances());
    assertTrue(found.flow() > 5e-4);
  }

  @Test
  void impossibleInputIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Mover.Parabola(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Mover.AtSpeed(PUMP, -0.1));
    assertThrows(IllegalArgumentException.class, () -> new Mover.Table(Curve.constant(1)));
    assertThrows(IllegalArgumentException.class, () -> new Resistance.Pipe(1, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> LOOP.loss(-1e-4, COOLANT));
    assertThrows(IllegalArgumentException.class, () -> LOOP.loss(Double.NaN, COOLANT));
    assertThrows(IllegalArgumentException.class, () -> new Parallel(List.of()));
    assertThrows(IllegalArgumentException.class, () -> PipeFriction.churchill(0, 0));
  }
}
