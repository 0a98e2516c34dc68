package soakloop.flow;

import soakloop.quantity.Bracket;

/**
 * Finds where a mover meets a resistance.
 *
 * <p>The balance is found by a bracketing method, to 1e-12 of the flow. On a curve that rises
 * somewhere there may be several balances: they are bracketed on a grid that is even in flow and
 * dense near its ends, and two that lie within one step of it are not seen. Every input that can be
 * made gives an answer: {@link OperatingPoint} says which.
 */
public final class FlowSolver {
  private static final int STEPS = 64;

  /** Flow below this share of the greatest possible cannot be told from none. */
  private static final double LEAST_SHARE = 1e-9;

  /** Where to begin the search for a flow that brakes: a drop each second. */
  private static final double SMALL_FLOW = 1e-7;

  /** Doublings from the small flow to one no machine of this kind reaches: 1e-7 to 1e8 m3/s. */
  private static final int DOUBLINGS = 50;

  private FlowSolver() {}

  /**
   * Solves.
   *
   * @param mover pump, fan or several
   * @param resistance what they work against
   * @param liquid the fluid at its temperature
   * @return the greatest stable balance, or why there is none
   */
  public static OperatingPoint solve(Mover mover, Resistance resistance, Liquid liquid) {
    double shut = mover.rise(0);
    double top = greatest(mover, resistance, liquid);
    if (resistance.loss(LEAST_SHARE * top, liquid) == Double.POSITIVE_INFINITY) {
      return new OperatingPoint.Still(OperatingPoint.Cause.DEAD_HEADED, shut);
    }
    if (!(shut > 0)) {
      return new OperatingPoint.Still(OperatingPoint.Cause.NO_PRESSURE, shut);
    }
    if (excess(mover, resistance, liquid, top) > 0) {
      if (mover.reach() == Double.POSITIVE_INFINITY) {
        return new OperatingPoint.Unbraked(mover.rise(top));
      }
      return new OperatingPoint.PastCurve(top, mover.rise(top), resistance.loss(top, liquid));
    }
    return mover.falls()
        ? single(mover, resistance, liquid, top)
        : scan(mover, resistance, liquid, top);
  }

  /** The one balance of a falling curve, since a loss never falls with flow. */
  private static OperatingPoint single(
      Mover mover, Resistance resistance, Liquid liquid, double top) {
    double least = LEAST_SHARE * top;
    if (excess(mover, resistance, liquid, least) <= 0) {
      return new OperatingPoint.Still(OperatingPoint.Cause.CLOGGED, mover.rise(0));
    }
    double found = Bracket.root(least, top, q -> excess(mover, resistance, liquid, q));
    return new OperatingPoint.Balanced(found, mover.rise(found), 1);
  }

  /** Walks down from the greatest flow: the first balance met is the greatest stable one. */
  private static OperatingPoint scan(
      Mover mover, Resistance resistance, Liquid liquid, double top) {
    double above = top;
    double found = 0;
    int balances = 0;
    boolean braking = true;
    for (int i = STEPS - 1; i >= 0; i--) {
      double at = i == 0 ? LEAST_SHARE * top : top * place((double) i / STEPS);
      boolean brakes = excess(mover, resistance, liquid, at) <= 0;
      if (brakes != braking) {
        balances++;
        if (balances == 1) {
          found = Bracket.root(at, above, q -> excess(mover, resistance, liquid, q));
        }
      }
      braking = brakes;
      above = at;
    }
    if (balances == 0) {
      return new OperatingPoint.Still(OperatingPoint.Cause.CLOGGED, mover.rise(0));
    }
    return new OperatingPoint.Balanced(found, mover.rise(found), balances);
  }

  /** Dense near no flow, where a nearly clogged loop balances. */
  private static double place(double share) {
    return share * share;
  }

  /** A flow with more loss than rise, or the end of the mover's table. */
  private static double greatest(Mover mover, Resistance resistance, Liquid liquid) {
    double reach = mover.reach();
    if (reach < Double.POSITIVE_INFINITY) {
      return reach;
    }
    double flow = SMALL_FLOW;
    for (int i = 0; i < DOUBLINGS && excess(mover, resistance, liquid, flow) > 0; i++) {
      flow *= 2;
    }
    return flow;
  }

  private static double excess(Mover mover, Resistance resistance, Liquid liquid, double flow) {
    double loss = resistance.loss(flow, liquid);
    // A shut branch: any finite number on the braking side will do, and solvers want one.
    return loss == Double.POSITIVE_INFINITY ? -Double.MAX_VALUE : mover.rise(flow) - loss;
  }
}
