package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.plan.SameStartAnswer;
import soakloop.plan.Way;
import soakloop.plan.Window;

/**
 * The files of a plan of pulls that must start alike.
 *
 * @param answer what it gave
 * @param version of the program
 */
record SameStartFiles(SameStartAnswer answer, String version) implements ResultFiles {
  static final String CHART = "dyno-day";

  private static final String PAGE = "dyno-day.html";
  private static final String JSON = "dyno-day.json";
  private static final String CSV = "dyno-day.csv";

  /** Every name; a plan always has all of them. */
  static final List<String> NAMES = List.of(PAGE, JSON, CSV, ResultFiles.picture(CHART));

  @Override
  public String pageName() {
    return PAGE;
  }

  private Display display() {
    return new Display(answer.plan().scenario().units(), false);
  }

  @Override
  public List<Chart> charts() {
    return List.of(new SameStartCurves(answer, display()));
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, this::json);
    texts.put(CSV, this::csv);
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    SameStartWords words = new SameStartWords(answer, display());
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", answer.plan().scenario().title());
    model.put("about", "Pulls on a dyno that start alike: " + words.counted() + ".");
    model.put("answer", PageTemplate.model(words.answered()));
    model.put("charts", PageTemplate.models(drawn));
    model.put("ways", words.ways().model());
    model.put("draws", answer.draws());
    return PageTemplate.fill("dyno-day.ftlh", model);
  }

  /** K, s and shares; low quantiles are not told, what the asked share stays under is. */
  private String json() {
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    top.addProperty("scenario", answer.plan().scenario().name());
    top.addProperty("pulls", answer.plan().pulls());
    top.addProperty("warmUps", answer.plan().warmUps());
    top.addProperty("within", answer.plan().within());
    top.addProperty("confidence", answer.plan().confidence());
    top.addProperty("draws", answer.draws());
    JsonArray ways = new JsonArray();
    for (SameStartAnswer.OfWay way : answer.ways()) {
      JsonObject o = new JsonObject();
      o.addProperty("engine", way.way().idles() ? "idle" : "off");
      o.addProperty("pump", way.way().pump());
      o.addProperty("fans", way.way().fans());
      o.addProperty("hoodOpen", way.way().hood());
      JsonArray windows = new JsonArray();
      for (Window window : way.windows()) {
        JsonObject w = new JsonObject();
        w.addProperty("from", window.from());
        w.addProperty("to", window.to());
        w.addProperty("open", window.open());
        windows.add(w);
      }
      o.add("windows", windows);
      JsonArray curve = new JsonArray();
      for (SameStartAnswer.Apart apart : way.curve()) {
        JsonObject a = new JsonObject();
        a.addProperty("interval", apart.seconds());
        a.addProperty("coolantAtStart", apart.coolant());
        a.addProperty("sensorAtStart", apart.sensor());
        a.addProperty("chargeAtEnd", apart.end());
        VersusJson.number(a, "power", apart.power());
        curve.add(a);
      }
      o.add("apart", curve);
      ways.add(o);
    }
    top.add("ways", ways);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private String csv() {
    StringBuilder text =
        new StringBuilder(
            "engine,pump,fans,hood,interval [s],coolant at start apart [K],sensor at start apart"
                + " [K],charge at end apart [K],power apart [-]\n");
    for (SameStartAnswer.OfWay way : answer.ways()) {
      Way of = way.way();
      for (SameStartAnswer.Apart apart : way.curve()) {
        text.append(
            String.join(
                ",",
                of.idles() ? "idle" : "off",
                of.pump() ? "on" : "off",
                of.fans() ? "on" : "off",
                of.hood() ? "open" : "shut",
                VaryCsv.number(apart.seconds()),
                VaryCsv.number(apart.coolant()),
                VaryCsv.number(apart.sensor()),
                VaryCsv.number(apart.end()),
                VaryCsv.number(apart.power())));
        text.append('\n');
      }
    }
    return text.toString();
  }

  @Override
  public List<String> everyName() {
    return NAMES;
  }
}
