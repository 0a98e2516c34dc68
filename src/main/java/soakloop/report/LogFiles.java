package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import soakloop.log.Signal;

/**
 * The files that a look at logs gives.
 *
 * @param set the logs
 * @param starters texts of scenarios to begin with, by file name
 * @param version of the program
 */
record LogFiles(LogSet set, Map<String, String> starters, String version) implements ResultFiles {
  private static final String PAGE = "log.html";
  private static final String JSON = "log.json";

  private Display display() {
    return new Display(set.units(), false);
  }

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    List<Chart> charts = new ArrayList<>();
    LogOverSpeed.of(set, display(), LogOverSpeed.Shown.CHARGE).ifPresent(charts::add);
    LogPullByPull pulls = new LogPullByPull(set, display());
    if (pulls.hasSomething()) {
      charts.add(pulls);
    }
    boolean charge =
        set.sheets().stream()
            .anyMatch(s -> s.has(Signal.CHARGE_TEMPERATURE) && !s.reading().pulls().isEmpty());
    if (charge) {
      charts.add(new LogFromStart(set, display()));
    }
    for (int i = 0; i < set.sheets().size(); i++) {
      charts.add(new LogOverTime(set, display(), i));
    }
    for (LogOverSpeed.Shown shown : LogOverSpeed.Shown.values()) {
      if (shown != LogOverSpeed.Shown.CHARGE) {
        LogOverSpeed.of(set, display(), shown).ifPresent(charts::add);
      }
    }
    return charts;
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    for (int i = 0; i < set.sheets().size(); i++) {
      LogSheet sheet = set.sheets().get(i);
      texts.put(csv(i), () -> LogCsv.of(sheet));
    }
    texts.put(JSON, () -> LogJson.of(set, version));
    starters.forEach((name, text) -> texts.put(name, () -> text));
    return texts;
  }

  private String csv(int index) {
    return set.single() ? clean(0) : clean(index + 1);
  }

  /** Returns the name of a clean log: numbered from 1 if there are several, 0 for the only one. */
  private static String clean(int number) {
    return number == 0 ? "clean.csv" : "clean-" + number + ".csv";
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return LogPage.of(set, version, display(), drawn);
  }

  @Override
  public List<String> everyName() {
    List<String> names = new ArrayList<>(List.of(PAGE, JSON));
    IntStream.rangeClosed(0, LogSet.MOST).forEach(i -> names.add(clean(i)));
    Arrays.stream(LogOverSpeed.Shown.values()).forEach(s -> names.add(picture(s.file())));
    // A starter that this look does not write is not swept away: it may be in use by now.
    names.addAll(starters.keySet());
    names.add(picture(LogPullByPull.NAME));
    names.add(picture(LogFromStart.NAME));
    IntStream.range(0, LogSet.MOST).forEach(i -> names.add(picture(LogOverTime.fileName(i))));
    return names;
  }

  private static String picture(String chart) {
    return ResultFiles.picture(chart);
  }
}
