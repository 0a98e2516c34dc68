package soakloop.versus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.study.Workers;

/** Whether comparisons of invented pairs of cores, made by another model, say what is true. */
@Tag("analytic")
class PairsTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "validation", "versus");

  @TempDir private Path logs;

  private static PairsTable written() throws IOException {
    try (Stream<String> lines = Files.lines(FOLDER.resolve("pairs.csv"))) {
      return new PairsTable(lines.skip(1).map(PairCase::of).toList());
    }
  }

  /**
   * One pair of equal cores and one 20 % apart: no verdict on the first, the right on the other.
   */
  @Test
  void fewPairsAreJudgedRight() throws Exception {
    PairCase equal = PairCase.of(0, logs);
    assertEquals(VersusResult.Verdict.OPEN, equal.verdict(), equal.line());
    PairCase better = PairCase.of(1, logs);
    assertEquals(VersusResult.Verdict.BETTER, better.verdict(), better.line());
    assertTrue(better.truth() < 0, better.line());
  }

  /**
   * As many pairs as {@code -Dpairs} says, 1,000 if nothing: {@code mvn test -Dtest=PairsTest
   * -Dexcluded.groups=none -Dsoakloop.write=true -Dpairs=1000}. Writes each as it comes.
   */
  @Test
  @Tag("long")
  void manyPairsAreJudgedAsStated() throws Exception {
    int count = Integer.getInteger("pairs", 1000);
    int from = Integer.getInteger("pairs.from", 0);
    boolean write = Boolean.getBoolean("soakloop.write");
    Path file = FOLDER.resolve("pairs.csv");
    if (write) {
      Files.createDirectories(FOLDER);
      if (from == 0) {
        Files.writeString(file, PairCase.header() + "\n");
      }
    }
    List<Callable<PairCase>> tasks = new ArrayList<>();
    LongStream.range(from, (long) from + count)
        .forEach(seed -> tasks.add(() -> PairCase.of(seed, logs)));
    List<PairCase> cases = new ArrayList<>();
    Workers.run(
        Integer.getInteger("pairs.threads", Runtime.getRuntime().availableProcessors()),
        tasks,
        one -> {
          cases.add(one);
          if (write) {
            append(file, one);
          }
        });
    assertEquals(List.of(), new PairsTable(cases).shortfalls());
  }

  private static void append(Path file, PairCase one) {
    try {
      Files.writeString(file, one.line() + "\n", StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  @Tag("regression")
  void pageSaysWhatWasCompared() throws IOException {
    String page = PairsPage.of(written());
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(FOLDER.resolve("README.md"), page);
    }
    assertEquals(page, Files.readString(FOLDER.resolve("README.md")));
  }

  /** A program that always says 50 % must not pass for one that knows. */
  @Test
  void knowingNothingIsNotEnough() throws IOException {
    List<PairCase> clueless =
        written().cases().stream()
            .map(
                c ->
                    new PairCase(
                        c.seed(),
                        c.style(),
                        c.ratio(),
                        c.truth(),
                        c.low(),
                        c.middle(),
                        c.high(),
                        0.5,
                        VersusResult.Verdict.OPEN))
            .toList();
    List<String> shortfalls = new PairsTable(clueless).shortfalls();
    assertTrue(shortfalls.stream().anyMatch(s -> s.startsWith("Brier")), shortfalls.toString());
    assertTrue(shortfalls.stream().anyMatch(s -> s.startsWith("20 %")), shortfalls.toString());
  }
}
