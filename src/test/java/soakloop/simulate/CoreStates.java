package soakloop.simulate;

import soakloop.rig.Core;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.LoopElement;
import soakloop.rig.Rig;

/** Where the core's temperatures lie in the state: all coolant cells, then all wall cells. */
final class CoreStates {
  private final int coolant;
  private final int cells;

  CoreStates(Rig rig) {
    int first = 0;
    for (LoopElement element : rig.loop().elements()) {
      if (element instanceof Core) {
        break;
      }
      first += states(element);
    }
    this.coolant = first;
    this.cells = cells(rig.loop().core().exchanger());
  }

  private static int states(LoopElement element) {
    if (element instanceof Hose h) {
      return h.cells() * (1 + h.layers());
    }
    return element instanceof HeatExchanger x ? 2 * cells(x.exchanger()) : 1;
  }

  private static int cells(Exchanger x) {
    return x.passes().count() * x.grid().along() * x.grid().depth();
  }

  /** Returns the temperature of the core's hottest metal, K. */
  double hottestMetal(double[] y) {
    double hottest = Double.NEGATIVE_INFINITY;
    for (int i = coolant + cells; i < coolant + 2 * cells; i++) {
      hottest = Math.max(hottest, y[i]);
    }
    return hottest;
  }

  /** Returns the mean of metal less coolant over the core's cells, K. */
  double metalLessCoolant(LoopModel model, double[] y) {
    double sum = 0;
    for (int i = coolant; i < coolant + cells; i++) {
      sum += y[i + cells] - model.temperature(i, y);
    }
    return sum / cells;
  }
}
