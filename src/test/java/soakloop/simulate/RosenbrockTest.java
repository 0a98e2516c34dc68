package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The linearly implicit method against its order conditions and Hipparchus' explicit methods. */
@Tag("analytic")
class RosenbrockTest {
  private static final double END = 2;

  private static final double[][] ALPHA = RosenbrockTable.published()[0];
  private static final double[][] COUPLING = RosenbrockTable.published()[1];

  /**
   * Order conditions of a method for any matrix in the Jacobian's place, to order 3 (E. Hairer, G.
   * Wanner, Solving Ordinary Differential Equations II, section IV.7, on W-methods; from memory).
   */
  @Test
  void tableMeetsTheOrderConditionsForAnyMatrix() {
    double[] weight = RosenbrockTable.published()[2][0];
    double[] embedded = RosenbrockTable.published()[2][1];
    for (double[] b : List.of(weight, embedded)) {
      assertEquals(1, dot(b, i -> 1), 1e-14);
      assertEquals(1.0 / 2, dot(b, i -> sum(ALPHA[i])), 1e-14);
      assertEquals(0, dot(b, i -> sum(COUPLING[i])), 1e-14);
    }
    assertEquals(1.0 / 3, dot(weight, i -> sum(ALPHA[i]) * sum(ALPHA[i])), 1e-14);
    assertEquals(1.0 / 6, dot(weight, i -> chained(ALPHA[i], ALPHA)), 1e-14);
    assertEquals(0, dot(weight, i -> chained(ALPHA[i], COUPLING)), 1e-14);
    assertEquals(0, dot(weight, i -> chained(COUPLING[i], ALPHA)), 1e-14);
    assertEquals(0, dot(weight, i -> chained(COUPLING[i], COUPLING)), 1e-14);
    // The embedded result must not be of third order too, or it would show no error.
    assertTrue(Math.abs(dot(embedded, i -> sum(ALPHA[i]) * sum(ALPHA[i])) - 1.0 / 3) > 1e-2);
  }

  private interface Row {
    double of(int i);
  }

  private static double dot(double[] b, Row row) {
    return IntStream.range(0, b.length).mapToDouble(i -> b[i] * row.of(i)).sum();
  }

  private static double sum(double[] row) {
    return dot(row, i -> 1);
  }

  private static double chained(double[] row, double[][] next) {
    return dot(row, j -> sum(next[j]));
  }

  @ParameterizedTest
  @EnumSource(ShiftedDecay.Given.class)
  void halvingTheStepCutsTheErrorEightfoldWhateverTheJacobian(ShiftedDecay.Given given) {
    double[] exact = reference(new ShiftedDecay(3, given), END);
    double coarse = fixedStepError(new ShiftedDecay(3, given), 64, exact);
    double fine = fixedStepError(new ShiftedDecay(3, given), 128, exact);
    double order = Math.log(coarse / fine) / Math.log(2);
    assertTrue(order > 2.8 && order < 3.6, "observed order " + order);
  }

  private static double fixedStepError(ShiftedDecay equation, int count, double[] exact) {
    double[] y = ShiftedDecay.start();
    RosenbrockStep step = new RosenbrockStep(equation, 0, y);
    double h = END / count;
    for (int i = 0; i < count; i++) {
      double[] dy = equation.computeDerivatives(i * h, y);
      step.jacobianAt(y);
      double[] after = new double[y.length];
      step.make(i * h, h, y, dy, after);
      y = after;
    }
    double error = 0;
    for (int i = 0; i < y.length; i++) {
      error = Math.max(error, Math.abs(y[i] - exact[i]));
    }
    return error;
  }

  private static double[] reference(ShiftedDecay equation, double end) {
    return new DormandPrince853Integrator(1e-12, 1, 1e-13, 1e-13)
        .integrate(equation, new ODEState(0, ShiftedDecay.start()), end)
        .getPrimaryState();
  }

  @Test
  void stiffnessDoesNotShortenTheSteps() {
    assertTrue(steps(1e6) < 1.5 * steps(10), steps(1e6) + " steps, and " + steps(10));
  }

  private static int steps(double lambda) {
    ODEIntegrator integrator = integrator(new ShiftedDecay(lambda, ShiftedDecay.Given.EXACT), 1e-5);
    int[] steps = new int[1];
    integrator.addStepHandler(step -> steps[0]++);
    integrator.integrate(
        new ShiftedDecay(lambda, ShiftedDecay.Given.EXACT),
        new ODEState(0, ShiftedDecay.start()),
        20);
    return steps[0];
  }

  private static ODEIntegrator integrator(ShiftedDecay equation, double tolerance) {
    return new RosenbrockIntegrator(
        equation,
        new RosenbrockStep(equation, 0, ShiftedDecay.start()),
        1e-9,
        10,
        tolerance,
        tolerance);
  }

  @Test
  void statesWithinStepsFollowTheSolution() {
    ShiftedDecay equation = new ShiftedDecay(50, ShiftedDecay.Given.EXACT);
    ODEIntegrator integrator = integrator(equation, 1e-6);
    List<Double> errors = new ArrayList<>();
    integrator.addStepHandler(
        step -> {
          double from = step.getPreviousState().getTime();
          double to = step.getCurrentState().getTime();
          for (int k = 1; k < 8; k++) {
            double t = from + k * (to - from) / 8;
            double[] y = step.getInterpolatedState(t).getPrimaryState();
            double[] slope = step.getInterpolatedState(t).getPrimaryDerivative();
            errors.add(Math.abs(y[0] - Math.cos(t)));
            errors.add(1e-2 * Math.abs(slope[0] + Math.sin(t)));
            errors.add(Math.abs(y[2] - Math.sin(t)));
          }
        });
    integrator.integrate(equation, new ODEState(0, ShiftedDecay.start()), 10);
    double worst = errors.stream().mapToDouble(e -> e).max().orElseThrow();
    assertTrue(worst < 2e-5, "off by " + worst);
  }

  /** The cosine falls through 0.3 and rises through it again; Hipparchus locates both. */
  @Test
  void eventsAreLocatedAsTheExplicitMethodDoes() {
    ShiftedDecay equation = new ShiftedDecay(20, ShiftedDecay.Given.EXACT);
    List<Double> times = new ArrayList<>();
    ODEIntegrator integrator = integrator(equation, 1e-7);
    integrator.addEventDetector(
        new Crossing(
            y -> y[0] - 0.3,
            (time, rising) -> {
              times.add(time);
              return true;
            }));
    integrator.integrate(equation, new ODEState(0, ShiftedDecay.start()), 7);
    assertEquals(2, times.size());
    assertEquals(Math.acos(0.3), times.get(0), 1e-5);
    assertEquals(2 * Math.PI - Math.acos(0.3), times.get(1), 1e-5);
  }

  @Test
  void linearBalanceStaysExactHoweverCoarse() {
    LinearlyImplicitEquation pair = new LeakingPair();
    ODEIntegrator integrator =
        new RosenbrockIntegrator(
            pair, new RosenbrockStep(pair, 0, LeakingPair.start()), 1e-9, 10, 0.5, 0);
    double[] y =
        integrator.integrate(pair, new ODEState(0, LeakingPair.start()), 30).getPrimaryState();
    double[] from = LeakingPair.start();
    assertEquals(from[0] + 2 * from[1], y[0] + 2 * y[1] + y[2], 1e-10);
    assertTrue(y[2] > 10);
  }

  /** Two masses, the second twice the first, one leaking outside; the leak is booked. */
  private static final class LeakingPair implements LinearlyImplicitEquation {
    static double[] start() {
      return new double[] {100, 20, 0};
    }

    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public int dynamicStates() {
      return 2;
    }

    @Override
    public void derivatives(double t, double[] y, double[] dy) {
      double across = 4 * (y[0] - y[1]);
      double leak = 0.3 * y[1] * (2 + Math.sin(t));
      dy[0] = -across;
      dy[1] = (across - leak) / 2;
      dy[2] = leak;
    }

    @Override
    public void jacobian(double[] y, JacobianEntries entries) {
      entries.add(0, 0, -4);
      entries.add(0, 1, 4);
      entries.add(1, 0, 2);
      entries.add(1, 1, -2 - 0.3);
      entries.add(2, 1, 0.6);
    }
  }
}
