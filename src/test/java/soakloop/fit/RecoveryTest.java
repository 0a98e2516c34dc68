package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.study.Workers;

/** Whether fits of invented days, made by another model, find what is true of them. */
@Tag("analytic")
class RecoveryTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "validation", "fit");
  static final int DAYS = 200;
  private static final long FIRST = 1000;
  private static final int FEW = 3;

  @TempDir private Path logs;

  private RecoveryTable fitted(long from, int count, int threads) throws InterruptedException {
    List<Callable<RecoveryCase>> tasks = new ArrayList<>();
    LongStream.range(from, from + count)
        .forEach(seed -> tasks.add(() -> RecoveryCase.of(seed, logs)));
    List<RecoveryCase> cases = new ArrayList<>();
    Workers.run(threads, tasks, cases::add);
    return new RecoveryTable(cases);
  }

  private static RecoveryTable written() throws IOException {
    try (Stream<String> lines = Files.lines(FOLDER.resolve("recovery.csv"))) {
      return new RecoveryTable(lines.skip(1).map(RecoveryCase::of).toList());
    }
  }

  /**
   * Too few days for shares of 85 to 95 %: of 9 intervals that hold 90 % each, fewer than 6 do in
   * one sample of a hundred, if they are independent (binomial).
   */
  @Test
  void fewDaysAreFoundToo() throws Exception {
    RecoveryTable table = fitted(FIRST, FEW, 1);
    long held =
        table.cases().stream()
            .flatMap(c -> c.answers().values().stream())
            .filter(RecoveryCase.Answer::covers)
            .count();
    assertTrue(held >= 6, held + " of 9 intervals hold the truth");
    for (Quantity quantity : RecoveryCase.ASKED) {
      assertTrue(table.width(quantity) <= 0.5, quantity + ": " + table.width(quantity));
    }
    assertEquals(1, table.near(), "held-out peaks within 2 K");
  }

  @Test
  @Tag("long")
  void manyDaysAreCoveredAsStated() throws Exception {
    RecoveryTable table = fitted(FIRST, DAYS, Runtime.getRuntime().availableProcessors());
    if (Boolean.getBoolean("soakloop.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(
          FOLDER.resolve("recovery.csv"),
          RecoveryCase.header()
              + "\n"
              + String.join("\n", table.cases().stream().map(RecoveryCase::line).toList())
              + "\n");
      Files.writeString(FOLDER.resolve("README.md"), RecoveryPage.of(written()));
    }
    assertEquals(List.of(), table.shortfalls());
  }

  @Test
  @Tag("regression")
  void pageSaysWhatWasFitted() throws IOException {
    String page = RecoveryPage.of(written());
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(FOLDER.resolve("README.md"), page);
    }
    assertEquals(page, Files.readString(FOLDER.resolve("README.md")));
  }

  /** A program that gives back what was believed must not pass for one that fits. */
  @Test
  void whatWasBelievedIsNotEnough() throws IOException {
    List<String> shortfalls = written().asBelieved().shortfalls();
    assertFalse(shortfalls.isEmpty());
    for (Quantity quantity : RecoveryCase.ASKED) {
      assertTrue(
          shortfalls.stream().anyMatch(s -> s.startsWith(quantity.key() + ": intervals are 1.00")),
          shortfalls.toString());
    }
  }
}
