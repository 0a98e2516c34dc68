package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/** Keeps a run's states at given times, off the integrator's dense output. */
final class StateKeeper implements ODEStepHandler {
  private static final double SAME = 1e-9;

  /** Makes a state of what the run has at hand. */
  interface Maker {
    CarState at(double time, double[] y);
  }

  private final double[] times;
  private final double[] scratch;
  private final Maker maker;
  private final List<CarState> kept = new ArrayList<>();

  /**
   * Sets out.
   *
   * @param times s, never falling
   * @param states length of a state
   * @param maker of what is kept
   */
  StateKeeper(double[] times, int states, Maker maker) {
    this.times = times.clone();
    this.scratch = new double[states];
    this.maker = maker;
  }

  /** Keeps what is due at the start of the run. */
  void start(CarState from) {
    while (isDue(from.time())) {
      kept.add(from);
    }
  }

  @Override
  public void handleStep(ODEStateInterpolator interpolator) {
    while (isDue(interpolator.getCurrentState().getTime())) {
      double time = Math.min(times[kept.size()], interpolator.getCurrentState().getTime());
      if (interpolator instanceof HermiteInterpolator hermite) {
        hermite.state(time, scratch);
        kept.add(maker.at(time, scratch));
      } else {
        kept.add(maker.at(time, interpolator.getInterpolatedState(time).getPrimaryState()));
      }
    }
  }

  private boolean isDue(double until) {
    return kept.size() < times.length && times[kept.size()] <= until + SAME;
  }

  /** Returns what was kept. */
  List<CarState> kept() {
    if (kept.size() < times.length) {
      throw new IllegalArgumentException(times[kept.size()] + " s is not in the stretch");
    }
    return kept;
  }
}
