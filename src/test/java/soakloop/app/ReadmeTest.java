package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    hold(0, "report.html", "out/cool-morning", "run", "scenarios/cool-morning.yaml");
  }

  @Test
  void showsTheRealLook() throws Exception {
    hold(
        1,
        "",
        "out/cool-morning-log",
        "log",
        "scenarios/logs/cool-morning.csv",
        "--limit",
        "54 degC");
  }

  @Test
  void showsTheRealSweep() throws Exception {
    hold(
        2,
        "vary.html",
        "out/cool-morning-vary",
        "vary",
        "scenarios/cool-morning.yaml",
        "reservoir.volume=2 L..20 L/13",
        "airflow.shop-fan=0.5 m/s..6 m/s/12",
        "--result",
        "peak-charge");
  }

  @Test
  void showsTheRealFit() throws Exception {
    hold(3, "fit.html", "out/cool-morning-fit", "fit", "scenarios/cool-morning.yaml");
  }

  /** Holds one of the README's texts to what is printed. */
  private void hold(int text, String page, String out, String... command) throws Exception {
    String readme = Files.readString(README);
    int start = readme.indexOf(BEFORE) + BEFORE.length();
    for (int i = 0; i < text; i++) {
      start = readme.indexOf(BEFORE, start) + BEFORE.length();
    }
    int end = readme.indexOf(AFTER, start);
    String real =
        printed(command)
            .replaceAll("Report: .*", "Report: " + out + "/" + page)
            .replace(folder.toString(), out);
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(README, readme.substring(0, start) + real + readme.substring(end));
    } else {
      assertEquals(
          real,
          readme.substring(start, end),
          "README.md is stale: mvn test -Dtest=ReadmeTest -Dsoakloop.write=true");
    }
  }

  private String printed(String... command) {
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    List<String> args = new ArrayList<>(List.of(command));
    args.addAll(List.of("-o", folder.toString()));
    assertEquals(0, line.execute(args.toArray(String[]::new)));
    return out.toString().replace(System.lineSeparator(), "\n").strip();
  }
}
