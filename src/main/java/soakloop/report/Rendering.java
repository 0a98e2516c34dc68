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

/** Makes the content of every result file, all in memory, on a few threads. */
final class Rendering {
  private static final int THREADS = Math.min(4, Runtime.getRuntime().availableProcessors());

  private Rendering() {}

  /**
   * Returns the files' contents by name, in the order of their names.
   *
   * @throws IOException if a chart or the page cannot be made
   */
  static Map<String, byte[]> of(ResultFiles result) throws IOException {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            THREADS,
            task -> {
              Thread thread = new Thread(task, "report");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Chart> charts = result.charts();
      List<Future<DrawnChart>> drawn = new ArrayList<>();
      Map<String, Future<byte[]>> files = new LinkedHashMap<>();
      for (Chart chart : charts) {
        drawn.add(threads.submit(() -> drawn(chart)));
      }
      Map<String, Future<byte[]>> pictures = new LinkedHashMap<>();
      for (Chart chart : charts) {
        pictures.put(ResultFiles.picture(chart.name()), threads.submit(() -> png(chart)));
      }
      result.texts().forEach((name, writer) -> files.put(name, text(threads, writer)));
      files.putAll(pictures);
      List<DrawnChart> inPage = new ArrayList<>();
      for (Future<DrawnChart> one : drawn) {
        inPage.add(result(one));
      }
      Map<String, byte[]> contents = new LinkedHashMap<>();
      contents.put(result.pageName(), result.page(inPage).getBytes(StandardCharsets.UTF_8));
      Map<String, String> more = result.morePages(inPage);
      for (String name : result.morePageNames()) {
        contents.put(name, more.getOrDefault(name, "").getBytes(StandardCharsets.UTF_8));
      }
      for (Map.Entry<String, Future<byte[]>> file : files.entrySet()) {
        contents.put(file.getKey(), result(file.getValue()));
      }
      return contents;
    } finally {
      threads.shutdownNow();
    }
  }

  private static DrawnChart drawn(Chart chart) throws IOException {
    Drawing.requireFonts();
    return DrawnChart.of(chart);
  }

  private static byte[] png(Chart chart) throws IOException {
    Drawing.requireFonts();
    return Drawing.png(chart);
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
