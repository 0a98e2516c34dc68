package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soakloop.fit.FitResult;

/** {@code fit.html}: one file that opens from disk, charts inside, no script. */
final class FitPage {
  private FitPage() {}

  /** Returns the titles of the scenarios, each once. */
  static String title(FitResult result) {
    return LogWords.listed(
        result.plan().cases().stream().map(c -> c.scenario().title()).distinct().toList());
  }

  /**
   * Writes the page.
   *
   * @param result what a fit gave
   * @param version of the program
   * @param display how numbers are shown
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(FitResult result, String version, Display display, List<DrawnChart> charts)
      throws IOException {
    FitWords words = new FitWords(display);
    FitTables tables = new FitTables(result, words);
    FitSentences say = new FitSentences(result, words);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", title(result));
    model.put("about", say.about());
    model.put("answer", PageTemplate.model(say.answer()));
    model.put("warnings", result.cautions());
    model.put("meaning", meaning(result, display));
    model.put("heldOut", tables.heldOut().model());
    model.put("cannotTell", say.cannotTell());
    model.put("wanted", result.plan().wanted().label());
    model.put("advice", tables.advice().model());
    model.put("charts", PageTemplate.models(charts));
    model.put("next", tables.next().model());
    model.put("keys", tables.keys(result.keys()).model());
    model.put("profiles", tables.profiles().model());
    model.put("together", tables.together().model());
    model.put("signals", tables.signals().model());
    model.put("untold", tables.untold().model());
    model.put("method", say.method());
    return PageTemplate.fill("fit.ftlh", model);
  }

  private static List<Map<String, Object>> meaning(FitResult result, Display display) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (int i = 0; i < result.after().size(); i++) {
      String label = result.after().size() > 1 ? result.plan().cases().get(i).label() : "";
      FitMeaning.of(result, i, display)
          .ifPresent(
              m ->
                  all.add(
                      Map.of(
                          "label", label,
                          "sentences", m.sentences(),
                          "table", m.table().model())));
    }
    return all;
  }
}
