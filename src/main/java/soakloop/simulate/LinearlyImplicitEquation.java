package soakloop.simulate;

import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * An equation that can also say roughly how its derivatives change with its states.
 *
 * <p>The last states may be quadratures: nothing depends on them, and they do not steer the steps.
 */
interface LinearlyImplicitEquation extends OrdinaryDifferentialEquation {
  /**
   * Works out the derivatives without making anything new.
   *
   * @param t s
   * @param y the state
   * @param dy takes the derivatives
   */
  void derivatives(double t, double[] y, double[] dy);

  @Override
  default double[] computeDerivatives(double t, double[] y) {
    double[] dy = new double[y.length];
    derivatives(t, y, dy);
    return dy;
  }

  /**
   * Gives the Jacobian at the state whose derivatives were worked out last. It may leave out what
   * matters little: the method's order does not depend on it.
   *
   * @param y that state
   * @param entries takes it
   */
  void jacobian(double[] y, JacobianEntries entries);

  /** Returns the number of states before the quadratures. */
  int dynamicStates();
}
