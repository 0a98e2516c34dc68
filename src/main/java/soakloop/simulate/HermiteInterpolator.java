package soakloop.simulate;

import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.AbstractODEStateInterpolator;

/**
 * A step's states in between: the cubic with the values and slopes of both ends. It holds while the
 * step is handled; the integrator then writes the next step into the same arrays.
 */
final class HermiteInterpolator extends AbstractODEStateInterpolator {
  private static final long serialVersionUID = 1L;

  private final Ends ends;

  /**
   * States and slopes at both ends of the whole step.
   *
   * @param start s
   * @param step s
   * @param before state at the start
   * @param slopeBefore its derivative
   * @param after state at the end
   * @param slopeAfter its derivative
   */
  @SuppressWarnings("ArrayRecordComponent") // a carrier within one step, never compared
  record Ends(
      double start,
      double step,
      double[] before,
      double[] slopeBefore,
      double[] after,
      double[] slopeAfter)
      implements java.io.Serializable {}

  HermiteInterpolator(
      Ends ends,
      boolean forward,
      ODEStateAndDerivative previous,
      ODEStateAndDerivative current,
      EquationsMapper mapper) {
    this(ends, forward, previous, current, previous, current, mapper);
  }

  private HermiteInterpolator(
      Ends ends,
      boolean forward,
      ODEStateAndDerivative previous,
      ODEStateAndDerivative current,
      ODEStateAndDerivative softPrevious,
      ODEStateAndDerivative softCurrent,
      EquationsMapper mapper) {
    super(forward, previous, current, softPrevious, softCurrent, mapper);
    this.ends = ends;
  }

  /**
   * Works out a state without making anything new.
   *
   * @param time s, within the step
   * @param state takes it
   */
  void state(double time, double[] state) {
    double h = ends.step();
    double theta = (time - ends.start()) / h;
    double left = 1 - theta;
    double ofAfter = theta * theta * (3 - 2 * theta);
    double ofSlopeBefore = theta * left * left * h;
    double ofSlopeAfter = -theta * theta * left * h;
    double[] before = ends.before();
    double[] after = ends.after();
    double[] slopeBefore = ends.slopeBefore();
    double[] slopeAfter = ends.slopeAfter();
    for (int i = 0; i < state.length; i++) {
      state[i] =
          before[i]
              + ofAfter * (after[i] - before[i])
              + ofSlopeBefore * slopeBefore[i]
              + ofSlopeAfter * slopeAfter[i];
    }
  }

  private void slope(double theta, double[] slope) {
    double rise = 6 * theta * (1 - theta) / ends.step();
    double ofBefore = (1 - theta) * (1 - 3 * theta);
    double ofAfter = theta * (3 * theta - 2);
    for (int i = 0; i < slope.length; i++) {
      slope[i] =
          rise * (ends.after()[i] - ends.before()[i])
              + ofBefore * ends.slopeBefore()[i]
              + ofAfter * ends.slopeAfter()[i];
    }
  }

  @Override
  protected AbstractODEStateInterpolator create(
      boolean newForward,
      ODEStateAndDerivative newGlobalPreviousState,
      ODEStateAndDerivative newGlobalCurrentState,
      ODEStateAndDerivative newSoftPreviousState,
      ODEStateAndDerivative newSoftCurrentState,
      EquationsMapper newMapper) {
    return new HermiteInterpolator(
        ends,
        newForward,
        newGlobalPreviousState,
        newGlobalCurrentState,
        newSoftPreviousState,
        newSoftCurrentState,
        newMapper);
  }

  @Override
  protected ODEStateAndDerivative computeInterpolatedStateAndDerivatives(
      EquationsMapper equationsMapper,
      double time,
      double theta,
      double thetaH,
      double oneMinusThetaH) {
    double[] state = new double[ends.before().length];
    double[] slope = new double[state.length];
    state(time, state);
    slope(theta, slope);
    return equationsMapper.mapStateAndDerivative(time, state, slope);
  }
}
