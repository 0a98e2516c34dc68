package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import soakloop.fit.Band;
import soakloop.fit.FitResult;
import soakloop.fit.Quantity;

/**
 * The files of a fit.
 *
 * @param result what it gave
 * @param scenarios texts of fitted scenarios, by file name
 * @param version of the program
 */
record FitFiles(FitResult result, Map<String, String> scenarios, String version)
    implements ResultFiles {
  private static final String PAGE = "fit.html";
  private static final String JSON = "fit.json";
  private static final String CSV = "fit.csv";
  private static final String KEYS = "fit-keys";
  private static final String NEXT = "fit-next-pull";

  /** Most cases whose charts are drawn; tables and files have all. */
  private static final int DRAWN = 12;

  /** Most keys on the chart. */
  private static final int SHOWN = 16;

  @Override
  public String pageName() {
    return PAGE;
  }

  private Display display() {
    return new Display(result.plan().cases().get(0).scenario().units(), false);
  }

  /** Returns what stands behind a title to say which case it is of; nothing if there is one. */
  static String of(FitResult result, int index) {
    return result.plan().cases().size() > 1 ? ", " + result.plan().cases().get(index).label() : "";
  }

  @Override
  public List<Chart> charts() {
    List<Chart> charts = new ArrayList<>();
    int drawn = Math.min(DRAWN, result.plan().cases().size());
    IntStream.range(0, drawn).forEach(i -> charts.add(new FitOverTime(result, display(), i)));
    FitWords words = new FitWords(display());
    FitIntervals next = next(words);
    if (!next.rows().isEmpty()) {
      charts.add(next);
    }
    charts.add(keys(words));
    IntStream.range(0, drawn).forEach(i -> charts.add(new FitResiduals(result, display(), i)));
    return charts;
  }

  private FitIntervals next(FitWords words) {
    List<FitIntervals.Row> rows = new ArrayList<>();
    for (int i = 0; i < result.quantities().size(); i++) {
      FitResult.Quantities known = result.quantities().get(i);
      String of = of(result, i);
      for (Quantity quantity : Quantity.values()) {
        if (words.isOpen(known, quantity)) {
          Band before = known.before().getOrDefault(quantity, FitSentences.NONE);
          Band after = known.after().getOrDefault(quantity, FitSentences.NONE);
          String value = words.known(after, quantity.dimension());
          rows.add(FitIntervals.Row.of(words.name(quantity) + of, value, before, after));
        }
      }
    }
    return new FitIntervals(
        NEXT,
        "What is known of the next pull",
        "One more pull like the last, after a wait like the one before it, and the car under it."
            + " The pale bars are all drawn equally long: a short bar on one is what the log adds.",
        title(),
        rows);
  }

  private FitIntervals keys(FitWords words) {
    List<FitIntervals.Row> rows =
        result.keys().stream()
            .limit(SHOWN)
            .map(
                k ->
                    new FitIntervals.Row(
                        k.key().name(),
                        words.known(k.after(), k.key().dimension()),
                        k.before(),
                        k.after(),
                        k.isSurprise()))
            .toList();
    int left = result.keys().size() - rows.size();
    return new FitIntervals(
        KEYS,
        "What the log says of each key",
        "Most news first. The pale bar is the spread before the log, all drawn equally long, the"
            + " bar on it what is left; nine times in ten the truth lies on it."
            + (rows.stream().anyMatch(FitIntervals.Row::isCut)
                ? " What lies beyond 5 is drawn at the edge."
                : "")
            + (left > 0 ? " The other " + left + ", with less news, are in the table." : ""),
        title(),
        rows);
  }

  private String title() {
    return FitPage.title(result);
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    scenarios.forEach((name, text) -> texts.put(name, () -> text));
    texts.put(JSON, () -> FitJson.of(result, version));
    texts.put(CSV, () -> FitCsv.of(result));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return FitPage.of(result, version, display(), drawn);
  }

  @Override
  public List<String> everyName() {
    List<String> names = new ArrayList<>(List.of(PAGE, JSON, CSV));
    // A fitted scenario that this fit does not write is not swept away: it may be in use by now.
    names.addAll(scenarios.keySet());
    names.addAll(pictures(DRAWN));
    return names;
  }

  /** Returns every name that files of a fit of so many cases can have, scenarios aside. */
  static List<String> names(int cases) {
    List<String> names = new ArrayList<>(List.of(PAGE, JSON, CSV));
    names.addAll(pictures(Math.min(DRAWN, cases)));
    return names;
  }

  private static List<String> pictures(int cases) {
    List<String> names = new ArrayList<>(List.of(KEYS, NEXT));
    IntStream.range(0, cases)
        .forEach(i -> names.addAll(List.of(FitOverTime.fileName(i), FitResiduals.fileName(i))));
    return names.stream().map(ResultFiles::picture).toList();
  }
}
