package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;

/**
 * The files of a plan's results.
 *
 * @param variation what it gave
 * @param version of the program
 */
record VaryFiles(Variation variation, String version) implements ResultFiles {
  static final String PAGE = "vary.html";
  static final String JSON = "vary.json";
  static final String CSV = "vary.csv";
  static final String LAST_PULL = "vary-last-pull";

  /** Returns the name of a measure's chart. */
  static String chart(Measure measure) {
    return "vary-" + measure.key();
  }

  /** Returns the names that a plan's files will have. */
  static List<String> names(VaryPlan plan) {
    List<String> names = new ArrayList<>(List.of(PAGE, JSON, CSV));
    plan.measures().forEach(m -> names.add(ResultFiles.picture(chart(m))));
    if (plan.keys().size() == 1) {
      names.add(ResultFiles.picture(LAST_PULL));
    }
    return names;
  }

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    VaryWords words = words(false);
    List<Chart> charts = new ArrayList<>();
    for (Measure measure : variation.plan().measures()) {
      charts.add(
          variation.plan().keys().size() == 1
              ? new VaryCurve(variation, measure, words)
              : new VaryMap(variation, measure, words));
    }
    if (variation.plan().keys().size() == 1) {
      charts.add(new LastPullCourses(variation, words));
    }
    return charts;
  }

  private VaryWords words(boolean plain) {
    return new VaryWords(variation.plan(), new Display(variation.plan().scenario().units(), plain));
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, () -> VaryJson.of(variation, version));
    texts.put(CSV, () -> VaryCsv.of(variation));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return VaryPage.of(variation, version, words(false), drawn);
  }

  @Override
  public List<String> everyName() {
    List<String> names = new ArrayList<>(List.of(PAGE, JSON, CSV));
    for (Measure measure : Measure.values()) {
      names.add(ResultFiles.picture(chart(measure)));
    }
    names.add(ResultFiles.picture(LAST_PULL));
    return names;
  }
}
