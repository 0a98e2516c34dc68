package soakloop.simulate;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Locates where something in the state crosses a level. */
final class Crossing implements ODEEventDetector {
  /**
   * Longest time between checks, s. Ends of steps are checked too, and steps are short where
   * temperatures turn.
   */
  private static final double CHECK = 2;

  /** How closely an instant is located, s. */
  private static final double ACCURACY = 1e-6;

  private static final int MAX_ITERATIONS = 100;

  private final Level level;
  private final Reaction reaction;

  /** What crosses zero. */
  interface Level {
    double value(double[] y);
  }

  /** What follows. */
  interface Reaction {
    /** Says whether the derivatives change at once. */
    boolean happened(double time, boolean rising);
  }

  Crossing(Level level, Reaction reaction) {
    this.level = level;
    this.reaction = reaction;
  }

  @Override
  public double g(ODEStateAndDerivative state) {
    return level.value(state.getPrimaryState());
  }

  @Override
  public AdaptableInterval getMaxCheckInterval() {
    return AdaptableInterval.of(CHECK);
  }

  @Override
  public int getMaxIterationCount() {
    return MAX_ITERATIONS;
  }

  @Override
  public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
    return new BracketingNthOrderBrentSolver(0, ACCURACY, 0, 5);
  }

  @Override
  public ODEEventHandler getHandler() {
    return (state, detector, rising) ->
        reaction.happened(state.getTime(), rising) ? Action.RESET_DERIVATIVES : Action.CONTINUE;
  }
}
