package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import soakloop.study.Measure;
import soakloop.study.Moved;
import soakloop.study.Ranking;
import soakloop.study.UncertainKey;

/**
 * {@code rank.json}: what a program may read of a ranking. Temperatures are in degC, their changes
 * in K, all else SI; what has no value is left out.
 */
final class RankJson {
  private RankJson() {}

  static String of(Ranking ranking, String version) {
    Measure measure = ranking.plan().measure();
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonObject scenario = new JsonObject();
    scenario.addProperty("name", ranking.plan().scenario().name());
    scenario.addProperty("title", ranking.plan().scenario().title());
    top.add("scenario", scenario);
    JsonObject result = new JsonObject();
    result.addProperty("result", measure.key());
    result.addProperty("unit", VaryCsv.unit(measure).symbol());
    result.addProperty("scenario", VaryCsv.unit(measure).fromSi(ranking.own()));
    result.addProperty("changeUnit", measure.dimension().ofSpread().si().symbol());
    top.add("result", result);
    JsonObject design = new JsonObject();
    design.addProperty("runs", ranking.design().runs());
    design.addProperty("failed", ranking.design().failed());
    design.addProperty("points", ranking.design().points());
    top.add("movedTogether", design);
    JsonArray keys = new JsonArray();
    ranking.keys().forEach(moved -> keys.add(key(moved)));
    top.add("keys", keys);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject key(Moved moved) {
    UncertainKey key = moved.key();
    JsonObject o = new JsonObject();
    o.addProperty("key", key.key());
    o.addProperty("means", key.means());
    o.addProperty("assumed", key.assumed());
    o.addProperty("unit", RankCsv.unit(key).symbol());
    JsonArray intervals = new JsonArray();
    for (UncertainKey.Part part : key.parts()) {
      JsonObject p = new JsonObject();
      p.addProperty("key", part.path());
      p.addProperty("value", RankCsv.unit(key).fromSi(part.value()));
      p.addProperty("low", RankCsv.unit(key).fromSi(part.low()));
      p.addProperty("high", RankCsv.unit(key).fromSi(part.high()));
      p.addProperty("cut", part.clipped());
      intervals.add(p);
    }
    o.add("intervals", intervals);
    moved.low().change().ifPresent(c -> o.addProperty("changeAtLow", c));
    moved.high().change().ifPresent(c -> o.addProperty("changeAtHigh", c));
    o.addProperty("swing", moved.swing());
    moved
        .indices()
        .ifPresent(
            t -> {
              o.addProperty("varianceShareAlone", t.alone());
              o.addProperty("varianceShareWithOthers", t.total());
            });
    String failures = RankCsv.failures(moved);
    if (!failures.isEmpty()) {
      o.addProperty("failed", failures);
    }
    return o;
  }
}
