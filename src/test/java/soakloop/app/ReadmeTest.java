package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
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
    hold(SEARCHED, "fit.html", "out/cool-morning-fit", "fit", "scenarios/cool-morning.yaml");
  }

  /** The texts whose numbers a search ends on. */
  private static final int SEARCHED = 3;

  private static final int COMPARED = 4;

  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  @Test
  void showsTheRealComparison() throws Exception {
    hold(
        COMPARED,
        "versus.html",
        "out/cool-morning-against-denser-core-versus",
        "versus",
        "scenarios/cool-morning.yaml",
        "scenarios/denser-core.yaml");
  }

  private static final int WAITED = 5;

  @Test
  void showsTheRealWait() throws Exception {
    hold(
        WAITED,
        "wait.html",
        "out/cool-morning-wait",
        "wait",
        "scenarios/cool-morning.yaml",
        "--limit",
        "135 degF");
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
          text >= SEARCHED ? alike(readme.substring(start, end), real) : real,
          readme.substring(start, end),
          "README.md is stale: mvn test -Dtest=ReadmeTest -Dsoakloop.write=true");
    }
  }

  /**
   * Returns what is printed now, with its numbers as they stand in the README where they are the
   * same to 3 %. A search does not end on the same last digit under every Java: the exponential of
   * one differs from another's in its last bit.
   */
  private static String alike(String stands, String now) {
    List<String> numbers = NUMBER.matcher(stands).results().map(MatchResult::group).toList();
    int[] next = {0};
    return NUMBER
        .matcher(now)
        .replaceAll(
            found -> {
              int i = next[0]++;
              return i < numbers.size() && near(numbers.get(i), found.group())
                  ? numbers.get(i)
                  : found.group();
            });
  }

  private static boolean near(String some, String other) {
    double a = Double.parseDouble(some);
    double b = Double.parseDouble(other);
    double digit = Math.pow(10, -Math.max(0, some.length() - some.indexOf('.') - 1));
    return Math.abs(a - b) <= Math.max(0.03 * Math.abs(a), some.contains(".") ? digit : 1);
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
