package soakloop.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.study.Ranking;

/**
 * The files of a ranking.
 *
 * @param ranking what it gave
 * @param version of the program
 */
record RankFiles(Ranking ranking, String version) implements ResultFiles {
  static final String CHART = "rank";

  private static final String PAGE = "rank.html";
  private static final String JSON = "rank.json";
  private static final String CSV = "rank.csv";

  /** Every name; a ranking always has all of them. */
  static final List<String> NAMES = List.of(PAGE, JSON, CSV, ResultFiles.picture(CHART));

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    return List.of(new RankBars(ranking, words()));
  }

  private RankWords words() {
    return new RankWords(
        ranking.plan().measure(), new Display(ranking.plan().scenario().units(), false));
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, () -> RankJson.of(ranking, version));
    texts.put(CSV, () -> RankCsv.of(ranking));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return RankPage.of(ranking, version, words(), drawn);
  }

  @Override
  public List<String> everyName() {
    return NAMES;
  }
}
