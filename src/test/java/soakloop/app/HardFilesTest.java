package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files made to hurt a reader, given to the program itself in little memory: it ends soon, with
 * code 2 and one line that says what is wrong, and leaves nothing.
 */
@Tag("analytic")
class HardFilesTest {
  private static final int LARGE = 100_000_000;

  @TempDir private Path folder;

  private String run(Path scenario) throws Exception {
    Path out = folder.resolve("out");
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx64m",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "run",
            scenario.toString(),
            "-o",
            out.toString());
    Path said = folder.resolve("said.txt");
    Process child =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = child.waitFor(60, TimeUnit.SECONDS);
    child.destroyForcibly();
    String text = Files.readString(said);
    assertTrue(ended, text);
    assertEquals(2, child.exitValue(), text);
    assertFalse(Files.exists(out));
    List<String> lines = new ArrayList<>(text.lines().toList());
    assertEquals("1 problem; nothing was run", lines.remove(lines.size() - 1), text);
    assertEquals(1, lines.size(), text);
    return lines.get(0).replace(folder + java.io.File.separator, "");
  }

  /** Writes a text over and over to a size. */
  private Path large(String name, String start, String again) throws IOException {
    Path file = folder.resolve(name);
    byte[] part = again.repeat(10_000).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(start.getBytes(StandardCharsets.UTF_8));
      for (int size = 0; size < LARGE; size += part.length) {
        out.write(part);
      }
    }
    return file;
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{a: ", "- ", "? ", "a: 1\n", "\"", "&a [*a, ", "\0", "!!map {"})
  void hundredMegabytesAreTooLarge(String again) throws Exception {
    assertEquals(
        "large.yaml: is too large for a scenario", run(large("large.yaml", "title: x\n", again)));
  }

  /** As much nesting as the size allows; the 26th level is one too many. */
  @ParameterizedTest
  @CsvSource({"[, 8:26", "{a:, 8:74", "'[{a: ', 8:62"})
  void nestingThatIsShortEnoughIsTooDeep(String again, String place) throws Exception {
    String text = "\n".repeat(7) + again.repeat(999_000 / again.length());
    Path file = Files.writeString(folder.resolve("deep.yaml"), text);
    assertEquals("deep.yaml:" + place + ": is nested too deeply", run(file));
  }

  /** Nine lists of nine aliases each would be 400 million words. */
  @Test
  void aliasesThatMultiplyAreRefusedAtTheFirst() throws Exception {
    StringBuilder text = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (char c = 'b'; c < 'j'; c++) {
      String one = "*" + (char) (c - 1);
      text.append(c).append(": &").append(c).append(" [");
      text.append(String.join(", ", java.util.Collections.nCopies(9, one))).append("]\n");
    }
    Path file = Files.writeString(folder.resolve("laughs.yaml"), text);
    assertEquals(
        "laughs.yaml:1:4: uses an anchor (&name); write the value where it is needed", run(file));
  }

  @ParameterizedTest
  @CsvSource({
    "!!java.net.URL [http://localhost], !!java.net.URL",
    "!!javax.script.ScriptEngineManager [], !!javax.script.ScriptEngineManager",
    "!!binary aGVsbG8=, !!binary",
    "!!float 5, !!float",
    "!mine 5, !mine",
    "!<tag:example.org:x> 5, tag:example.org:x",
  })
  void typeTagsAreRefused(String value, String shown) throws Exception {
    Path file = Files.writeString(folder.resolve("tag.yaml"), "title: " + value + "\n");
    assertEquals("tag.yaml:1:8: uses a type tag (" + shown + "); write the value alone", run(file));
  }

  @Test
  void nulBytesAreNoText() throws Exception {
    Path file = Files.writeString(folder.resolve("nul.yaml"), "title: a\0b\n");
    assertEquals(
        "nul.yaml:1:9: has a sign (U+0000) that does not belong in a text file", run(file));
    Path all = Files.write(folder.resolve("nuls.yaml"), new byte[1000]);
    assertEquals(
        "nuls.yaml:1:1: has a sign (U+0000) that does not belong in a text file", run(all));
  }

  private Path withLog(Path log) throws IOException {
    String text = Files.readString(Path.of("scenarios/cool-morning.yaml"));
    return Files.writeString(
        folder.resolve("logged.yaml"), text.replace("logs/cool-morning.csv", log.toString()));
  }

  private String logProblem(Path log) throws Exception {
    String said = run(withLog(log));
    assertTrue(said.matches("logged\\.yaml:\\d+:\\d+: log\\.file: .*"), said);
    return said.replaceFirst("logged\\.yaml:\\d+:\\d+: log\\.file: ", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'0,900\n' | has 1 row of values; at least 2 are needed",
        "'0,900,' | has 0 rows of values; at least 2 are needed",
        "'\"900\n,' | has quotes throughout that open a cell and never close it, the first in row 2;",
      })
  void hundredMegabytesOfLogTakeLittleRoom(String again, String message) throws Exception {
    String said = logProblem(large("large.csv", "Time [s],RPM\n", again));
    assertTrue(said.startsWith("large.csv: " + message), said);
  }

  @Test
  void logsThatMayNotBeReadOrHaveNoEndSaySo() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.csv"), "Time [s],RPM\n0,900\n1,900\n");
    assertEquals("lost.csv: there is no such file", logProblem(folder.resolve("lost.csv")));
    Path endless = Path.of("/dev/zero");
    if (Files.exists(endless)) {
      assertEquals("/dev/zero: cannot be read", logProblem(endless));
    }
    assumeTrue(secret.toFile().setReadable(false, false) && !Files.isReadable(secret));
    assertEquals("secret.csv: cannot be read", logProblem(secret));
  }
}
