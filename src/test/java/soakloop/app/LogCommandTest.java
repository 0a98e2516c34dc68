package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;

/** {@code log} as a person meets it. */
class LogCommandTest {
  private static final Path SHIPPED = Path.of("scenarios/logs");

  @TempDir private Path folder;
  private Path logs = Path.of("");
  private Path results = Path.of("");

  private Result log(String... args) {
    List<String> all = new ArrayList<>(List.of("log", "-o", results.toString()));
    all.addAll(List.of(args));
    return Result.call(all.toArray(String[]::new));
  }

  @BeforeEach
  void copyLogs() throws IOException {
    logs = Files.createDirectory(folder.resolve("dyno logs"));
    results = folder.resolve("results");
    Files.copy(SHIPPED.resolve("cool-morning.csv"), logs.resolve("before <1>.csv"));
    Files.copy(SHIPPED.resolve("denser-core.csv"), logs.resolve("after.csv"));
  }

  private String file(String name) {
    return logs.resolve(name).toString();
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesPageAndCleanLogAndLeavesTheLogAlone() throws IOException {
    Path log = logs.resolve("after.csv");
    byte[] before = Files.readAllBytes(log);
    FileTime touched = Files.getLastModifiedTime(log);
    List<String> beside = names(logs);

    Result result = log(log.toString());

    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Pull 5 reads 118 degF at 6500 rpm"), result.out());
    assertTrue(names(results).containsAll(List.of("log.html", "log.json", "clean.csv")));
    assertTrue(Files.readString(results.resolve("log.html")).contains("<svg"));
    assertEquals(beside, names(logs));
    assertEquals(touched, Files.getLastModifiedTime(log));
    assertArrayEquals(before, Files.readAllBytes(log));
  }

  @Test
  void theScenarioItWritesRunsAndIsNotSweptAway() throws IOException {
    Result look = log(file("before <1>.csv"), "--scenario");
    assertEquals(0, look.code(), look.err());
    Path scenario = results.resolve("before-1.yaml");
    assertTrue(look.out().contains("Scenario:  " + scenario), look.out());
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    assertEquals(0, line.execute("run", scenario.toString(), "-o", folder.resolve("r").toString()));
    assertTrue(out.toString().contains("Logged end"), out.toString());
    assertEquals(0, log(file("before <1>.csv")).code());
    assertTrue(Files.exists(scenario));
    Files.writeString(scenario, Files.readString(scenario) + "# mine\n");
    assertEquals(2, log(file("before <1>.csv"), "--scenario").code());
    assertTrue(Files.readString(scenario).endsWith("# mine\n"));
  }

  @Test
  void layingTwoOverEachOtherNamesBothAndEscapes() throws IOException {
    Result result = log(file("before <1>.csv"), file("after.csv"), "--units", "metric");
    assertEquals(0, result.code(), result.err());
    assertTrue(names(results).containsAll(List.of("clean-1.csv", "clean-2.csv")));
    String page = Files.readString(results.resolve("log.html"));
    assertTrue(page.contains("before &lt;1&gt;.csv"));
    assertFalse(page.contains("before <1>.csv"));
  }

  @Test
  void aSecondLookAtOneLogTakesAwayWhatTheFirstLeft() throws IOException {
    log(file("before <1>.csv"), file("after.csv"));
    assertEquals(0, log(file("after.csv")).code());
    assertFalse(names(results).contains("clean-2.csv"), names(results).toString());
    assertTrue(names(results).contains("clean.csv"));
  }

  @Test
  void joinsADynoFileByEngineSpeed() throws IOException {
    List<String> dyno = new ArrayList<>(List.of("t [s],rpm,power [hp]"));
    Files.readAllLines(logs.resolve("after.csv"), StandardCharsets.UTF_8).stream()
        .filter(l -> l.matches("[0-9].*"))
        .map(l -> l.split(","))
        .filter(c -> Double.parseDouble(c[0]) < 60)
        .forEach(
            c ->
                dyno.add(
                    (Double.parseDouble(c[0]) + 7.25)
                        + ","
                        + c[1]
                        + ","
                        + 0.05 * Double.parseDouble(c[1])));
    Files.write(logs.resolve("dyno.csv"), dyno);

    Result joined =
        log("--join", "--about=-7 s", file("after.csv"), file("dyno.csv"), "--units", "us");

    assertEquals(0, joined.code(), joined.err());
    assertTrue(joined.out().contains("its clock reads 7.25 s more"), joined.out());
    assertTrue(joined.out().contains("power in hp"), joined.out());
  }

  @Test
  void aNamedColumnSettlesWhatIsOpen() throws IOException {
    String text =
        Files.readString(logs.resolve("after.csv"))
            .replace("Charge temp [degF]", "Probe 7")
            .replace("Engine coolant [degF]", "Other");
    Files.writeString(logs.resolve("probe.csv"), text);
    Result open = log(file("probe.csv"));
    assertTrue(open.out().contains("Probe 7"), open.out());
    assertTrue(open.out().contains("no column was recognised as the charge"), open.out());
    Result named =
        log(
            file("probe.csv"),
            "--column",
            "charge-temperature=Probe 7",
            "--unit",
            "charge-temperature=degF");
    assertEquals(0, named.code(), named.err());
    assertTrue(named.out().contains("Pull 5 reads 118 degF at 6500 rpm"), named.out());
    Result beside =
        log(
            file("after.csv"),
            file("probe.csv"),
            "--column",
            "charge-temperature=Probe 7",
            "--unit",
            "charge-temperature=degF");
    assertEquals(0, beside.code(), beside.err());
    assertTrue(beside.out().contains("118 degF in after.csv and 118 degF in probe.csv"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--counted-to 6500|--counted-to 6500: needs a unit",
        "--counted-to -5rpm|must be above zero",
        "--limit 54kPa|--limit 54kPa",
        "--column charge=T|`charge` is not a signal; known: time, engine-speed",
        "--unit boost=psi|--unit boost needs --column boost=NAME beside it",
        "--column boost=Boost --unit boost=feet|found `feet`; allowed:",
        "--join|--join takes the logs of two loggers",
        "--scenario --join|--join takes the logs of two loggers",
        "--about 3s|has no use alone",
        "--rate fast|--rate fast",
      })
  void wrongOptionsSayWhatIsAllowed(String options, String message) throws IOException {
    List<String> args = new ArrayList<>(List.of(options.split(" ")));
    args.add(0, file("after.csv"));
    Result result = log(args.toArray(String[]::new));
    assertEquals(2, result.code(), result.out() + result.err());
    assertTrue(result.err().contains(message), result.err());
    assertFalse(Files.exists(results));
  }

  @Test
  void filesThatAreNoLogsSayWhatToDo() throws IOException {
    Path sheet = logs.resolve("book.xlsx");
    Files.write(sheet, new byte[] {'P', 'K', 3, 4, 0, 0, 0, 0});
    Result result = log(sheet.toString(), file("missing.csv"));
    assertEquals(2, result.code());
    assertTrue(result.err().contains("book.xlsx"), result.err());
    assertTrue(result.err().contains("missing.csv"), result.err());
    assertFalse(Files.exists(results));
  }

  @Test
  void strangeFilesInTheFolderAreKept() throws IOException {
    Files.createDirectories(results);
    Files.writeString(results.resolve("clean.csv"), "mine");
    Result result = log(file("after.csv"));
    assertEquals(2, result.code(), result.out());
    assertEquals("mine", Files.readString(results.resolve("clean.csv")));
    assertEquals(0, log(file("after.csv"), "--force").code());
  }

  @Test
  void aLogTooLargeForTheMemorySaysHowMuchItTakes() throws Exception {
    Log log = LogReader.read(logs.resolve("after.csv"), LogColumns.NONE);
    LogRoom.require(List.of(log), 8_000_000);
    LogException tooLarge =
        assertThrows(LogException.class, () -> LogRoom.require(List.of(log), 7_000_000));
    assertTrue(tooLarge.problems().get(0).contains("-Xmx2g"), tooLarge.problems().toString());
  }

  @Test
  void labelsAreAllDifferent() {
    assertEquals(
        List.of("a.csv", "b.csv"), LogLabels.of(List.of(Path.of("x/a.csv"), Path.of("y/b.csv"))));
    assertEquals(
        List.of("x/a.csv", "y/a.csv"),
        LogLabels.of(List.of(Path.of("x/a.csv"), Path.of("y/a.csv"))));
    assertEquals(
        List.of("a.csv (1)", "a.csv (2)"),
        LogLabels.of(List.of(Path.of("x/a.csv"), Path.of("x/a.csv"))));
    assertEquals("run-1", LogLabels.stem(Path.of("x/run (1).csv")));
    assertEquals("log", LogLabels.stem(Path.of("x/\u00fc.csv")));
  }
}
