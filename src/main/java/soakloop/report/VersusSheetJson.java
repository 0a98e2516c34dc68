package soakloop.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import soakloop.fit.Advice;
import soakloop.versus.TestSheet;
import soakloop.versus.VersusResult;

/** What would settle a comparison, and what a test day would, for {@link VersusJson}; K. */
final class VersusSheetJson {
  private VersusSheetJson() {}

  static JsonObject of(TestSheet sheet) {
    JsonObject o = new JsonObject();
    o.addProperty("found", sheet.power());
    JsonArray rows = new JsonArray();
    for (TestSheet.Row row : sheet.rows()) {
      JsonObject r = new JsonObject();
      r.addProperty("pulls", row.pulls());
      VersusJson.number(r, "oneThenTheOther", row.plain());
      VersusJson.number(r, "andTheFirstAgain", row.thereAndBack());
      VersusJson.number(r, "withCoolantProbe", row.withProbe());
      rows.add(r);
    }
    o.add("smallestDifference", rows);
    return o;
  }

  static JsonObject of(VersusResult.Settling settling) {
    JsonObject o = new JsonObject();
    o.addProperty("deviation", settling.deviation());
    o.addProperty("modelErrorOfDifference", settling.floor());
    JsonArray sessions = new JsonArray();
    settling.sessions().forEach(sessions::add);
    o.add("deviationAfterPulls", sessions);
    settling.enough().ifPresent(n -> o.addProperty("pullsEnough", n));
    JsonArray advice = new JsonArray();
    for (Advice one : settling.advice()) {
      JsonObject a = new JsonObject();
      a.addProperty("what", one.what());
      a.addProperty("test", one.isTest());
      a.addProperty("deviation", one.then());
      advice.add(a);
    }
    o.add("advice", advice);
    return o;
  }
}
