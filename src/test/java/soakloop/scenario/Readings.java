package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What may come out of a reading of a scenario, whatever it was given. */
final class Readings {
  /** A folder for what is read; the log of the good scenario lies in it. */
  static final Path SCRATCH = scratch();

  /** Longest time for one reading, s: a fuzzed one is ten times as slow, and the first slower. */
  private static final double LONGEST = 20;

  /** Reads a scenario in some way. */
  interface Reading {
    Scenario read() throws ScenarioException;
  }

  private Readings() {}

  /**
   * Checks that a reading gives a scenario or says what is wrong, in whole lines, and soon.
   *
   * @return whether a scenario came out
   */
  static boolean check(Reading reading) {
    long start = System.nanoTime();
    boolean isRead = true;
    try {
      reading.read();
    } catch (ScenarioException e) {
      isRead = false;
      assertFalse(e.problems().isEmpty());
      for (Problem problem : e.problems()) {
        assertFalse(problem.message().isBlank(), problem::toString);
        assertFalse(problem.message().startsWith("cannot be:"), problem::toString);
        assertEquals(1, problem.toString().lines().count(), problem::toString);
      }
    }
    double seconds = (System.nanoTime() - start) * 1e-9;
    assertTrue(seconds < LONGEST, () -> "took " + seconds + " s");
    return isRead;
  }

  /** Reads a text that is known to be right. */
  static Scenario good(String text) {
    try {
      return Scenarios.read(text);
    } catch (ScenarioException e) {
      throw new AssertionError(e);
    }
  }

  private static Path scratch() {
    try {
      Path folder = Files.createTempDirectory("soakloop-readings");
      Path log = Files.copy(BadCase.FOLDER.resolve("good.csv"), folder.resolve("good.csv"));
      log.toFile().deleteOnExit();
      folder.resolve("fuzzed.yaml").toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
