package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Map;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.fit.FitKey;
import soakloop.fit.FitResult;
import soakloop.fit.HeldOut;
import soakloop.fit.KeyNews;
import soakloop.fit.Quantity;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.scenario.Scenario;

/**
 * {@code fit.json}: what a program may read of a fit. Temperatures are in degC, their differences
 * in K, all else SI; low and high are the ends of 90 % intervals; what has no value is left out.
 */
final class FitJson {
  private FitJson() {}

  static String of(FitResult result, String version) {
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonArray scenarios = new JsonArray();
    result
        .plan()
        .cases()
        .forEach(
            c -> {
              Scenario scenario = c.scenario();
              JsonObject o = new JsonObject();
              o.addProperty("label", c.label());
              o.addProperty("name", scenario.name());
              o.addProperty("title", scenario.title());
              scenario.logged().ifPresent(l -> o.addProperty("log", l.log().name()));
              scenarios.add(o);
            });
    top.add("scenarios", scenarios);
    top.add("nextPull", nextPull(result));
    JsonArray held = new JsonArray();
    result.heldOut().forEach(h -> held.add(heldOut(h)));
    top.add("heldOut", held);
    JsonArray keys = new JsonArray();
    result.keys().forEach(k -> keys.add(key(k, k.isNews() ? "yes" : "hardly")));
    result.untold().forEach(k -> keys.add(key(KeyNews.untold(k), "no")));
    top.add("keys", keys);
    if (!result.profiles().isEmpty()) {
      JsonArray profiles = new JsonArray();
      for (FitResult.Profiled profiled : result.profiles()) {
        Unit unit = FitCsv.unit(profiled.news().key().dimension());
        JsonObject o = new JsonObject();
        o.addProperty("key", profiled.news().key().name());
        o.addProperty("unit", unit.symbol());
        number(o, "low", unit.fromSi(profiled.low()));
        number(o, "high", unit.fromSi(profiled.high()));
        profiles.add(o);
      }
      top.add("profiles", profiles);
    }
    top.add("correlation", correlation(result));
    top.add("notToldApart", pairs(result));
    top.add("signals", signals(result));
    top.add("advice", advice(result));
    number(top, "widening", result.widening());
    top.add("effort", effort(result.effort()));
    JsonArray cautions = new JsonArray();
    result.cautions().forEach(cautions::add);
    top.add("cautions", cautions);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonArray nextPull(FitResult result) {
    JsonArray all = new JsonArray();
    for (FitResult.Quantities known : result.quantities()) {
      JsonObject o = new JsonObject();
      o.addProperty("scenario", known.label());
      for (Map.Entry<Quantity, Band> one : known.after().entrySet()) {
        Quantity quantity = one.getKey();
        JsonObject q = new JsonObject();
        q.addProperty("means", quantity.label());
        q.addProperty("unit", FitCsv.unit(quantity.dimension()).symbol());
        Band before = known.before().getOrDefault(quantity, FitSentences.NONE);
        q.add("before", band(before, quantity.dimension()));
        q.add("after", band(one.getValue(), quantity.dimension()));
        o.add(camel(quantity.key()), q);
      }
      all.add(o);
    }
    return all;
  }

  private static String camel(String key) {
    StringBuilder name = new StringBuilder();
    for (String part : key.split("-", -1)) {
      name.append(name.length() == 0 ? part : Display.sentenceStart(part));
    }
    return name.toString();
  }

  private static JsonObject heldOut(HeldOut held) {
    JsonObject o = new JsonObject();
    o.addProperty("scenario", held.label());
    o.addProperty("pull", held.pull());
    o.add("withoutLog", band(held.without(), Dimension.TEMPERATURE));
    o.add("foretold", band(held.foretold(), Dimension.TEMPERATURE));
    number(o, "logged", FitCsv.unit(Dimension.TEMPERATURE).fromSi(held.logged()));
    number(o, "error", held.error());
    o.addProperty("inside", held.inside());
    return o;
  }

  private static JsonObject key(KeyNews news, String tells) {
    FitKey key = news.key();
    JsonObject o = new JsonObject();
    o.addProperty("key", key.name());
    o.addProperty("means", key.means());
    o.addProperty("assumed", key.assumed());
    o.addProperty("logTells", tells);
    o.addProperty("unit", FitCsv.unit(key.dimension()).symbol());
    o.add("before", band(news.before(), key.dimension()));
    o.add("after", band(news.after(), key.dimension()));
    number(o, "movedByDeviations", news.shift());
    number(o, "spreadLeft", news.left());
    o.addProperty("movedFar", news.isSurprise());
    o.addProperty("atBound", news.isAtBound());
    return o;
  }

  private static JsonObject correlation(FitResult result) {
    JsonObject o = new JsonObject();
    JsonArray names = new JsonArray();
    JsonArray rows = new JsonArray();
    for (int i = 0; i < result.keys().size(); i++) {
      names.add(result.keys().get(i).key().name());
      JsonArray row = new JsonArray();
      for (int j = 0; j < result.keys().size(); j++) {
        row.add(result.together(i, j));
      }
      rows.add(row);
    }
    o.add("keys", names);
    o.add("rows", rows);
    return o;
  }

  private static JsonArray pairs(FitResult result) {
    JsonArray all = new JsonArray();
    for (FitResult.Pair pair : result.pairs()) {
      JsonObject o = new JsonObject();
      o.addProperty("one", pair.one());
      o.addProperty("other", pair.other());
      number(o, "correlation", pair.correlation());
      number(o, "spreadLeftOfCombination", pair.known());
      all.add(o);
    }
    return all;
  }

  private static JsonArray signals(FitResult result) {
    JsonArray all = new JsonArray();
    for (FitResult.SignalFit signal : result.signals()) {
      JsonObject o = new JsonObject();
      o.addProperty("scenario", signal.label());
      o.addProperty("signal", signal.signal().key());
      o.addProperty("points", signal.points());
      number(o, "rmsBefore", signal.before());
      number(o, "rmsAfter", signal.after());
      number(o, "modelError", signal.error());
      number(o, "modelErrorTime", signal.errorTime());
      all.add(o);
    }
    return all;
  }

  private static JsonArray advice(FitResult result) {
    JsonArray all = new JsonArray();
    for (int i = 0; i < result.advice().size(); i++) {
      for (Advice advice : result.advice().get(i)) {
        JsonObject o = new JsonObject();
        o.addProperty("scenario", result.plan().cases().get(i).label());
        o.addProperty("wanted", result.plan().wanted().key());
        o.addProperty("what", advice.what());
        o.addProperty("kind", advice.isTest() ? "test" : "sensor");
        o.addProperty("unit", result.plan().wanted().dimension().ofSpread().si().symbol());
        number(o, "deviationNow", advice.now());
        number(o, "deviationWithIt", advice.then());
        all.add(o);
      }
    }
    return all;
  }

  private static JsonObject effort(FitResult.Effort effort) {
    JsonObject o = new JsonObject();
    o.addProperty("points", effort.points());
    number(o, "effectiveKeys", effort.effectiveKeys());
    o.addProperty("settled", effort.settled());
    o.addProperty("rivals", effort.rivals());
    return o;
  }

  private static JsonObject band(Band band, Dimension dimension) {
    Unit unit = FitCsv.unit(dimension);
    JsonObject o = new JsonObject();
    number(o, "low", unit.fromSi(band.low()));
    number(o, "middle", unit.fromSi(band.middle()));
    number(o, "high", unit.fromSi(band.high()));
    return o;
  }

  private static void number(JsonObject into, String name, double value) {
    if (Double.isFinite(value)) {
      into.addProperty(name, value);
    }
  }
}
