package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import soakloop.fit.BandedRun;
import soakloop.study.Outcome;

/**
 * The files of one run.
 *
 * @param run what it gave
 * @param version of the program
 * @param refresh seconds until an open page loads itself again, above 0; empty if it does not
 */
record RunFiles(BandedRun run, String version, OptionalInt refresh) implements ResultFiles {
  static final String PAGE = "report.html";
  static final String SUMMARY = "summary.json";
  static final String TRACE = "trace.csv";

  RunFiles(Outcome outcome, String version, OptionalInt refresh) {
    this(BandedRun.plain(outcome), version, refresh);
  }

  RunFiles {
    if (refresh.isPresent() && !(refresh.getAsInt() > 0)) {
      throw new IllegalArgumentException("seconds to the next loading must be above 0");
    }
  }

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    return Chart.all(run, new Display(run.outcome().scenario().units(), false));
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(SUMMARY, () -> SummaryJson.of(run, version));
    texts.put(TRACE, () -> TraceCsv.of(run.outcome().trace()));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return ReportPage.of(run, version, drawn, refresh);
  }

  @Override
  public List<String> everyName() {
    List<String> names = new ArrayList<>(List.of(PAGE, SUMMARY, TRACE));
    Chart.NAMES.forEach(name -> names.add(ResultFiles.picture(name)));
    return names;
  }
}
