package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import soakloop.study.KeyRange;
import soakloop.study.LimitLine;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;

/**
 * {@code vary.json}: what a program may read of a plan's results. Key values are in the unit they
 * were asked in, temperatures in degC, all else SI; what has no value is left out.
 */
final class VaryJson {
  private VaryJson() {}

  static String of(Variation variation, String version) {
    VaryPlan plan = variation.plan();
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonObject scenario = new JsonObject();
    scenario.addProperty("name", plan.scenario().name());
    scenario.addProperty("title", plan.scenario().title());
    top.add("scenario", scenario);
    JsonArray keys = new JsonArray();
    plan.keys().forEach(range -> keys.add(key(range)));
    top.add("keys", keys);
    JsonArray results = new JsonArray();
    plan.measures().forEach(measure -> results.add(result(variation, measure)));
    top.add("results", results);
    JsonArray points = new JsonArray();
    variation.points().forEach(point -> points.add(point(variation, point)));
    top.add("points", points);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject key(KeyRange range) {
    JsonObject o = new JsonObject();
    o.addProperty("key", range.key());
    o.addProperty("means", range.means());
    o.addProperty("unit", range.unit().symbol());
    range.own().ifPresent(own -> o.addProperty("scenario", own));
    JsonArray values = new JsonArray();
    range.values().forEach(values::add);
    o.add("values", values);
    return o;
  }

  private static JsonObject result(Variation variation, Measure measure) {
    JsonObject o = new JsonObject();
    o.addProperty("result", measure.key());
    o.addProperty("unit", VaryCsv.unit(measure).symbol());
    variation.plan().limit(measure).ifPresent(v -> o.addProperty("limit", shown(measure, v)));
    variation.own(measure).ifPresent(v -> o.addProperty("scenario", shown(measure, v)));
    variation.logged(measure).ifPresent(v -> o.addProperty("logged", shown(measure, v)));
    JsonArray lines = new JsonArray();
    variation.lines().stream()
        .filter(line -> line.measure() == measure)
        .forEach(line -> lines.add(line(variation.plan(), line)));
    o.add("limitCrossings", lines);
    return o;
  }

  private static JsonObject line(VaryPlan plan, LimitLine line) {
    JsonObject o = new JsonObject();
    o.addProperty("along", plan.keys().get(line.along()).key());
    line.beside().ifPresent(i -> o.add("beside", beside(plan.keys().get(1 - line.along()), i)));
    o.addProperty("startsOver", line.startsOver());
    JsonArray crossings = new JsonArray();
    for (LimitLine.Crossing crossing : line.crossings()) {
      JsonObject c = new JsonObject();
      c.addProperty("under", crossing.under());
      c.addProperty("over", crossing.over());
      crossings.add(c);
    }
    o.add("crossings", crossings);
    return o;
  }

  private static JsonObject beside(KeyRange range, int index) {
    JsonObject o = new JsonObject();
    o.addProperty("key", range.key());
    o.addProperty("value", range.values().get(index));
    return o;
  }

  private static JsonObject point(Variation variation, VaryPoint point) {
    VaryPlan plan = variation.plan();
    JsonObject o = new JsonObject();
    JsonArray at = new JsonArray();
    plan.values(point.index()).forEach(at::add);
    o.add("at", at);
    if (point instanceof VaryPoint.Hole hole) {
      o.addProperty("failed", hole.reason());
      return o;
    }
    for (Measure measure : plan.measures()) {
      o.addProperty(measure.key(), shown(measure, variation.value(point.index(), measure)));
    }
    return o;
  }

  private static double shown(Measure measure, double si) {
    return VaryCsv.unit(measure).fromSi(si);
  }
}
