package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A disk that takes no more, and files that cannot be read. */
@Tag("analytic")
class DiskTroubleTest {
  private static final String SCENARIO = "scenarios/two-runs.yaml";

  @TempDir private Path folder;

  private static Map<String, byte[]> everything(Path folder) throws IOException {
    Map<String, byte[]> found = new TreeMap<>();
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        found.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return found;
  }

  private static String run(int expected, String... args) {
    StringWriter said = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(new StringWriter()));
    line.setErr(new PrintWriter(said, true));
    assertEquals(expected, line.execute(args), said.toString());
    return said.toString();
  }

  /** The shell's limit on a file's size (blocks of 512 or 1024 bytes) stands in for a full disk. */
  @Test
  void writingThatFailsMidwayEndsWithCodeThreeAndLosesNothing() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a shell with ulimit");
    run(0, "run", SCENARIO, "-o", folder.toString());
    Map<String, byte[]> before = everything(folder);
    Process child =
        new ProcessBuilder(
                "/bin/sh",
                "-c",
                "ulimit -f 40; exec \"$@\"",
                "sh",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                "soakloop.app.Main",
                "run",
                SCENARIO,
                "-o",
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(child.waitFor(60, TimeUnit.SECONDS));
    assertEquals(3, child.exitValue(), said);
    assertTrue(said.contains("cannot write results in " + folder + ": "), said);
    assertFalse(said.contains("\tat "), said);
    Map<String, byte[]> after = everything(folder);
    assertEquals(before.keySet(), after.keySet());
    before.forEach((name, content) -> assertArrayEquals(content, after.get(name), name));
    run(0, "run", SCENARIO, "-o", folder.toString());
  }

  @Test
  void scenarioWithoutAnEndIsTooLarge() {
    Path endless = Path.of("/dev/zero");
    assumeTrue(Files.exists(endless));
    String said = run(2, "run", endless.toString(), "-o", folder.resolve("out").toString());
    assertEquals(List.of("/dev/zero: is too large for a scenario"), said.lines().limit(1).toList());
  }

  @Test
  void scenarioThatMayNotBeReadSaysSo() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.yaml"), "title: x\n");
    assumeTrue(secret.toFile().setReadable(false, false) && !Files.isReadable(secret));
    String said = run(2, "run", secret.toString());
    assertTrue(said.contains("secret.yaml: cannot be read: no right to read it"), said);
  }
}
