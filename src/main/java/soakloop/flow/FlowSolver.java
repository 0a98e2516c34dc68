package soakloop.flow;

import soakloop.quantity.Bracket;

/**
 * Finds where a drive meets a resistance.
 *
 * <p>The balance is bracketed on a grid that is even in flow and dense near its ends, then found by
 * a bracketing method, to 1e-12 of the flow. On a curve that rises somewhere there may be several
 * balances; two that lie within one step of the grid are not seen. Every input that can be made
 * gives an answer: {@link OperatingPoint} says which.
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
   * @param drive pump, fan or several
   * @param resistance what they work against
   * @param liquid the fluid at its temperature
   * @return the greatest stable balance, or why there is none
   */
  public static OperatingPoint solve(Drive drive, Resistance resistance, Liquid liquid) {
    double shut = drive.rise(0);
    double top = greatest(drive, resistance, liquid);
    if (resistance.loss(LEAST_SHARE * top, liquid) == Double.POSITIVE_INFINITY) {
      return new OperatingPoint.Still(OperatingPoint.Cause.DEAD_HEADED, shut);
    }
    if (!(shut > 0)) {
      return new OperatingPoint.Still(OperatingPoint.Cause.NO_PRESSURE, shut);
    }
    if (excess(drive, resistance, liquid, top) > 0) {
      if (drive.reach() == Double.POSITIVE_INFINITY) {
        return new OperatingPoint.Unbraked(drive.rise(top));
      }
      return new OperatingPoint.PastCurve(top, drive.rise(top), resistance.loss(top, liquid));
    }
    return scan(drive, resistance, liquid, top);
  }

  /** Walks down from the greatest flow: the first balance met is the greatest stable one. */
  private static OperatingPoint scan(
      Drive drive, Resistance resistance, Liquid liquid, double top) {
    double above = top;
    double found = 0;
    int balances = 0;
    boolean braking = true;
    for (int i = STEPS - 1; i >= 0; i--) {
      double at = i == 0 ? LEAST_SHARE * top : top * place((double) i / STEPS);
      boolean brakes = excess(drive, resistance, liquid, at) <= 0;
      if (brakes != braking) {
        balances++;
        if (balances == 1) {
          found = Bracket.root(at, above, q -> excess(drive, resistance, liquid, q));
        }
      }
      braking = brakes;
      above = at;
    }
    if (balances == 0) {
      return new OperatingPoint.Still(OperatingPoint.Cause.CLOGGED, drive.rise(0));
    }
    return new OperatingPoint.Balanced(found, drive.rise(found), balances);
  }

  /** Dense near no flow, where a nearly clogged loop balances. */
  private static double place(double share) {
    return share * share;
  }

  /** A flow with more loss than rise, or the end of the drive's table. */
  private static double greatest(Drive drive, Resistance resistance, Liquid liquid) {
    double reach = drive.reach();
    if (reach < Double.POSITIVE_INFINITY) {
      return reach;
    }
    double flow = SMALL_FLOW;
    for (int i = 0; i < DOUBLINGS && excess(drive, resistance, liquid, flow) > 0; i++) {
      flow *= 2;
    }
    return flow;
  }

  private static double excess(Drive drive, Resistance resistance, Liquid liquid, double flow) {
    double loss = resistance.loss(flow, liquid);
    // A shut branch: any finite number on the braking side will do, and solvers want one.
    return loss == Double.POSITIVE_INFINITY ? -Double.MAX_VALUE : drive.rise(flow) - loss;
  }
}
