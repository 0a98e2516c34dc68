package soakloop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.scenario.FitRecord;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** Finds what a reader of a result should know. */
final class Warnings {
  private Warnings() {}

  static List<Warning> of(Scenario scenario, Trace trace, Optional<LoopHydraulics> hydraulics) {
    List<Warning> warnings = new ArrayList<>();
    coolant(scenario, trace, warnings);
    CoreAirWarnings.loss(scenario, trace).ifPresent(warnings::add);
    CoreAirWarnings.water(scenario, trace).ifPresent(warnings::add);
    warnings.addAll(GeometryWarnings.of(scenario, trace));
    warnings.addAll(EfficiencyWarnings.of(scenario, trace));
    ice(scenario).ifPresent(warnings::add);
    limiter(scenario).ifPresent(warnings::add);
    hydraulics.ifPresent(h -> FlowWarnings.add(scenario, h, warnings));
    AirBalance.of(scenario, trace).ifPresent(warnings::add);
    scenario.logged().ifPresent(logged -> log(scenario, logged, warnings));
    scenario.logged().flatMap(l -> PullsApart.of(l, trace)).ifPresent(warnings::add);
    scenario.fitted().flatMap(Warnings::edited).ifPresent(warnings::add);
    return warnings;
  }

  private static Optional<Warning> edited(FitRecord fitted) {
    List<String> edited = fitted.edited();
    return edited.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                Warning.Kind.FIT_EDITED,
                String.join(", ", edited)
                    + (edited.size() == 1 ? " was" : " were")
                    + " edited since the fit, so what the fit found to go together with it is left"
                    + " out; fit again to have it back"));
  }

  private static void coolant(Scenario scenario, Trace trace, List<Warning> warnings) {
    double hottest = Double.NEGATIVE_INFINITY;
    double coldest = Double.POSITIVE_INFINITY;
    for (Channel channel :
        new Channel[] {
          Channel.CORE_COOLANT_IN,
          Channel.CORE_COOLANT_OUT,
          Channel.RESERVOIR,
          Channel.EXCHANGER_COOLANT_OUT
        }) {
      double[] values = trace.values(channel);
      hottest =
          Math.max(hottest, Arrays.stream(values).filter(Double::isFinite).max().orElse(hottest));
      coldest =
          Math.min(coldest, Arrays.stream(values).filter(Double::isFinite).min().orElse(coldest));
    }
    Coolant coolant = scenario.rig().coolant();
    if (coldest < coolant.freezingTemperature()) {
      warnings.add(
          new Warning(
              Warning.Kind.COOLANT_FREEZING,
              "the coolant falls to "
                  + show(scenario, coldest)
                  + " and freezes at "
                  + show(scenario, coolant.freezingTemperature())
                  + "; the model does not freeze it"));
    }
    // Water's boiling point; glycol and a pressure cap raise it.
    if (MoistAir.saturationPressure(hottest) > scenario.day().pressure()) {
      warnings.add(
          new Warning(
              Warning.Kind.COOLANT_BOILING,
              "the coolant reaches "
                  + show(scenario, hottest)
                  + "; without pressure it would boil, and the model does not boil it"));
    }
    if (hottest > coolant.maxTemperature() || coldest < coolant.minTemperature()) {
      warnings.add(
          new Warning(
              Warning.Kind.COOLANT_RANGE,
              "the coolant goes from "
                  + show(scenario, coldest)
                  + " to "
                  + show(scenario, hottest)
                  + "; its property data hold from "
                  + show(scenario, coolant.minTemperature())
                  + " to "
                  + show(scenario, coolant.maxTemperature())));
    }
  }

  private static Optional<Warning> ice(Scenario scenario) {
    return scenario.session().phases().stream()
        .filter(p -> p.ice().isPresent() && !(p.drive() instanceof Drive.EngineOff))
        .findFirst()
        .map(
            p ->
                new Warning(
                    Warning.Kind.ICE_ENGINE_RUNNING,
                    "ice goes in with the engine running ("
                        + p.name()
                        + "); stop it first, and open only a tank that is cold and without"
                        + " pressure"));
  }

  private static Optional<Warning> limiter(Scenario scenario) {
    return scenario.session().phases().stream()
        .filter(p -> p.drive() instanceof Drive.Pass pass && pass.course().limited())
        .findFirst()
        .map(
            p ->
                new Warning(
                    Warning.Kind.PASS_LIMITED,
                    p.name()
                        + ": the engine is at vehicle.shift-at in top gear before the traps and goes"
                        + " on at one speed; check gears, final drive and tyres"));
  }

  private static void log(Scenario scenario, Scenario.Logged logged, List<Warning> warnings) {
    Log log = logged.log();
    double first = log.time(0) - logged.startsAt();
    double last = log.endTime() - logged.startsAt();
    double end = scenario.session().endTime();
    if (first > 1 || last < end - 1) {
      warnings.add(
          new Warning(
              Warning.Kind.LOG_SHORT,
              String.format(
                  java.util.Locale.ROOT,
                  "the log %s covers %.1f s to %.1f s of a session that goes from 0 s to %.1f s",
                  log.name(),
                  first,
                  last,
                  end)));
    }
    boolean guessed =
        scenario.session().phases().stream()
            .anyMatch(p -> p.drive() instanceof Drive.Replay r && r.boost().isEmpty());
    if (guessed) {
      warnings.add(
          new Warning(
              Warning.Kind.LOG_INCOMPLETE,
              String.format(
                  java.util.Locale.ROOT,
                  "the log %s has no boost, so its replay takes the engine as idling below %.0f rpm"
                      + " and at full load above; name a gauge pressure column under log.columns",
                  log.name(),
                  Drive.Replay.LOADED * 60)));
    }
    if (!log.has(Signal.CHARGE_TEMPERATURE)) {
      warnings.add(
          new Warning(
              Warning.Kind.LOG_INCOMPLETE,
              "the log "
                  + log.name()
                  + " has no charge temperature; name its column under log.columns"));
    }
  }

  private static String show(Scenario scenario, double kelvin) {
    return scenario.units().show(kelvin, Dimension.TEMPERATURE, 0);
  }
}
