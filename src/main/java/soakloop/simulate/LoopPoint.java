package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.flow.FlowSolver;
import soakloop.flow.Liquid;
import soakloop.flow.OperatingPoint;
import soakloop.fluid.Coolant;
import soakloop.rig.Branches;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.PumpDelivery;

/**
 * How the loop flows with the pump on and the coolant at one temperature.
 *
 * @param temperature of all coolant, K
 * @param flow m3/s
 * @param loss around the loop at that flow, Pa
 * @param parts losses of the pieces that cost anything, in the loop's order; one for the whole loop
 *     if only that is known
 * @param point where the pump meets the loop; empty for a stated flow
 */
public record LoopPoint(
    double temperature,
    double flow,
    double loss,
    List<Part> parts,
    Optional<OperatingPoint> point) {
  /**
   * One piece's part.
   *
   * @param name the piece's
   * @param loss Pa
   */
  public record Part(String name, double loss) {}

  /** Copies the parts. */
  public LoopPoint {
    parts = List.copyOf(parts);
  }

  /**
   * Finds the point.
   *
   * @param loop the loop
   * @param coolant what fills it
   * @param temperature K; taken into the range of the coolant's properties
   */
  public static LoopPoint of(Loop loop, Coolant coolant, double temperature) {
    double held = coolant.held(temperature);
    Liquid liquid = Liquid.of(coolant, held);
    Optional<OperatingPoint> point = solve(loop, liquid);
    double flow = point.map(OperatingPoint::flow).orElseGet(() -> stated(loop));
    List<Part> parts = new ArrayList<>();
    if (loop.plumbing().isPresent()) {
      parts.add(new Part("plumbing", loop.resistance().loss(flow, liquid)));
    } else {
      for (LoopElement element : loop.elements()) {
        double loss = element.resistance().loss(flow, liquid);
        if (loss > 0) {
          parts.add(new Part(element.name(), loss));
        }
      }
    }
    double loss = parts.stream().mapToDouble(Part::loss).sum();
    return new LoopPoint(held, flow, loss, parts, point);
  }

  /** Returns where the pump meets the loop; empty if the flow is stated. */
  private static Optional<OperatingPoint> solve(Loop loop, Liquid liquid) {
    return loop.pump().delivery() instanceof PumpDelivery.Pushing pump
        ? Optional.of(FlowSolver.solve(pump.mover(), loop.resistance(), liquid))
        : Optional.empty();
  }

  private static double stated(Loop loop) {
    return ((PumpDelivery.StatedFlow) loop.pump().delivery()).flow();
  }

  /** Returns how the flow divides among the ways of a parallel stretch, each from 0 to 1. */
  double[] split(Branches branches, Coolant coolant) {
    double[] shares = branches.resistance().split(flow, Liquid.of(coolant, temperature));
    double sum = 0;
    for (double share : shares) {
      sum += share;
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] = sum > 0 ? shares[i] / sum : 1.0 / shares.length;
    }
    return shares;
  }
}
