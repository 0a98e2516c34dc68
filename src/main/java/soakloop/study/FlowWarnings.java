package soakloop.study;

import java.util.List;
import java.util.Locale;
import soakloop.flow.OperatingPoint;
import soakloop.quantity.Dimension;
import soakloop.rig.PumpDelivery;
import soakloop.scenario.Scenario;
import soakloop.simulate.LoopPoint;
import soakloop.simulate.Warning;

/** What a reader should know of how pump and loop met. */
final class FlowWarnings {
  /** Flow over the label's below which the label is worth a word. */
  private static final double FAR_BELOW = 0.25;

  /** Share of the shut-off pressure above which a pump moves hardly anything. */
  private static final double SHUT = 0.98;

  private FlowWarnings() {}

  static void add(Scenario scenario, LoopHydraulics hydraulics, List<Warning> warnings) {
    PumpDelivery delivery = scenario.rig().loop().pump().delivery();
    if (!(delivery instanceof PumpDelivery.Pushing pump)) {
      return;
    }
    LoopPoint running = hydraulics.running();
    OperatingPoint point = running.point().orElseThrow();
    String flow = scenario.units().show(running.flow(), Dimension.VOLUME_FLOW, 1);
    if (point instanceof OperatingPoint.PastCurve past) {
      warnings.add(
          new Warning(
              Warning.Kind.PUMP_PAST_CURVE,
              "the pump's curve ends at "
                  + flow
                  + ", where the loop takes only "
                  + pressure(scenario, past.loss())
                  + " of its "
                  + pressure(scenario, past.pressure())
                  + "; the true flow is more, so give the curve to its end"));
    } else if (point.pressure() > SHUT * pump.mover().rise(0)) {
      warnings.add(
          new Warning(
              Warning.Kind.PUMP_DEAD_HEADED,
              "the pump pushes "
                  + pressure(scenario, point.pressure())
                  + ", nearly all it has, and moves only "
                  + flow
                  + ": something in the loop is all but shut"));
    }
    if (pump.label().isPresent() && running.flow() < FAR_BELOW * pump.label().getAsDouble()) {
      warnings.add(
          new Warning(
              Warning.Kind.FLOW_BELOW_LABEL,
              String.format(
                  Locale.ROOT,
                  "the pump's label says %s; in this loop it makes about %s, and that is a guess"
                      + " with a wide spread, so measure the flow in the closed loop",
                  scenario.units().show(pump.label().getAsDouble(), Dimension.VOLUME_FLOW, 0),
                  flow)));
    }
  }

  private static String pressure(Scenario scenario, double pascal) {
    return scenario.units().show(pascal, Dimension.PRESSURE_DIFFERENCE, 1);
  }
}
