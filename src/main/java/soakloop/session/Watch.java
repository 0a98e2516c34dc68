package soakloop.session;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/**
 * Locates where something in a pass changes its sign.
 *
 * @param level what
 * @param action what follows
 */
record Watch(ToDoubleFunction<double[]> level, Action action) implements ODEEventDetector {
  private static final double CHECK = 1;
  private static final double ACCURACY = 1e-11;

  @Override
  public double g(ODEStateAndDerivative state) {
    return level.applyAsDouble(state.getPrimaryState());
  }

  @Override
  public AdaptableInterval getMaxCheckInterval() {
    return AdaptableInterval.of(CHECK);
  }

  @Override
  public int getMaxIterationCount() {
    return 100;
  }

  @Override
  public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
    return new BracketingNthOrderBrentSolver(0, ACCURACY, 0, 5);
  }

  @Override
  public ODEEventHandler getHandler() {
    return (state, detector, rising) -> action;
  }
}
