package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.fit.BandedRun;
import soakloop.log.Signal;
import soakloop.quantity.OutsideRange;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.session.PassCourse;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;
import soakloop.study.CoreTrade;
import soakloop.study.Misfit;
import soakloop.study.Outcome;
import soakloop.study.PullPower;
import soakloop.study.PullResult;
import soakloop.study.Readings;
import soakloop.study.WholeRun;

/**
 * {@code summary.json}: what a program may read of a run. Temperatures are degC, differences K, all
 * else SI; a key without a value is left out.
 */
final class SummaryJson {
  private static final double ZERO_CELSIUS = 273.15;

  private SummaryJson() {}

  static String of(Outcome outcome, String version) {
    return of(BandedRun.plain(outcome), version);
  }

  static String of(BandedRun run, String version) {
    Outcome outcome = run.outcome();
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    top.add("scenario", scenario(outcome.scenario()));
    top.add("units", units());
    JsonArray pulls = new JsonArray();
    List<PullPower> powers = PullPower.of(outcome);
    for (int i = 0; i < outcome.pulls().size(); i++) {
      JsonObject pull = pull(outcome.pulls().get(i));
      if (outcome.trace().pulls().get(i).phase().drive() instanceof Drive.Pass pass) {
        pull.add("pass", pass(pass.course()));
      }
      if (!powers.isEmpty()) {
        PowerJson.add(pull, powers.get(i));
      }
      pulls.add(pull);
    }
    top.add("pulls", pulls);
    iceLeft(outcome.trace()).ifPresent(phases -> top.add("iceLeft", phases));
    outcome.hydraulics().ifPresent(h -> top.add("loop", LoopJson.of(h)));
    CoreTrade.of(outcome).ifPresent(trade -> top.add("coreTrade", PowerJson.of(trade)));
    top.add("energy", energy(outcome.trace().energy()));
    outcome
        .comparison()
        .ifPresent(
            c -> {
              JsonObject misfit = new JsonObject();
              for (Signal signal : Signal.values()) {
                c.misfit(signal).ifPresent(m -> misfit.add(signal.key(), misfit(m)));
              }
              top.add("misfit", misfit);
              c.charge().ifPresent(w -> top.add("wholeRun", wholeRun(w)));
            });
    outcome.flowFromHeat().ifPresent(flow -> top.add("flowFromHeat", LoopJson.of(flow)));
    run.bands().ifPresent(bands -> top.add("bands", BandsJson.of(bands, outcome)));
    top.add("assumed", assumed(outcome.scenario()));
    JsonArray warnings = new JsonArray();
    outcome
        .warnings()
        .forEach(
            w -> {
              JsonObject warning = new JsonObject();
              warning.addProperty("kind", key(w.kind()));
              warning.addProperty("message", w.message());
              w.outside().ifPresent(outside -> warning.add("outside", outside(outside)));
              warnings.add(warning);
            });
    top.add("warnings", warnings);
    JsonArray events = new JsonArray();
    outcome
        .trace()
        .events()
        .forEach(
            e -> {
              JsonObject event = new JsonObject();
              number(event, "time", e.time());
              event.addProperty("kind", key(e.kind()));
              events.add(event);
            });
    top.add("events", events);
    top.add("effort", effort(outcome.trace().effort()));
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject outside(OutsideRange outside) {
    JsonObject o = new JsonObject();
    o.addProperty("equation", outside.range().equation());
    o.addProperty("argument", outside.range().argument());
    number(o, "value", outside.value());
    number(o, "low", outside.range().low());
    number(o, "high", outside.range().high());
    return o;
  }

  private static JsonObject scenario(Scenario scenario) {
    JsonObject o = new JsonObject();
    o.addProperty("name", scenario.name());
    o.addProperty("title", scenario.title());
    temperature(o, "limit", scenario.limits().chargeTemperature());
    scenario.logged().ifPresent(l -> o.addProperty("log", l.log().name()));
    return o;
  }

  private static JsonObject units() {
    JsonObject o = new JsonObject();
    o.addProperty("temperature", "degC");
    o.addProperty("temperatureDifference", "K");
    o.addProperty("time", "s");
    o.addProperty("engineSpeed", "rev/s");
    o.addProperty("trapSpeed", "m/s");
    o.addProperty("massFlow", "kg/s");
    o.addProperty("pressure", "Pa gauge");
    o.addProperty("energy", "J");
    o.addProperty("mass", "kg");
    o.addProperty("loop", "m3/s, Pa");
    o.addProperty("power", "W");
    o.addProperty("angle", "rad");
    return o;
  }

  private static JsonObject pull(PullResult pull) {
    JsonObject o = new JsonObject();
    o.addProperty("name", pull.name());
    number(o, "startTime", pull.startTime());
    number(o, "endTime", pull.endTime());
    number(o, "countedAt", pull.countedAt());
    number(o, "countedTo", pull.countedTo());
    o.add("chargeTemperature", readings(pull.charge()));
    o.add("sensorTemperature", readings(pull.sensor()));
    JsonObject coolant = new JsonObject();
    temperature(coolant, "coreInletStart", pull.coolant().coreInletStart());
    temperature(coolant, "coreInletPeak", pull.coolant().coreInletPeak());
    temperature(coolant, "coreOutletPeak", pull.coolant().coreOutletPeak());
    o.add("coolant", coolant);
    number(o, "airMassFlowPeak", pull.airMassFlowPeak());
    number(o, "heatToCoolant", pull.heatToCoolant());
    number(o, "boostAfterCore", pull.boostPeak());
    pull.chargeLoss()
        .ifPresent(
            loss -> {
              number(o, "coreLoss", loss.peak());
              number(o, "boostBeforeCore", loss.boostBefore());
            });
    pull.logged()
        .ifPresent(
            l -> {
              o.add("logged", logged(l));
              o.add("error", error(pull, l));
            });
    return o;
  }

  private static JsonObject pass(PassCourse course) {
    JsonObject o = new JsonObject();
    o.addProperty("measured", course.measured());
    number(o, "sixtyFoot", course.times().sixtyFoot());
    number(o, "elapsed", course.times().elapsed());
    number(o, "trapSpeed", course.times().trapSpeed());
    return o;
  }

  private static JsonObject logged(PullResult.Logged logged) {
    JsonObject o = new JsonObject();
    number(o, "countedAt", logged.countedAt());
    number(o, "coveredTo", logged.coveredTo());
    o.add("sensorTemperature", readings(logged.sensor()));
    if (logged.coreInletPeak().isPresent()) {
      JsonObject coolant = new JsonObject();
      temperature(coolant, "coreInletPeak", logged.coreInletPeak());
      o.add("coolant", coolant);
    }
    return o;
  }

  /** Returns modelled less logged. */
  private static JsonObject error(PullResult pull, PullResult.Logged logged) {
    JsonObject sensor = new JsonObject();
    Readings said = pull.sensor();
    Readings seen = logged.sensor();
    number(sensor, "start", said.start() - seen.start());
    number(sensor, "end", said.end() - seen.end());
    number(sensor, "peakInPull", said.peakInPull() - seen.peakInPull());
    number(sensor, "peakToNextPull", said.peakToNextPull() - seen.peakToNextPull());
    number(sensor, "rise", said.rise() - seen.rise());
    number(sensor, "overLimit", said.overLimit() - seen.overLimit());
    JsonObject o = new JsonObject();
    o.add("sensorTemperature", sensor);
    logged
        .coreInletPeak()
        .ifPresent(
            peak -> {
              JsonObject coolant = new JsonObject();
              number(coolant, "coreInletPeak", pull.coolant().coreInletPeak() - peak);
              o.add("coolant", coolant);
            });
    o.add("fit", misfit(logged.fit()));
    return o;
  }

  private static JsonObject readings(Readings readings) {
    JsonObject o = new JsonObject();
    temperature(o, "start", readings.start());
    temperature(o, "end", readings.end());
    temperature(o, "peakInPull", readings.peakInPull());
    temperature(o, "peakToNextPull", readings.peakToNextPull());
    number(o, "rise", readings.rise());
    number(o, "overLimit", readings.overLimit());
    return o;
  }

  private static JsonObject energy(EnergyLedger e) {
    JsonObject o = new JsonObject();
    number(o, "fromChargeToCore", e.fromChargeToCore());
    number(o, "fromChargeToDucts", e.fromChargeToDucts());
    number(o, "fromEngine", e.fromEngine());
    number(o, "fromPump", e.fromPump());
    number(o, "fromUnderhood", e.fromUnderhood());
    number(o, "toAmbient", e.toAmbient());
    number(o, "toChiller", e.toChiller());
    number(o, "storedCoolant", e.storedCoolant());
    number(o, "storedExchangers", e.storedExchangers());
    number(o, "storedWalls", e.storedWalls());
    number(o, "storedDucts", e.storedDucts());
    number(o, "storedIce", e.storedIce());
    number(o, "turnover", e.turnover());
    number(o, "residualFraction", e.residualFraction());
    return o;
  }

  /** Returns the ice in the tank at both ends of each phase, if any ever goes in. */
  private static Optional<JsonArray> iceLeft(Trace trace) {
    if (!IceLeft.hasSomething(trace)) {
      return Optional.empty();
    }
    JsonArray phases = new JsonArray();
    for (Trace.Span span : trace.spans()) {
      JsonObject o = new JsonObject();
      o.addProperty("phase", span.phase().name());
      number(o, "start", IceLeft.at(trace, span.start()));
      number(o, "end", trace.value(Channel.ICE_LEFT, trace.firstFrom(span.end())));
      phases.add(o);
    }
    return Optional.of(phases);
  }

  private static JsonObject misfit(Misfit misfit) {
    JsonObject o = new JsonObject();
    o.addProperty("count", misfit.count());
    number(o, "bias", misfit.bias());
    number(o, "rms", misfit.rms());
    number(o, "largest", misfit.largest());
    return o;
  }

  private static JsonObject wholeRun(WholeRun run) {
    WholeRun.Course said = run.modelled();
    WholeRun.Course seen = run.logged();
    JsonObject error = new JsonObject();
    number(error, "start", said.start() - seen.start());
    number(error, "end", said.end() - seen.end());
    number(error, "peak", said.peak() - seen.peak());
    number(error, "overLimit", said.overLimit() - seen.overLimit());
    JsonObject o = new JsonObject();
    o.add("sensorTemperature", course(said));
    o.add("logged", course(seen));
    o.add("error", error);
    return o;
  }

  private static JsonObject course(WholeRun.Course course) {
    JsonObject o = new JsonObject();
    temperature(o, "start", course.start());
    temperature(o, "end", course.end());
    temperature(o, "peak", course.peak());
    number(o, "overLimit", course.overLimit());
    return o;
  }

  private static JsonArray assumed(Scenario scenario) {
    JsonArray all = new JsonArray();
    scenario
        .assumed()
        .forEach(
            a -> {
              JsonObject o = new JsonObject();
              o.addProperty("key", a.key());
              o.addProperty("value", a.value());
              if (!a.spread().isEmpty()) {
                o.addProperty("spread", a.spread());
              }
              o.addProperty("reason", a.reason());
              all.add(o);
            });
    return all;
  }

  private static JsonObject effort(Trace.Effort effort) {
    JsonObject o = new JsonObject();
    o.addProperty("states", effort.states());
    o.addProperty("steps", effort.steps());
    o.addProperty("evaluations", effort.evaluations());
    return o;
  }

  private static String key(Enum<?> kind) {
    return kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  private static void temperature(JsonObject o, String key, OptionalDouble kelvin) {
    kelvin.ifPresent(k -> temperature(o, key, k));
  }

  private static void temperature(JsonObject o, String key, double kelvin) {
    number(o, key, kelvin - ZERO_CELSIUS);
  }

  private static void number(JsonObject o, String key, double value) {
    if (Double.isFinite(value)) {
      o.addProperty(key, value);
    }
  }
}
