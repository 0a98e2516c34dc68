package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Locale;
import java.util.Map;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.versus.Contender;
import soakloop.versus.Difference;
import soakloop.versus.PullFigure;
import soakloop.versus.VersusResult;

/**
 * {@code versus.json}: what a program may read of a comparison. Temperatures are in degC, their
 * differences in K, all else SI; low and high are the ends of 90 % intervals; what is not modelled
 * is left out.
 */
final class VersusJson {
  private VersusJson() {}

  static String of(VersusResult result, String version) {
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonArray swapped = new JsonArray();
    result.plan().swapped().forEach(swapped::add);
    top.add("swapped", swapped);
    top.addProperty("conditions", result.conditions());
    top.addProperty("by", result.plan().by().key());
    top.addProperty("atLeast", result.plan().atLeast());
    top.addProperty("confidence", result.plan().confidence());
    top.addProperty("cars", result.cars());
    top.addProperty("modelError", result.modelError());
    JsonArray contenders = new JsonArray();
    for (int i = 0; i < result.contenders().size(); i++) {
      contenders.add(contender(result.plan().contenders().get(i), result.contenders().get(i)));
    }
    top.add("contenders", contenders);
    JsonArray pairings = new JsonArray();
    result.pairings().forEach(p -> pairings.add(pairing(result, p)));
    top.add("pairings", pairings);
    result.sheet().ifPresent(s -> top.add("testSheet", VersusSheetJson.of(s)));
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject contender(Contender contender, VersusResult.Ran ran) {
    JsonObject o = new JsonObject();
    o.addProperty("label", ran.label());
    o.addProperty("title", contender.scenario().title());
    o.addProperty("logged", contender.isLogged());
    JsonArray pulls = new JsonArray();
    for (int p = 0; p < ran.pulls().size(); p++) {
      JsonObject pull = new JsonObject();
      pull.addProperty("name", ran.pulls().get(p));
      for (PullFigure figure : PullFigure.values()) {
        Band band = ran.figures().get(p).get(figure);
        if (band != null) {
          pull.add(figure.key(), band(band, figure.dimension()));
        }
      }
      pulls.add(pull);
    }
    o.add("pulls", pulls);
    return o;
  }

  private static JsonObject pairing(VersusResult result, VersusResult.Pairing pairing) {
    JsonObject o = new JsonObject();
    o.addProperty("one", result.contenders().get(pairing.one()).label());
    o.addProperty("other", result.contenders().get(pairing.other()).label());
    o.addProperty("verdict", pairing.verdict().name().toLowerCase(Locale.ROOT));
    o.addProperty("worse", pairing.worse());
    JsonArray pulls = new JsonArray();
    for (Map<PullFigure, Difference> pull : pairing.pulls()) {
      JsonObject differences = new JsonObject();
      for (PullFigure figure : PullFigure.values()) {
        Difference difference = pull.get(figure);
        if (difference != null) {
          differences.add(figure.key(), difference(difference, figure));
        }
      }
      pulls.add(differences);
    }
    o.add("differences", pulls);
    JsonArray logged = new JsonArray();
    pairing.logged().forEach(r -> logged.add(raw(r)));
    o.add("logged", logged);
    JsonArray conditions = new JsonArray();
    for (VersusResult.Condition condition : pairing.conditions()) {
      JsonObject c = new JsonObject();
      c.addProperty("condition", condition.kind().name().toLowerCase(Locale.ROOT));
      c.addProperty("one", condition.one());
      c.addProperty("other", condition.other());
      c.addProperty("window", condition.window());
      c.addProperty("costs", condition.costs());
      c.addProperty("broken", condition.isBroken());
      conditions.add(c);
    }
    o.add("conditions", conditions);
    o.add("elsewhere", elsewhere(pairing.elsewhere(), result.plan().by()));
    o.add("grid", elsewhere(pairing.grid(), result.plan().by()));
    o.add("settling", VersusSheetJson.of(pairing.settling()));
    return o;
  }

  private static JsonArray elsewhere(Iterable<VersusResult.Elsewhere> all, PullFigure by) {
    JsonArray array = new JsonArray();
    for (VersusResult.Elsewhere there : all) {
      JsonObject o = new JsonObject();
      o.addProperty("conditions", there.name());
      number(o, "day", FitCsv.unit(Dimension.TEMPERATURE).fromSi(there.ambient()));
      number(o, "boost", there.boost());
      o.add("difference", difference(there.difference(), by));
      array.add(o);
    }
    return array;
  }

  private static JsonObject raw(VersusResult.Raw raw) {
    JsonObject o = new JsonObject();
    o.addProperty("pull", raw.pull());
    o.add("one", shown(raw.one()));
    o.add("other", shown(raw.other()));
    o.addProperty("difference", raw.difference());
    o.addProperty("reduction", raw.reduction());
    JsonObject parts = new JsonObject();
    raw.parts()
        .forEach(
            (origin, band) ->
                parts.add(
                    origin.name().toLowerCase(Locale.ROOT),
                    band(band, Dimension.TEMPERATURE_DIFFERENCE)));
    o.add("parts", parts);
    o.addProperty("notExplained", raw.rest());
    return o;
  }

  private static JsonObject shown(VersusResult.Shown shown) {
    Unit unit = FitCsv.unit(Dimension.TEMPERATURE);
    JsonObject o = new JsonObject();
    o.addProperty("start", unit.fromSi(shown.start()));
    o.addProperty("end", unit.fromSi(shown.end()));
    o.addProperty("rise", shown.rise());
    shown.coolant().ifPresent(k -> o.addProperty("coolantAtStart", unit.fromSi(k)));
    shown.effectiveness().ifPresent(e -> o.addProperty("effectiveness", e));
    return o;
  }

  private static JsonObject difference(Difference difference, PullFigure figure) {
    JsonObject o = band(difference.by(), figure.dimension().ofSpread());
    number(o, "better", difference.better());
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

  /** Adds a number; what could not be computed is left out. */
  static void number(JsonObject o, String name, double value) {
    if (Double.isFinite(value)) {
      o.addProperty(name, value);
    }
  }
}
