package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import soakloop.flow.OperatingPoint;
import soakloop.fluid.Coolant;
import soakloop.rig.Branches;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;

/**
 * Flow around the loop with the pump on, pump power and how the flow divides, over the temperature
 * of the coolant at the pump.
 *
 * <p>Viscosity is taken at that one temperature: around a loop it differs by some 10 K, which moves
 * the flow by a per cent or less. The operating point is solved at temperatures {@value #STEP} K
 * apart when they are first needed, and followed in between by a cubic through value and central
 * slope; beyond the range of the coolant's properties it stays. Between points the flow is within
 * 0.2 % of the operating point ({@code LoopFlowTest}).
 */
final class LoopFlow {
  private static final double STEP = 2.5;

  private final Loop loop;
  private final Coolant coolant;
  private final List<Branches> branches = new ArrayList<>();
  private final int[] firstShare;
  private final double lowest;
  private final double step;

  /** Flow, power and shares at each temperature; null where they were not needed yet. */
  private final double[][] nodes;

  /** The same where it was moved to. */
  private final double[] here;

  private double at = Double.NaN;

  LoopFlow(Loop loop, Coolant coolant) {
    this.loop = loop;
    this.coolant = coolant;
    for (LoopElement element : loop.elements()) {
      if (element instanceof Branches b) {
        branches.add(b);
      }
    }
    this.firstShare = new int[branches.size()];
    int size = 2;
    for (int i = 0; i < firstShare.length; i++) {
      firstShare[i] = size;
      size += branches.get(i).ways().size();
    }
    this.here = new double[size];
    this.lowest = coolant.minTemperature();
    double range = coolant.maxTemperature() - lowest;
    int steps = (int) Math.ceil(range / STEP);
    this.step = range / steps;
    this.nodes = new double[steps + 1][];
  }

  /**
   * Works out everything at a temperature of the coolant, K.
   *
   * @param temperature at the pump
   */
  void moveTo(double temperature) {
    if (temperature == at) {
      return;
    }
    at = temperature;
    double place = Math.max(0, Math.min(nodes.length - 1, (temperature - lowest) / step));
    int low = Math.min((int) place, nodes.length - 2);
    double s = place - low;
    double[] before = node(Math.max(low - 1, 0));
    double[] start = node(low);
    double[] end = node(low + 1);
    double[] after = node(Math.min(low + 2, nodes.length - 1));
    double risen = s * s * (3 - 2 * s);
    double early = s * (1 - s) * (1 - s);
    double late = s * s * (s - 1);
    double fromStart = low == 0 ? 1 : 0.5;
    double atEnd = low + 2 == nodes.length ? 1 : 0.5;
    for (int i = 0; i < here.length; i++) {
      here[i] =
          start[i]
              + risen * (end[i] - start[i])
              + early * fromStart * (end[i] - before[i])
              + late * atEnd * (after[i] - start[i]);
    }
  }

  /** Returns the flow where it was moved to, m3/s. */
  double flow() {
    return here[0];
  }

  /** Returns what the pump draws there, W. */
  double power() {
    return here[1];
  }

  /** Returns the share of the flow that a way of a parallel stretch takes there, 0 to 1. */
  double share(int stretch, int way) {
    return here[firstShare[stretch] + way];
  }

  /** Returns which parallel stretch of the loop this is, from 0. */
  int stretch(Branches element) {
    return branches.indexOf(element);
  }

  private double[] node(int i) {
    if (nodes[i] == null) {
      nodes[i] = solved(lowest + i * step);
    }
    return nodes[i];
  }

  private double[] solved(double temperature) {
    LoopPoint point = LoopPoint.of(loop, coolant, temperature);
    double[] values = new double[here.length];
    values[0] = point.flow();
    double pressure = point.point().map(OperatingPoint::pressure).orElse(point.loss());
    values[1] = loop.pump().power().at(point.flow(), pressure);
    for (int i = 0; i < firstShare.length; i++) {
      double[] shares = point.split(branches.get(i), coolant);
      System.arraycopy(shares, 0, values, firstShare[i], shares.length);
    }
    return values;
  }
}
