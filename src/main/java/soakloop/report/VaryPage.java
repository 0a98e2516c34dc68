package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soakloop.study.KeyRange;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;

/** {@code vary.html}: one file that opens from disk, charts inside, no script. */
final class VaryPage {
  private static final int COLUMNS = 9;

  private VaryPage() {}

  /**
   * Writes the page.
   *
   * @param variation the results
   * @param version of the program
   * @param words how they are shown
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(Variation variation, String version, VaryWords words, List<DrawnChart> charts)
      throws IOException {
    VaryPlan plan = variation.plan();
    VaryTables tables = new VaryTables(variation, words);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", plan.scenario().title());
    model.put("about", about(plan, words));
    model.put("answer", PageTemplate.model(new VarySentences(variation, words).answer()));
    model.put("charts", PageTemplate.models(charts));
    List<Map<String, Object>> results = new ArrayList<>();
    if (plan.keys().size() == 1) {
      results.add(Map.of("title", "", "note", words.units() + ".", "grid", tables.curve().model()));
    } else {
      for (Measure measure : plan.measures()) {
        results.add(
            Map.of(
                "title",
                measure.label() + ", " + words.display().symbol(measure.dimension()),
                "note",
                "Across: " + words.heading(plan.keys().get(0)) + ".",
                "grid",
                tables.map(measure, COLUMNS).model()));
      }
    }
    model.put("results", results);
    model.put("holes", tables.holes().model());
    model.put("holeCount", variation.holes().size());
    model.put("runs", plan.size());
    return PageTemplate.fill("vary.ftlh", model);
  }

  private static String about(VaryPlan plan, VaryWords words) {
    List<String> keys = new ArrayList<>();
    for (KeyRange range : plan.keys()) {
      keys.add(
          range.key()
              + " ("
              + lowerStart(range.means())
              + ") from "
              + words.value(range, range.first())
              + " to "
              + words.value(range, range.last())
              + (range.own().isPresent()
                  ? ", " + words.value(range, range.own().getAsDouble()) + " in the scenario"
                  : ""));
    }
    return "Varied: " + String.join("; ", keys) + ".";
  }

  private static String lowerStart(String text) {
    return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
