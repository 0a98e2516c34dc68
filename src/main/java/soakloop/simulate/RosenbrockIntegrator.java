package soakloop.simulate;

import java.util.Arrays;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.LocalizedODEFormats;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;

/**
 * Integrates by a linearly implicit method of third order ({@link RosenbrockTable}), so that steps
 * are as long as accuracy allows, not as short as the quickest cell demands.
 *
 * <p>Built on Hipparchus' integrators: events, step handlers and step limits are theirs. Between
 * the ends of a step states follow {@link HermiteInterpolator}. A step's error is the largest of
 * any dynamic state over its tolerance; quadratures do not count. Time goes forward only.
 */
final class RosenbrockIntegrator extends AdaptiveStepsizeIntegrator {
  private static final double SAFETY = 0.9;
  private static final double MOST_GROWTH = 5;
  private static final double MOST_SHRINKING = 0.2;

  private final LinearlyImplicitEquation equation;
  private final RosenbrockStep step;
  private double planned;

  /**
   * Makes an integrator of one equation.
   *
   * @param equation what to integrate; {@link #integrate} must be given the same
   * @param step made for it; may serve several integrators one after another
   * @param minStep shortest step, s
   * @param maxStep longest step, s
   * @param absolute tolerance of every dynamic state
   * @param relative the same over its value
   */
  RosenbrockIntegrator(
      LinearlyImplicitEquation equation,
      RosenbrockStep step,
      double minStep,
      double maxStep,
      double absolute,
      double relative) {
    super("ROS34PW2", minStep, maxStep, absolute, relative);
    this.equation = equation;
    this.step = step;
  }

  @Override
  public ODEStateAndDerivative integrate(
      ExpandableODE equations, ODEState initialState, double finalTime) {
    sanityChecks(initialState, finalTime);
    if (!(finalTime > initialState.getTime())) {
      throw new IllegalArgumentException("time must go forward");
    }
    setStepStart(initIntegration(equations, initialState, finalTime));
    setIsLastStep(false);
    // Two states and their derivatives take turns, so that a step makes no new ones.
    int size = equation.getDimension();
    double[] y = new double[size];
    double[] dy = new double[size];
    double[] after = new double[size];
    double[] slope = new double[size];
    double[] scale = new double[equation.dynamicStates()];
    boolean restart = true;
    do {
      double time = getStepStart().getTime();
      if (restart) {
        System.arraycopy(getStepStart().getCompleteState(), 0, y, 0, size);
        derivatives(time, y, dy);
        step.jacobianAt(y);
        setScale(y, scale);
        planned = initializeStep(true, RosenbrockTable.ORDER, scale, getStepStart());
      }
      double end = advance(time, finalTime, y, dy, after, scale);
      derivatives(end, after, slope);
      step.jacobianAt(after);
      ODEStateAndDerivative reached =
          equations.getMapper().mapStateAndDerivative(end, after, slope);
      HermiteInterpolator.Ends ends =
          new HermiteInterpolator.Ends(time, end - time, y, dy, after, slope);
      HermiteInterpolator between =
          new HermiteInterpolator(ends, true, getStepStart(), reached, equations.getMapper());
      setStepStart(acceptStep(between, finalTime));
      restart = getStepStart() != reached;
      double[] free = y;
      y = after;
      after = free;
      free = dy;
      dy = slope;
      slope = free;
      setScale(y, scale);
    } while (!isLastStep());
    ODEStateAndDerivative last = getStepStart();
    resetInternalState();
    return last;
  }

  private void derivatives(double time, double[] y, double[] dy) {
    getEvaluationsCounter().increment();
    equation.derivatives(time, y, dy);
  }

  private void setScale(double[] y, double[] scale) {
    Arrays.setAll(scale, i -> getStepSizeHelper().getTolerance(i, Math.abs(y[i])));
  }

  /** Makes a step that is accurate enough, plans the next and returns where this one ended. */
  private double advance(
      double time, double finalTime, double[] y, double[] dy, double[] after, double[] scale) {
    while (true) {
      double left = finalTime - time;
      boolean last = planned >= left;
      // The last two steps share what is left, rather than leave a sliver.
      double h = last ? left : Math.min(planned, 0.5 * left);
      setStepSize(h);
      step.make(time, h, y, dy, after);
      getEvaluationsCounter().increment(RosenbrockTable.STAGES - 1);
      double error = largest(step.error(), scale);
      if (Double.isNaN(error)) {
        throw new MathIllegalStateException(
            LocalizedODEFormats.NAN_APPEARING_DURING_INTEGRATION, time + h);
      }
      double factor = SAFETY * Math.pow(error, -1.0 / RosenbrockTable.ORDER);
      factor = Math.max(MOST_SHRINKING, Math.min(MOST_GROWTH, factor));
      boolean good = error <= 1;
      planned = getStepSizeHelper().filterStep(h * factor, true, good);
      if (good) {
        return last ? finalTime : time + h;
      }
    }
  }

  private static double largest(double[] error, double[] scale) {
    double largest = 0;
    for (int i = 0; i < scale.length; i++) {
      double over = Math.abs(error[i]) / scale[i];
      if (!(over <= largest)) {
        largest = over;
      }
    }
    return largest;
  }
}
