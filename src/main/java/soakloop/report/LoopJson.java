package soakloop.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Locale;
import soakloop.simulate.LoopPoint;
import soakloop.study.FlowFromHeat;
import soakloop.study.LoopHydraulics;

/** Pump and loop in {@code summary.json}: flow in m3/s, pressures in Pa, temperatures in degC. */
final class LoopJson {
  private static final double ZERO_CELSIUS = 273.15;

  private LoopJson() {}

  static JsonObject of(LoopHydraulics hydraulics) {
    JsonObject o = new JsonObject();
    o.add("cold", point(hydraulics.cold()));
    o.add("running", point(hydraulics.running()));
    return o;
  }

  static JsonObject of(FlowFromHeat flow) {
    JsonObject o = new JsonObject();
    o.addProperty("flow", flow.flow().value());
    o.addProperty("spread", flow.flow().spread());
    o.addProperty("modelled", flow.modelled());
    o.addProperty("pulls", flow.read().pulls().size());
    JsonArray air = new JsonArray();
    flow.modelledAir().forEach(c -> air.add(c.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    o.add("modelledAir", air);
    return o;
  }

  private static JsonObject point(LoopPoint point) {
    JsonObject o = new JsonObject();
    o.addProperty("temperature", point.temperature() - ZERO_CELSIUS);
    o.addProperty("flow", point.flow());
    o.addProperty("pressure", point.loss());
    JsonArray shares = new JsonArray();
    for (LoopPoint.Part part : point.parts()) {
      JsonObject share = new JsonObject();
      share.addProperty("piece", part.name());
      share.addProperty("pressure", part.loss());
      share.addProperty("share", part.loss() / point.loss());
      shares.add(share);
    }
    o.add("shares", shares);
    return o;
  }
}
