package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command line as a person meets it. */
class MainTest {
  private static final List<String> FILES =
      List.of(
          "report.html",
          "summary.json",
          "trace.csv",
          "charge-over-time.png",
          "coolant-over-time.png");

  @TempDir private Path folder;

  /** What came of one call. */
  static List<Path> shipped() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      List<Path> found = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      assertTrue(found.size() >= 4, "at least four scenarios are shipped");
      return found;
    }
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void everyShippedScenarioRunsAndChecks(Path scenario) {
    Path target = folder.resolve("new/folder");
    Result run = Result.call("run", scenario.toString(), "-o", target.toString());
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertAll(FILES.stream().map(f -> () -> assertTrue(Files.isRegularFile(target.resolve(f)), f)));
    assertTrue(
        Files.exists(target.resolve("charge-over-speed.png"))
            || Files.exists(target.resolve("charge-over-pass.png")));
    assertAll(
        run.out()
            .lines()
            .filter(l -> !l.startsWith("Report: "))
            .map(l -> () -> assertTrue(l.length() <= 80, l)));
    Result check = Result.call("check", scenario.toString());
    assertEquals(0, check.code());
    assertTrue(check.out().contains("Assumed"), check.out());
  }

  @Test
  void checkShowsAConductanceInThreeDigits() {
    String metric =
        Result.call("check", "scenarios/traffic-recovery.yaml", "--units", "metric").out();
    assertTrue(metric.contains("0.450 kW/K"), metric);
    String us = Result.call("check", "scenarios/cool-morning.yaml", "--units", "us").out();
    assertTrue(us.contains("1330 Btu/(h degF)"), us);
  }

  @Test
  void aSecondRunReplacesItsOwnResults() {
    String scenario = "scenarios/two-runs.yaml";
    assertEquals(0, Result.call("run", scenario, "-o", folder.toString()).code());
    assertEquals(0, Result.call("run", scenario, "-o", folder.toString()).code());
  }

  @Test
  void aFileOfTheUsersIsNeverOverwrittenWithoutForce() throws IOException {
    Path mine = Files.writeString(folder.resolve("report.html"), "mine");
    Result run = Result.call("run", "scenarios/two-runs.yaml", "-o", folder.toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains("report.html") && run.err().contains("--force"), run.err());
    assertEquals("mine", Files.readString(mine));
    assertFalse(Files.exists(folder.resolve("trace.csv")), "nothing half-written");
    assertEquals(
        0,
        Result.call("run", "scenarios/two-runs.yaml", "--force", "-o", folder.toString()).code());
    assertFalse(Files.readString(mine).equals("mine"));
  }

  @Test
  void aRunThatFailsLeavesEarlierResultsAsTheyWere() throws IOException {
    Path scenario = folder.resolve("mine.yaml");
    String text = Files.readString(Path.of("scenarios/two-runs.yaml"));
    Files.writeString(scenario, text);
    Path results = folder.resolve("results");
    assertEquals(0, Result.call("run", scenario.toString(), "-o", results.toString()).code());
    byte[] before = Files.readAllBytes(results.resolve("report.html"));
    Files.writeString(
        scenario, text.replace("start: {loop-coolant", "start: {charge: 20 degF, loop-coolant"));
    Result failed = Result.call("run", scenario.toString(), "-o", results.toString());
    assertEquals(2, failed.code());
    assertTrue(failed.err().contains("mine.yaml: start.charge: no plenum temp"), failed.err());
    Result check = Result.call("check", scenario.toString());
    assertEquals(2, check.code(), "check says what run would");
    assertEquals(failed.err(), check.err());
    assertArrayEquals(before, Files.readAllBytes(results.resolve("report.html")));
  }

  @Test
  void brokenScenarioIsTheInputsFault() throws IOException {
    Path scenario = folder.resolve("broken.yaml");
    Files.writeString(
        scenario,
        Files.readString(Path.of("scenarios/two-runs.yaml"))
            .replace("reservoir: {volume: 5 gal}", "resevoir: {volume: 5}"));
    Result run = Result.call("run", scenario.toString(), "-o", folder.resolve("out").toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains("did you mean `reservoir`?"), run.err());
    assertFalse(run.err().contains("\tat "), "no stack trace");
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void unitsCanBeChosen() {
    Result us = Result.call("run", "scenarios/two-runs.yaml", "-o", folder.toString());
    Result metric =
        Result.call("run", "scenarios/two-runs.yaml", "--units", "metric", "-o", folder.toString());
    assertTrue(us.out().contains("degF") && !us.out().contains("degC"), us.out());
    assertTrue(metric.out().contains("degC") && !metric.out().contains("degF"), metric.out());
  }

  @Test
  void callsThatMakeNoSenseSayWhatDoes() {
    assertEquals(2, Result.call().code());
    assertTrue(Result.call().err().contains("run"), Result.call().err());
    assertEquals(2, Result.call("run").code());
    assertEquals(2, Result.call("rum", "x.yaml").code());
    assertEquals(2, Result.call("run", "not-there.yaml").code());
    assertTrue(
        Result.call("run", "not-there.yaml").err().contains("not-there.yaml"), "names the file");
    assertEquals(0, Result.call("--help").code());
    assertEquals(0, Result.call("run", "--help").code());
    assertEquals(0, Result.call("--version").code());
  }
}
