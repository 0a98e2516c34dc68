package soakloop.flow;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import soakloop.quantity.Bracket;
import soakloop.quantity.Require;

/**
 * Branches side by side: one pressure loss, flows that add.
 *
 * @param branches one or more
 */
public record Parallel(List<Resistance> branches) implements Resistance {
  /** Copies the list. */
  public Parallel {
    branches = List.copyOf(branches);
    if (branches.isEmpty()) {
      throw new IllegalArgumentException("parallel needs at least one branch");
    }
  }

  /**
   * The common pressure loss.
   *
   * <p>It lies between none and what the easiest branch would lose with all of the flow; found
   * there by bracketing, to about 1e-12 of itself.
   */
  @Override
  public double loss(double flow, Liquid liquid) {
    if (Require.notNegative("flow", flow) == 0) {
      return 0;
    }
    double most = Double.POSITIVE_INFINITY;
    for (Resistance branch : branches) {
      most = Math.min(most, branch.loss(flow, liquid));
    }
    if (most == 0 || most == Double.POSITIVE_INFINITY || branches.size() == 1) {
      return most;
    }
    return Bracket.root(0, most, loss -> total(loss, flow, liquid) - flow);
  }

  /**
   * How a flow divides.
   *
   * @param flow of all branches together, m3/s, 0 or more
   * @param liquid the fluid
   * @return flow of each branch, m3/s, in order; all 0 if every branch is blocked
   */
  public double[] split(double flow, Liquid liquid) {
    double loss = loss(flow, liquid);
    if (loss == Double.POSITIVE_INFINITY) {
      return new double[branches.size()];
    }
    double[] shares = new double[branches.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = flowAt(branches.get(i), loss, flow, liquid);
    }
    double sum = Arrays.stream(shares).sum();
    if (sum > 0) {
      for (int i = 0; i < shares.length; i++) {
        shares[i] *= flow / sum;
      }
    }
    return shares;
  }

  private double total(double loss, double flow, Liquid liquid) {
    double sum = 0;
    for (Resistance branch : branches) {
      sum += flowAt(branch, loss, flow, liquid);
    }
    return sum;
  }

  /** Flow of a branch at a loss, at most {@code flow}. */
  private static double flowAt(Resistance branch, double loss, double flow, Liquid liquid) {
    double all = branch.loss(flow, liquid);
    if (all == Double.POSITIVE_INFINITY) {
      return 0;
    }
    if (all <= loss) {
      return flow;
    }
    DoubleUnaryOperator excess = q -> branch.loss(q, liquid) - loss;
    return Bracket.root(0, flow, excess);
  }
}
