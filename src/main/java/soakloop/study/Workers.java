package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does many tasks on a few threads. */
public final class Workers {
  private Workers() {}

  /** Takes a result. */
  public interface Taker<T> {
    /**
     * Takes one, on the calling thread.
     *
     * @param result of a task
     */
    void take(T result);
  }

  /**
   * Does all tasks and takes their results, on the calling thread, in the tasks' order.
   *
   * @param <T> kind of result
   * @param threads how many, at least one
   * @param tasks none of which throws unless it has a fault
   * @param taker of the results
   * @throws InterruptedException if it is broken off
   */
  public static <T> void run(int threads, List<Callable<T>> tasks, Taker<T> taker)
      throws InterruptedException {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            threads,
            task -> {
              Thread thread = new Thread(task, "study");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<T>> results = new ArrayList<>();
      tasks.forEach(task -> results.add(pool.submit(task)));
      for (Future<T> result : results) {
        taker.take(result.get());
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException("a run has a fault", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
