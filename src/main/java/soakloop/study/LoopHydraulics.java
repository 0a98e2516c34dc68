package soakloop.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soakloop.flow.Liquid;
import soakloop.flow.Mover;
import soakloop.fluid.Coolant;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.PumpDelivery;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.LoopPoint;
import soakloop.simulate.Trace;

/**
 * Where pump and loop meet, with a cold loop and with one at work.
 *
 * @param loop the loop
 * @param coolant what fills it
 * @param pump as it runs
 * @param cold at the day's temperature, or the coolant's freezing point if that is higher
 * @param running at the median of what entered the core
 */
public record LoopHydraulics(
    Loop loop, Coolant coolant, Mover pump, LoopPoint cold, LoopPoint running) {
  /**
   * Finds both; empty if the pump's flow is stated, which says nothing of pressure.
   *
   * @param scenario what was run
   * @param trace what happened
   */
  static Optional<LoopHydraulics> of(Scenario scenario, Trace trace) {
    Loop loop = scenario.rig().loop();
    if (!(loop.pump().delivery() instanceof PumpDelivery.Pushing pushing)) {
      return Optional.empty();
    }
    double[] entering = trace.values(Channel.CORE_COOLANT_IN).clone();
    Arrays.sort(entering);
    Coolant coolant = scenario.rig().coolant();
    return Optional.of(
        new LoopHydraulics(
            loop,
            coolant,
            pushing.mover(),
            LoopPoint.of(loop, coolant, scenario.day().temperature()),
            LoopPoint.of(loop, coolant, entering[entering.length / 2])));
  }

  /**
   * Returns what the loop takes at another flow.
   *
   * @param point whose temperature holds
   * @param flow m3/s
   * @return Pa
   */
  public double loss(LoopPoint point, double flow) {
    return loop.resistance().loss(flow, Liquid.held(coolant, point.temperature()));
  }

  /**
   * Returns what some of its pieces take at another flow.
   *
   * @param point whose temperature holds
   * @param flow m3/s
   * @param names of the parts as the point has them
   * @return Pa
   */
  public double loss(LoopPoint point, double flow, List<String> names) {
    if (loop.plumbing().isPresent()) {
      return loss(point, flow);
    }
    Liquid liquid = Liquid.held(coolant, point.temperature());
    double sum = 0;
    for (LoopElement element : loop.elements()) {
      if (names.contains(element.name())) {
        sum += element.resistance().loss(flow, liquid);
      }
    }
    return sum;
  }
}
