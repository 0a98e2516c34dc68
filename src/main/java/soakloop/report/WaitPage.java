package soakloop.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soakloop.plan.WaitAnswer;

/** {@code wait.html}: one sheet for the pit wall that opens from disk, chart inside, no script. */
final class WaitPage {
  private WaitPage() {}

  /**
   * Writes the page.
   *
   * @param answer what a plan gave
   * @param version of the program
   * @param words how it is shown
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(WaitAnswer answer, String version, WaitWords words, List<DrawnChart> charts)
      throws IOException {
    WaitTables tables = new WaitTables(answer, words);
    WaitSentences say = new WaitSentences(answer, words);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", answer.plan().scenario().title());
    model.put(
        "about",
        "When the car can go again. Limit: "
            + words.display().temperature(answer.plan().limit())
            + " true charge, in "
            + words.percent(answer.plan().confidence())
            + " of equally likely cars.");
    model.put("answer", PageTemplate.model(say.answered()));
    model.put("charts", PageTemplate.models(charts));
    model.put("ways", tables.ways().model());
    model.put("share", words.percent(answer.plan().confidence()));
    model.put("method", say.method());
    model.put("iceBelow", words.display().temperature(answer.plan().iceBelow()));
    model.put("ices", answer.plan().ways().stream().anyMatch(w -> w.ice() > 0));
    if (tables.hasGauge()) {
      model.put("gauge", tables.gauge().model());
      model.put("gaugeWay", Display.sentenceStart(words.way(answer.best().way())));
    }
    return PageTemplate.fill("wait.ftlh", model);
  }
}
