package soakloop.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.plan.WaitAnswer;

/**
 * The files of a plan of waits.
 *
 * @param answer what it gave
 * @param version of the program
 */
record WaitFiles(WaitAnswer answer, String version) implements ResultFiles {
  static final String CHART = "wait";

  private static final String PAGE = "wait.html";
  private static final String JSON = "wait.json";
  private static final String CSV = "wait.csv";

  /** Every name; a plan always has all of them. */
  static final List<String> NAMES = List.of(PAGE, JSON, CSV, ResultFiles.picture(CHART));

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    return List.of(new WaitCurves(answer, words()));
  }

  private WaitWords words() {
    return new WaitWords(new Display(answer.plan().scenario().units(), false));
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, () -> WaitJson.of(answer, version));
    texts.put(CSV, () -> WaitCsv.of(answer));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return WaitPage.of(answer, version, words(), drawn);
  }

  @Override
  public List<String> everyName() {
    return NAMES;
  }
}
