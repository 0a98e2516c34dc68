package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The README shows what the program really prints. */
@Tag("regression")
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final String BEFORE = "```text\n";
  private static final String AFTER = "\n```";

  @TempDir private Path folder;

  @Test
  void showsTheRealRun() throws Exception {
    String page = Files.readString(README);
    int start = page.indexOf(BEFORE) + BEFORE.length();
    int end = page.indexOf(AFTER, start);
    String real = run();
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(README, page.substring(0, start) + real + page.substring(end));
    } else {
      assertEquals(
          real,
          page.substring(start, end),
          "README.md is stale: mvn test -Dtest=ReadmeTest -Dsoakloop.write=true");
    }
  }

  private String run() {
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    assertEquals(0, line.execute("run", "scenarios/cool-morning.yaml", "-o", folder.toString()));
    return out.toString()
        .replaceAll("Report: .*", "Report: out/cool-morning/report.html")
        .replace(System.lineSeparator(), "\n")
        .strip();
  }
}
