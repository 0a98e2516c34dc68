package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.versus.VersusResult;

/**
 * The files of a comparison.
 *
 * @param result what it gave
 * @param version of the program
 */
record VersusFiles(VersusResult result, String version) implements ResultFiles {
  private static final String PAGE = "versus.html";
  private static final String SHEET = "versus-for-the-customer.html";
  private static final String JSON = "versus.json";
  private static final String CSV = "versus.csv";

  /** Pairings whose charts are drawn; tables and files have all. */
  private static final int DRAWN = 3;

  @Override
  public String pageName() {
    return PAGE;
  }

  private Display display() {
    return new Display(result.plan().contenders().get(0).scenario().units(), false);
  }

  @Override
  public List<Chart> charts() {
    List<Chart> charts = new ArrayList<>();
    charts.add(new VersusOverSpeed(result, display()));
    for (int i = 0; i < Math.min(DRAWN, result.pairings().size()); i++) {
      if (!result.pairings().get(i).logged().isEmpty()) {
        charts.add(new VersusWaterfall(result, i, display()));
      }
      charts.add(new VersusElsewhere(result, i, display()));
      VersusMap map = new VersusMap(result, i, display());
      if (map.hasSomething()) {
        charts.add(map);
      }
    }
    return charts;
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, () -> VersusJson.of(result, version));
    texts.put(CSV, () -> VersusCsv.of(result));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    return new VersusPage(result, display()).whole(version, drawn);
  }

  @Override
  public Map<String, String> morePages(List<DrawnChart> drawn) throws IOException {
    return Map.of(SHEET, new VersusPage(result, display()).sheet(version, drawn));
  }

  @Override
  public List<String> morePageNames() {
    return List.of(SHEET);
  }

  @Override
  public List<String> everyName() {
    return NAMES;
  }

  /** Every name that a file of a comparison can have. */
  static final List<String> NAMES = everything();

  private static List<String> everything() {
    List<String> names = new ArrayList<>(List.of(PAGE, SHEET, JSON, CSV));
    names.add(ResultFiles.picture("versus-over-speed"));
    for (String kind : List.of("where-from", "elsewhere", "map")) {
      for (int i = 0; i < DRAWN; i++) {
        names.add(ResultFiles.picture("versus-" + kind + (i == 0 ? "" : "-" + (i + 1))));
      }
    }
    return List.copyOf(names);
  }
}
