package soakloop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.rig.HeatExchanger;
import soakloop.rig.LoopElement;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/**
 * Tells where exchangers described by geometry were outside the range that their equations were
 * made for, at the flows that a run met.
 *
 * <p>Only instants count at which the exchanger moves a tenth of its largest heat or more: at idle
 * nearly every equation is outside, and it does not matter. A coolant hotter or colder than its
 * data go, which another warning tells, counts as at their end.
 */
final class GeometryWarnings {
  private static final double COUNTS = 0.1;

  private final Scenario scenario;
  private final Trace trace;
  private final Coolant coolant;

  private GeometryWarnings(Scenario scenario, Trace trace) {
    this.scenario = scenario;
    this.trace = trace;
    this.coolant = scenario.rig().coolant();
  }

  /** What the streams of an exchanger are like in a sample, SI. */
  private record Streams(double airFlow, double air, double coolantFlow, double coolant) {}

  /** What they are in a sample. */
  private interface Look {
    Streams at(int sample);
  }

  static List<Warning> of(Scenario scenario, Trace trace) {
    GeometryWarnings warnings = new GeometryWarnings(scenario, trace);
    List<Warning> found = new ArrayList<>();
    for (LoopElement element : scenario.rig().loop().elements()) {
      if (element instanceof HeatExchanger x) {
        x.exchanger()
            .conductance()
            .geometry()
            .ifPresent(
                core ->
                    found.addAll(
                        warnings.outside(
                            x.name(), core, Channel.HEAT_AMBIENT, warnings.through(x))));
      }
    }
    Optional<GeometricCore> core =
        scenario.rig().loop().core().exchanger().conductance().geometry();
    core.ifPresent(
        c -> found.addAll(warnings.outside("core", c, Channel.HEAT_CORE, warnings::core)));
    return found;
  }

  private Streams core(int i) {
    return new Streams(
        trace.value(Channel.AIR_MASS_FLOW, i),
        0.5 * (trace.value(Channel.CORE_AIR_IN, i) + trace.value(Channel.CORE_METAL, i)),
        trace.value(Channel.COOLANT_FLOW, i),
        0.5 * (trace.value(Channel.CORE_COOLANT_IN, i) + trace.value(Channel.CORE_COOLANT_OUT, i)));
  }

  /** Every heat exchanger is taken to have the first one's coolant temperatures. */
  private Look through(HeatExchanger exchanger) {
    double day = scenario.day().temperature();
    double density =
        MoistAir.of(day, scenario.day().pressure(), scenario.day().humidity())
            .density(day, scenario.day().pressure());
    return i ->
        new Streams(
            density * exchanger.faceArea() * trace.value(Channel.FACE_SPEED, i),
            day,
            trace.value(Channel.COOLANT_FLOW, i),
            trace.value(Channel.EXCHANGER_COOLANT_IN, i));
  }

  private List<Warning> outside(String name, GeometricCore core, Channel heat, Look look) {
    double most = 0;
    for (int i = 0; i < trace.size(); i++) {
      most = Math.max(most, Math.abs(trace.value(heat, i)));
    }
    Map<PublishedRange, OutsideRange> worst = new LinkedHashMap<>();
    for (int i = 0; i < trace.size(); i++) {
      if (most > 0 && Math.abs(trace.value(heat, i)) >= COUNTS * most) {
        check(core, look.at(i), worst);
      }
    }
    return worst.values().stream()
        .map(
            outside ->
                new Warning(
                    Warning.Kind.CORRELATION_RANGE,
                    name + ": " + outside.message(),
                    Optional.of(outside)))
        .toList();
  }

  private void check(GeometricCore core, Streams streams, Map<PublishedRange, OutsideRange> worst) {
    if (streams.airFlow() > 0 && streams.coolantFlow() > 0) {
      double known =
          Math.max(coolant.minTemperature(), Math.min(coolant.maxTemperature(), streams.coolant()));
      core.outsideRange(
              streams.airFlow(),
              FluidState.ofAir(streams.air()),
              streams.coolantFlow() * coolant.density(known),
              FluidState.of(coolant, known))
          .forEach(o -> worst.merge(o.range(), o, GeometryWarnings::further));
    }
  }

  private static OutsideRange further(OutsideRange a, OutsideRange b) {
    return beyond(a) >= beyond(b) ? a : b;
  }

  /** How many times the bound it is. */
  private static double beyond(OutsideRange outside) {
    PublishedRange range = outside.range();
    return outside.value() > range.high()
        ? outside.value() / range.high()
        : range.low() / outside.value();
  }
}
