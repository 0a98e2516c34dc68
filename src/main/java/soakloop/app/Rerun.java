package soakloop.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import soakloop.report.ResultException;
import soakloop.report.TextSummary;
import soakloop.scenario.LogFile;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.Outcome;

/** Runs a scenario again whenever it or its log changes on disk. */
final class Rerun implements AutoCloseable {
  private static final Duration QUIET = Duration.ofMillis(300);
  private static final Duration LOOK = Duration.ofSeconds(1);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Path scenario;
  private final Work work;
  private final PrintWriter out;
  private final PrintWriter err;
  private final FileWatch watch;
  private Optional<Path> log = Optional.empty();

  /** Reads, runs and writes. */
  interface Work {
    Outcome run() throws ScenarioException, SimulationException, ResultException;
  }

  /**
   * Begins to watch, so that no change after this is missed.
   *
   * @param scenario its file
   * @param work what is to be done at a change
   * @param out where results are told
   * @param err where errors are told
   * @throws IOException if the platform cannot watch files
   */
  Rerun(Path scenario, Work work, PrintWriter out, PrintWriter err) throws IOException {
    this.scenario = scenario;
    this.work = work;
    this.out = out;
    this.err = err;
    this.watch = new FileWatch(FileSystems.getDefault().newWatchService(), QUIET, LOOK);
    takeIn();
  }

  /** Goes on until the thread is interrupted. */
  void untilInterrupted() {
    String files = watch.files().stream().map(Path::toString).collect(Collectors.joining(" and "));
    out.println("Watching " + files + "; Ctrl-C ends it.");
    out.flush();
    try {
      while (true) {
        List<Path> changed = watch.await();
        takeIn();
        again(LocalTime.now(ZoneId.systemDefault()).format(TIME) + " " + words(changed));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Takes in the files as they are now. A scenario that is broken just now may not say which log it
   * names: then the last one stays.
   */
  private void takeIn() {
    watch.clear();
    watch.add(scenario);
    log = LogFile.of(scenario).or(() -> log);
    log.ifPresent(watch::add);
  }

  private void again(String what) {
    try {
      Outcome outcome = work.run();
      out.println(what + ": " + TextSummary.firstSentence(outcome));
      out.flush();
    } catch (ScenarioException e) {
      e.problems().forEach(err::println);
      err.println(what + ": " + count(e.problems().size()) + "; the results stay as they were");
    } catch (SimulationException e) {
      err.println(scenario + ": " + e.getMessage());
      err.println(what + ": no run; the results stay as they were");
    } catch (ResultException e) {
      err.println(e.getMessage());
      err.println(what + ": nothing written; the results stay as they were");
    }
    err.flush();
  }

  private static String count(int problems) {
    return problems == 1 ? "1 problem" : problems + " problems";
  }

  private static String words(List<Path> changed) {
    return changed.stream()
        .map(file -> file + (Files.exists(file) ? " changed" : " is gone"))
        .collect(Collectors.joining(", "));
  }

  @Override
  public void close() throws IOException {
    watch.close();
  }
}
