package soakloop.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soakloop.charge.EfficiencyTable;
import soakloop.quantity.Dimension;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.rig.AdiabaticEfficiency;
import soakloop.rig.AirDelivery;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** Tells where a blower ran outside its efficiency table, and the table's edge was taken. */
final class EfficiencyWarnings {
  /** A bypass that is nearly open asks nothing of the table. */
  private static final double OPEN = 1.02;

  private EfficiencyWarnings() {}

  static List<Warning> of(Scenario scenario, Trace trace) {
    return scenario.rig().blower().adiabaticEfficiency() instanceof AdiabaticEfficiency.Mapped map
        ? outside(scenario, map.table(), trace)
        : List.of();
  }

  private static List<Warning> outside(Scenario scenario, EfficiencyTable table, Trace trace) {
    AirDelivery delivery = scenario.rig().blower().delivery();
    Map<PublishedRange, OutsideRange> worst = new LinkedHashMap<>();
    for (int i = 0; i < trace.size(); i++) {
      double ratio = trace.value(Channel.PRESSURE_RATIO, i);
      if (ratio > OPEN) {
        double speed = delivery.speed(trace.value(Channel.ENGINE_SPEED, i));
        table.check(ratio, speed, o -> worst.merge(o.range(), o, EfficiencyWarnings::further));
      }
    }
    return worst.values().stream()
        .map(
            outside ->
                new Warning(
                    Warning.Kind.CORRELATION_RANGE,
                    message(scenario, outside),
                    Optional.of(outside)))
        .toList();
  }

  private static String message(Scenario scenario, OutsideRange outside) {
    PublishedRange range = outside.range();
    boolean speed = range.argument().startsWith("blower speed");
    return String.format(
        Locale.ROOT,
        "blower.efficiency-table: the %s gets to %s, but the table goes from %s to %s; its edge was"
            + " taken",
        speed ? "blower speed" : range.argument(),
        shown(scenario, outside.value(), speed),
        shown(scenario, range.low(), speed),
        shown(scenario, range.high(), speed));
  }

  private static String shown(Scenario scenario, double value, boolean speed) {
    return speed
        ? scenario.units().show(value, Dimension.ROTATION, 0)
        : String.format(Locale.ROOT, "%.2f", value);
  }

  private static OutsideRange further(OutsideRange a, OutsideRange b) {
    return beyond(a) >= beyond(b) ? a : b;
  }

  private static double beyond(OutsideRange outside) {
    PublishedRange range = outside.range();
    double past = Math.max(outside.value() - range.high(), range.low() - outside.value());
    return past / (range.high() - range.low());
  }
}
