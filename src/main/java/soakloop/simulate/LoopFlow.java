package soakloop.simulate;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import soakloop.quantity.Curve;
import soakloop.rig.Loop;
import soakloop.rig.PumpDelivery;

/** Flow around the loop with the pump on. */
public final class LoopFlow {
  private static final int MAX_EVALUATIONS = 200;
  private static final double RELATIVE = 1e-10;

  private LoopFlow() {}

  /**
   * Returns the flow at which the pump's pressure meets the loop's loss.
   *
   * @param loop the loop
   * @return m3/s
   */
  public static double operating(Loop loop) {
    PumpDelivery delivery = loop.pump().delivery();
    if (delivery instanceof PumpDelivery.StatedFlow stated) {
      return stated.flow();
    }
    Curve curve = ((PumpDelivery.FromCurve) delivery).pressureOverFlow();
    double most = curve.place(curve.size() - 1);
    return new BracketingNthOrderBrentSolver(RELATIVE, most * RELATIVE, 5)
        .solve(MAX_EVALUATIONS, q -> curve.at(q) - loop.resistance().at(q), 0, most);
  }
}
