package soakloop.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import soakloop.study.Outcome;

/** Makes the content of every result file, all in memory, on a few threads. */
final class Rendering {
  static final String PAGE = "report.html";
  static final String SUMMARY = "summary.json";
  static final String TRACE = "trace.csv";

  private static final int THREADS = Math.min(4, Runtime.getRuntime().availableProcessors());

  private Rendering() {}

  /** Returns the names of the files that an outcome gives, in the order they are listed. */
  static List<String> names(Outcome outcome) {
    List<String> names = new ArrayList<>(List.of(PAGE, SUMMARY, TRACE));
    for (Chart chart : charts(outcome)) {
      names.add(picture(chart));
    }
    return names;
  }

  /** Returns every name that any outcome's file can have. */
  static List<String> everyName() {
    List<String> names = new ArrayList<>(List.of(PAGE, SUMMARY, TRACE));
    Chart.NAMES.forEach(n -> names.add(n + ".png"));
    return names;
  }

  /**
   * Returns the files' contents by name, in the order of {@link #names}.
   *
   * @throws IOException if a chart or the page cannot be made
   */
  static Map<String, byte[]> of(Outcome outcome, String version) throws IOException {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            THREADS,
            task -> {
              Thread thread = new Thread(task, "report");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Chart> charts = charts(outcome);
      List<Future<DrawnChart>> drawn = new ArrayList<>();
      Map<String, Future<byte[]>> files = new LinkedHashMap<>();
      for (Chart chart : charts) {
        drawn.add(threads.submit(() -> drawn(chart)));
      }
      Map<String, Future<byte[]>> pictures = new LinkedHashMap<>();
      for (Chart chart : charts) {
        pictures.put(picture(chart), threads.submit(() -> png(chart)));
      }
      files.put(SUMMARY, text(threads, () -> SummaryJson.of(outcome, version)));
      files.put(TRACE, text(threads, () -> TraceCsv.of(outcome.trace())));
      files.putAll(pictures);
      List<DrawnChart> inPage = new ArrayList<>();
      for (Future<DrawnChart> one : drawn) {
        inPage.add(result(one));
      }
      Map<String, byte[]> contents = new LinkedHashMap<>();
      contents.put(PAGE, ReportPage.of(outcome, version, inPage).getBytes(StandardCharsets.UTF_8));
      for (Map.Entry<String, Future<byte[]>> file : files.entrySet()) {
        contents.put(file.getKey(), result(file.getValue()));
      }
      return contents;
    } finally {
      threads.shutdownNow();
    }
  }

  private static List<Chart> charts(Outcome outcome) {
    return Chart.all(outcome, new Display(outcome.scenario().units(), false));
  }

  private static DrawnChart drawn(Chart chart) throws IOException {
    Drawing.requireFonts();
    return DrawnChart.of(chart);
  }

  private static byte[] png(Chart chart) throws IOException {
    Drawing.requireFonts();
    return Drawing.png(chart);
  }

  private static String picture(Chart chart) {
    return chart.name() + ".png";
  }

  private static Future<byte[]> text(ExecutorService threads, Callable<String> writer) {
    return threads.submit(() -> writer.call().getBytes(StandardCharsets.UTF_8));
  }

  private static <T> T result(Future<T> future) throws IOException {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while making the report", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      throw new IllegalStateException("the report could not be made", e.getCause());
    }
  }
}
