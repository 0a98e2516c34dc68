package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.function.ToDoubleFunction;
import soakloop.plan.AfterWait;
import soakloop.plan.Go;
import soakloop.plan.Needs;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WaitPlan;
import soakloop.plan.WayAnswer;
import soakloop.plan.Window;

/**
 * {@code wait.json}: what a program may read of a plan of waits. Temperatures are in degC, times in
 * s from the last pull's end; what has no value is left out.
 */
final class WaitJson {
  private static final double ZERO = 273.15;

  private WaitJson() {}

  static String of(WaitAnswer answer, String version) {
    WaitPlan plan = answer.plan();
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonObject scenario = new JsonObject();
    scenario.addProperty("name", plan.scenario().name());
    scenario.addProperty("title", plan.scenario().title());
    top.add("scenario", scenario);
    JsonObject asked = new JsonObject();
    asked.addProperty("limit", plan.limit() - ZERO);
    asked.addProperty("confidence", plan.confidence());
    asked.addProperty("horizon", plan.horizon());
    asked.addProperty("iceBelow", plan.iceBelow() - ZERO);
    top.add("asked", asked);
    JsonObject cars = new JsonObject();
    cars.addProperty("drawn", answer.draws());
    cars.addProperty("lost", answer.lost());
    cars.addProperty("keys", answer.keys());
    top.add("cars", cars);
    JsonArray ways = new JsonArray();
    answer.ways().forEach(way -> ways.add(way(way, plan.confidence())));
    top.add("ways", ways);
    answer.needs().ifPresent(needs -> top.add("wouldTake", needs(needs)));
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject way(WayAnswer way, double confidence) {
    JsonObject o = new JsonObject();
    o.addProperty("engine", way.way().idles() ? "idle" : "off");
    o.addProperty("pump", way.way().pump());
    o.addProperty("fans", way.way().fans());
    o.addProperty("hoodOpen", way.way().hood());
    o.addProperty("ice", way.way().ice());
    way.icedAt().ifPresent(at -> o.addProperty("iceGoesInAt", at));
    JsonArray windows = new JsonArray();
    for (Window window : way.windows()) {
      JsonObject w = new JsonObject();
      w.addProperty("from", window.from());
      w.addProperty("to", window.to());
      w.addProperty("pastHorizon", window.open());
      windows.add(w);
    }
    o.add("windows", windows);
    way.threshold().ifPresent(t -> o.addProperty("coolantGaugeAtMost", t - ZERO));
    way.never()
        .filter(n -> Double.isFinite(n.lowest()))
        .ifPresent(
            n -> {
              JsonObject never = new JsonObject();
              never.addProperty("lowestPeak", n.lowest() - ZERO);
              never.addProperty("after", n.seconds());
              never.addProperty("coolantGauge", n.reading() - ZERO);
              never.addProperty("riseInPull", n.rise());
              o.add("never", never);
            });
    JsonArray curve = new JsonArray();
    for (AfterWait after : way.curve()) {
      JsonObject at = new JsonObject();
      at.addProperty("wait", after.seconds());
      at.add("chargePeak", shares(after, Go::charge, confidence));
      at.add("sensorPeak", shares(after, Go::sensor, confidence));
      at.add("coolantGauge", shares(after, Go::reading, confidence));
      curve.add(at);
    }
    o.add("curve", curve);
    return o;
  }

  private static JsonObject shares(AfterWait after, ToDoubleFunction<Go> of, double confidence) {
    JsonObject o = new JsonObject();
    put(o, "low", after.quantile(of, 0.05));
    put(o, "middle", after.quantile(of, 0.5));
    put(o, "high", after.quantile(of, 0.95));
    put(o, "atConfidence", after.quantile(of, confidence));
    return o;
  }

  private static void put(JsonObject o, String name, double kelvin) {
    if (Double.isFinite(kelvin)) {
      o.addProperty(name, kelvin - ZERO);
    }
  }

  private static JsonObject needs(Needs needs) {
    JsonObject o = new JsonObject();
    needs.boost().ifPresent(share -> o.addProperty("boostShare", share));
    needs.ambient().ifPresent(day -> o.addProperty("dayTemperature", day - ZERO));
    needs.ice().ifPresent(ice -> o.addProperty("ice", ice));
    return o;
  }
}
