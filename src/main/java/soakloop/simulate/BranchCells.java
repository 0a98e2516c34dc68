package soakloop.simulate;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Ways side by side: each takes its share of the flow, and what leaves them mixes by enthalpy.
 *
 * <p>While a way's cells are asked, the moment's flows are the way's own.
 */
final class BranchCells implements LoopCells {
  private final LoopFlow flow;
  private final int stretch;
  private final List<List<LoopCells>> ways;
  private final Outflow outflow;
  private final double[] shares;

  /**
   * Takes the ways.
   *
   * @param flow says how it divides
   * @param stretch which parallel stretch of the loop this is
   * @param ways each with its cells in order
   */
  BranchCells(LoopFlow flow, int stretch, List<List<LoopCells>> ways) {
    this.flow = flow;
    this.stretch = stretch;
    this.ways = ways;
    this.shares = new double[ways.size()];
    this.outflow = Outflow.joined(ways.stream().map(way -> last(way).outflow()).toList());
  }

  /** Returns a way's cells in order. */
  List<LoopCells> way(int index) {
    return ways.get(index);
  }

  private static LoopCells last(List<LoopCells> way) {
    return way.get(way.size() - 1);
  }

  @Override
  public void startPhase(double[] y, double coolantFlow) {
    divide();
    for (int w = 0; w < shares.length; w++) {
      for (LoopCells cells : ways.get(w)) {
        cells.startPhase(y, shares[w] * coolantFlow);
      }
    }
  }

  @Override
  public void flows(Moment m) {
    divide();
    double volume = m.coolantFlow;
    for (int w = 0; w < shares.length; w++) {
      m.coolantFlow = shares[w] * volume;
      for (LoopCells cells : ways.get(w)) {
        cells.flows(m);
      }
    }
    m.coolantFlow = volume;
  }

  /** Takes up how the flow divides now. */
  private void divide() {
    int i = 0;
    for (int w = 0; w < shares.length; w++) {
      shares[w] = flow.share(stretch, w);
      Outflow leaving = last(ways.get(w)).outflow();
      for (int k = 0; k < leaving.size(); k++) {
        outflow.setShare(i++, shares[w] * leaving.share(k));
      }
    }
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double volume = m.coolantFlow;
    double mass = m.coolantMassFlow;
    double entering = m.coolantTheta;
    for (int w = 0; w < shares.length; w++) {
      m.coolantFlow = shares[w] * volume;
      m.coolantMassFlow = shares[w] * mass;
      m.coolantTheta = entering;
      for (LoopCells cells : ways.get(w)) {
        cells.derivatives(y, dy, m);
        cells.outlet(y, m);
      }
    }
    m.coolantFlow = volume;
    m.coolantMassFlow = mass;
  }

  @Override
  public void heats(double[] y, Moment m) {
    for (List<LoopCells> way : ways) {
      for (LoopCells cells : way) {
        cells.heats(y, m);
      }
    }
  }

  @Override
  public void outlet(double[] y, Moment m) {
    double mixed = 0;
    for (int i = 0; i < outflow.size(); i++) {
      mixed += outflow.share(i) * y[outflow.state(i)];
    }
    m.coolantTheta = mixed;
  }

  @Override
  public Outflow outflow() {
    return outflow;
  }

  @Override
  public void jacobian(
      double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries) {
    double volume = m.coolantFlow;
    double mass = m.coolantMassFlow;
    double entering = m.coolantTheta;
    for (int w = 0; w < shares.length; w++) {
      m.coolantFlow = shares[w] * volume;
      m.coolantMassFlow = shares[w] * mass;
      m.coolantTheta = entering;
      Outflow before = inlet;
      for (LoopCells cells : ways.get(w)) {
        cells.jacobian(y, m, before, ledger, entries);
        cells.outlet(y, m);
        before = cells.outflow();
      }
    }
    m.coolantFlow = volume;
    m.coolantMassFlow = mass;
  }

  @Override
  public void fill(double[] y, double temperature) {
    for (List<LoopCells> way : ways) {
      for (LoopCells cells : way) {
        cells.fill(y, temperature);
      }
    }
  }

  @Override
  public double storedInCoolant(double[] y) {
    return sum(cells -> cells.storedInCoolant(y));
  }

  @Override
  public double storedInMetal(double[] y) {
    return sum(cells -> cells.storedInMetal(y));
  }

  @Override
  public double storedInIce(double[] y) {
    return sum(cells -> cells.storedInIce(y));
  }

  @Override
  public double storedInWalls(double[] y) {
    return sum(cells -> cells.storedInWalls(y));
  }

  private double sum(ToDoubleFunction<LoopCells> stored) {
    return ways.stream().flatMap(List::stream).mapToDouble(stored).sum();
  }
}
