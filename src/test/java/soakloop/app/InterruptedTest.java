package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ctrl-C and a polite end, in the middle of a long run: the earlier results stay as they were. */
@Tag("analytic")
class InterruptedTest {
  private static final Path KILL = Path.of("/bin/kill");

  @TempDir private Path folder;

  private Process start(Path scenario, Path out, String command) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            command,
            scenario.toString(),
            "-o",
            out.toString())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said.txt").toFile())
        .start();
  }

  /** A build that runs in the background passes on that it ignores Ctrl-C. */
  private static boolean ignores(Process child, int signal) throws IOException {
    Path status = Path.of("/proc", String.valueOf(child.pid()), "status");
    if (!Files.exists(status)) {
      return false;
    }
    for (String line : Files.readAllLines(status)) {
      if (line.startsWith("SigIgn:")) {
        long ignored = Long.parseUnsignedLong(line.substring(7).strip(), 16);
        return (ignored >> (signal - 1) & 1) == 1;
      }
    }
    return false;
  }

  private static Map<String, byte[]> everything(Path folder) throws IOException {
    Map<String, byte[]> found = new TreeMap<>();
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        found.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return found;
  }

  @ParameterizedTest
  @CsvSource({"run, INT, 2", "run, TERM, 15", "rank, INT, 2", "rank, TERM, 15"})
  void leavesTheEarlierResults(String command, String signal, int number) throws Exception {
    assumeTrue(Files.isExecutable(KILL), "needs a kill");
    String text = Files.readString(Path.of("scenarios/two-runs.yaml"));
    Path scenario = Files.writeString(folder.resolve("mine.yaml"), text);
    Path out = folder.resolve("out");
    Process first = start(Path.of("scenarios/two-runs.yaml"), out, "run");
    assertTrue(first.waitFor(60, TimeUnit.SECONDS));
    Map<String, byte[]> before = everything(out);
    // Fine cells take minutes.
    Files.writeString(
        scenario, text.replaceFirst("(?m)^core:", "core:\n  cells: {along: 64, depth: 64}"));
    Process child = start(scenario, out, command);
    try {
      assertEquals(
          false, child.waitFor(2, TimeUnit.SECONDS), Files.readString(folder.resolve("said.txt")));
      assumeFalse(ignores(child, number), "the build itself ignores this signal");
      new ProcessBuilder(List.of(KILL.toString(), "-" + signal, String.valueOf(child.pid())))
          .start()
          .waitFor();
      assertTrue(child.waitFor(30, TimeUnit.SECONDS), "goes on");
      assertNotEquals(0, child.exitValue());
    } finally {
      child.destroyForcibly();
    }
    Map<String, byte[]> after = everything(out);
    assertEquals(before.keySet(), after.keySet());
    before.forEach((name, content) -> assertArrayEquals(content, after.get(name), name));
  }
}
