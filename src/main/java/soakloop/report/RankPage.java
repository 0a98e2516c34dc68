package soakloop.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soakloop.study.Ranking;

/** {@code rank.html}: one file that opens from disk, chart inside, no script. */
final class RankPage {
  private RankPage() {}

  /**
   * Writes the page.
   *
   * @param ranking the results
   * @param version of the program
   * @param words how they are shown
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(Ranking ranking, String version, RankWords words, List<DrawnChart> charts)
      throws IOException {
    RankTables tables = new RankTables(ranking, words);
    RankSentences say = new RankSentences(ranking, words);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", ranking.plan().scenario().title());
    model.put("about", "What matters most to the " + words.name() + ".");
    model.put("answer", PageTemplate.model(say.answer()));
    model.put("charts", PageTemplate.models(charts));
    model.put("keys", tables.all().model());
    model.put("together", tables.together().model());
    model.put("method", say.method());
    model.put("broken", tables.broken().model());
    return PageTemplate.fill("rank.ftlh", model);
  }
}
