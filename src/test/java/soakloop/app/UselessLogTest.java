package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Logs that say nothing of the car: `fit` says what is missing and gives no number. */
class UselessLogTest {
  private static final int CHARGE = 4;

  @TempDir private Path folder;

  private record Result(int code, String out, String err) {}

  /** Fits the shipped morning, cut to two pulls, with its log changed. */
  private Result fit(UnaryOperator<List<String>> change, UnaryOperator<String> session)
      throws IOException {
    List<String> rows =
        Files.readAllLines(Path.of("scenarios/logs/cool-morning.csv")).stream()
            .filter(row -> !row.startsWith("#"))
            .limit(3401)
            .toList();
    Files.write(folder.resolve("morning.csv"), change.apply(rows));
    String text =
        Files.readString(Path.of("scenarios/cool-morning.yaml"))
            .replace("logs/cool-morning.csv", "morning.csv")
            .replace("pulls: 5", "pulls: 2");
    Path scenario = folder.resolve("morning.yaml");
    Files.writeString(scenario, session.apply(text));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    int code =
        line.execute(
            "fit", scenario.toString(), "--key", "core.conductance.value", "--key", "pump");
    return new Result(code, out.toString(), err.toString());
  }

  private static List<String> withCharge(List<String> rows, UnaryOperator<String> change) {
    return rows.stream()
        .map(
            row -> {
              String[] cells = row.split(",");
              cells[CHARGE] = change.apply(cells[CHARGE]);
              return String.join(",", cells);
            })
        .toList();
  }

  private static void assertRefused(Result result, String says) {
    assertEquals(2, result.code(), result.out() + result.err());
    assertEquals("", result.out());
    assertTrue(result.err().contains(says), result.err());
  }

  @Test
  void chargeTemperatureThatStandsStill() throws IOException {
    assertRefused(
        fit(rows -> withCharge(rows, c -> c.contains("[") ? c : "90"), s -> s), "that moves");
  }

  @Test
  void tenRows() throws IOException {
    assertRefused(fit(rows -> rows.subList(0, 11), s -> s), "pieces of news");
  }

  @Test
  void sessionWithoutPull() throws IOException {
    assertRefused(
        fit(
            rows -> rows,
            text ->
                text.substring(0, text.indexOf("  - pulls:"))
                    + "  - wait: {for: 300 s}\nlog: {file: morning.csv}\n"),
        "no pull");
  }

  @Test
  void logWithoutPull() throws IOException {
    assertRefused(
        fit(rows -> rows.stream().map(UselessLogTest::idling).toList(), s -> s), "no pull;");
  }

  /** A row with the engine idling; the charge temperature goes on as it did. */
  private static String idling(String row) {
    String[] cells = row.split(",");
    if (!row.contains("[")) {
      cells[1] = "850";
      cells[2] = "-9.1";
    }
    return String.join(",", cells);
  }

  @Test
  void unitThatIsNotWhatItsNameSays() throws IOException {
    assertRefused(fit(rows -> withCharge(rows, c -> c.replace("degF", "degC")), s -> s), "unit");
  }
}
