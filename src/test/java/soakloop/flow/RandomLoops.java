package soakloop.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import soakloop.quantity.Curve;

/** Loops of every kind, sound and broken, from a seed. */
final class RandomLoops {
  record Loop(Mover mover, Resistance resistance, Liquid liquid) {}

  private final Random random;

  RandomLoops(long seed) {
    random = new Random(seed);
  }

  Loop next() {
    if (random.nextInt(50) == 0) {
      return humped();
    }
    return new Loop(mover(), resistance(), new Liquid(between(950, 1100), log(2e-4, 1)));
  }

  /** A pump that pushes harder once it flows, against a valve that opens somewhere between. */
  private Loop humped() {
    double top = log(1e3, 1e5);
    double reach = log(1e-4, 1e-2);
    Curve curve =
        Curve.of(
            new double[] {0, between(0.2, 0.6) * reach, reach},
            new double[] {between(0.1, 0.5) * top, top, 0});
    double opening = between(0.3, 0.9) * top;
    Resistance valve =
        (flow, liquid) -> opening * Math.min(1, flow / (0.01 * reach)) + flow / reach;
    return new Loop(new Mover.Table(curve), valve, new Liquid(1000, 1e-3));
  }

  private Mover mover() {
    Mover first = machine();
    Mover mover = random.nextInt(5) == 0 ? new Mover.InSeries(List.of(first, machine())) : first;
    return switch (random.nextInt(8)) {
      case 0 -> new Mover.AtSpeed(mover, 0);
      case 1, 2 -> new Mover.AtSpeed(mover, log(0.05, 2));
      default -> mover;
    };
  }

  private Mover machine() {
    return switch (random.nextInt(10)) {
      case 0 -> new Mover.Off();
      case 1, 2 -> new Mover.Constant(log(1, 1e5));
      case 3, 4, 5 -> table();
      default -> new Mover.Parabola(log(100, 2e5), log(1e-5, 1e-2));
    };
  }

  /** Falling, rising or humped; a few give nothing or less without flow. */
  private Mover table() {
    int points = 2 + random.nextInt(5);
    double reach = log(1e-5, 1e-2);
    double[] flow = new double[points];
    double[] rise = new double[points];
    double top = log(100, 2e5);
    boolean reversed = random.nextBoolean();
    for (int i = 0; i < points; i++) {
      double share = (double) i / (points - 1);
      flow[i] = reach * share;
      rise[i] = top * (reversed ? 0.1 + 0.9 * share : 1 - share) * between(0.5, 1.5);
    }
    if (random.nextInt(10) == 0) {
      rise[0] = -top;
    }
    return new Mover.Table(Curve.of(flow, rise));
  }

  private Resistance resistance() {
    List<Resistance> parts = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      parts.add(random.nextInt(4) == 0 ? parallel() : part());
    }
    return new Resistance.Series(parts);
  }

  private Resistance parallel() {
    List<Resistance> branches = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      branches.add(random.nextInt(6) == 0 ? Resistance.BLOCKED : part());
    }
    return new Parallel(branches);
  }

  private Resistance part() {
    double opening = log(100, 5e4);
    return switch (random.nextInt(20)) {
      case 0 -> Resistance.BLOCKED;
      // Clogged: a millionth of a litre a second loses a thousand bar.
      case 1 -> new Resistance.KnownPoint(1e8, 1e-14, 1);
      // A check valve: needs pressure before it lets anything through.
      case 2, 3, 4 -> (flow, liquid) -> flow == 0 ? 0 : opening * Math.min(1, flow / 1e-7);
      case 5, 6, 7, 8 -> new Resistance.KnownPoint(log(10, 1e6), log(1e-5, 1e-2), between(1, 2));
      default ->
          new Resistance.Pipe(
              between(0, 20), log(2e-3, 5e-2), 1e-6 * random.nextInt(50), between(0, 20));
    };
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double log(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }
}
