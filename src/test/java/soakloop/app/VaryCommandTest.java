package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command vary as a person and a batch scheduler meet it. */
@Tag("analytic")
class VaryCommandTest {
  private static final String VOLUME = "reservoir.volume=3 L..9 L/3";
  private static final String FAN = "airflow.shop-fan=0.4 m/s,1.5 m/s,4 m/s";

  @TempDir private Path folder;
  private String scenario = "";

  /** What came of one call. */
  private record Result(int code, String out, String err) {}

  @BeforeEach
  void shortMorning() throws IOException {
    Path file = folder.resolve("morning.yaml");
    String text = Files.readString(Path.of("scenarios/cool-morning.yaml"));
    Files.createDirectory(folder.resolve("logs"));
    Files.copy(Path.of("scenarios/logs/cool-morning.csv"), folder.resolve("logs/cool-morning.csv"));
    Files.writeString(file, text.replace("pulls: 5", "pulls: 2"));
    scenario = file.toString();
  }

  private Result vary(Path out, String... more) {
    List<String> args = new ArrayList<>(List.of("vary", scenario, "-o", out.toString()));
    args.addAll(List.of(more));
    StringWriter output = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(output, true));
    line.setErr(new PrintWriter(err, true));
    int code = line.execute(args.toArray(String[]::new));
    return new Result(code, output.toString(), err.toString());
  }

  private static void assertSame(Path a, Path b, String name) throws IOException {
    assertArrayEquals(
        Files.readAllBytes(a.resolve(name)), Files.readAllBytes(b.resolve(name)), name);
  }

  /** A long key must not push the last results off a console. */
  @Test
  void boostFromPulleysIsInTheTable() throws IOException {
    String text = Files.readString(Path.of("scenarios/small-pulley.yaml"));
    Path file = folder.resolve("pulley.yaml");
    Files.writeString(file, text.replace("pulls: 5", "pulls: 1"));
    scenario = file.toString();
    Result result = vary(folder.resolve("pulley"), "blower.pulleys.blower=70 mm..90 mm/2");
    assertEquals(0, result.code(), result.err());
    String head =
        result.out().lines().filter(l -> l.contains("Charge peak")).findFirst().orElseThrow();
    assertTrue(head.startsWith("blower, mm") && head.endsWith("Boost"), head);
    assertFalse(result.out().contains("..."), result.out());
  }

  @Test
  void threadsAndPartsGiveTheSameFiles() throws IOException {
    Path whole = folder.resolve("whole");
    Result one = vary(whole, VOLUME, FAN, "--threads", "1", "--limit", "coolant=95 degF");
    assertEquals(0, one.code(), one.err());
    assertFalse(one.out().contains("\r"), "no progress bar in a pipe");
    assertEquals("", one.err());
    for (String threads : List.of("2", "5")) {
      Path again = folder.resolve("threads" + threads);
      Result more = vary(again, VOLUME, FAN, "--threads", threads, "--limit", "coolant=95 degF");
      assertEquals(
          one.out().replace(whole.toString(), ""), more.out().replace(again.toString(), ""));
      assertSame(whole, again, "vary.json");
      assertSame(whole, again, "vary.csv");
      assertSame(whole, again, "vary.html");
    }
    Path parts = folder.resolve("parts");
    for (String part : List.of("2/4", "4/4", "1/4", "3/4")) {
      Result made = vary(parts, VOLUME, FAN, "--part", part, "--limit", "coolant=95 degF");
      assertEquals(0, made.code(), made.err());
    }
    assertTrue(Files.exists(parts.resolve("vary-part-2-of-4.json")));
    Path merged = folder.resolve("merged");
    Result all = vary(merged, "--merge", parts.toString());
    assertEquals(0, all.code(), all.err());
    assertEquals(one.out().replace(whole.toString(), ""), all.out().replace(merged.toString(), ""));
    assertSame(whole, merged, "vary.json");
    assertSame(whole, merged, "vary.csv");
    assertSame(whole, merged, "vary.html");
  }

  @Test
  void partsOfOneKeyKeepTheCoursesOfTheLastPull() throws IOException {
    Path whole = folder.resolve("whole");
    assertEquals(0, vary(whole, VOLUME).code());
    Path parts = folder.resolve("parts");
    assertEquals(0, vary(parts, VOLUME, "--part", "1/2").code());
    assertEquals(0, vary(parts, VOLUME, "--part", "2/2").code());
    assertEquals(0, vary(parts, VOLUME, "--part", "2/2").code(), "made anew");
    Path merged = folder.resolve("merged");
    assertEquals(0, vary(merged, "--merge", parts.toString()).code());
    assertSame(whole, merged, "vary.html");
  }

  @Test
  void partsThatDoNotGoTogetherAreRefused() throws IOException {
    Path parts = folder.resolve("parts");
    Path merged = folder.resolve("merged");
    Result none = vary(merged, "--merge", parts.toString());
    assertEquals(2, none.code());
    vary(parts, VOLUME, "--part", "1/3");
    vary(parts, VOLUME, "--part", "3/3");
    Result missing = vary(merged, "--merge", parts.toString());
    assertEquals(2, missing.code());
    assertTrue(missing.err().contains("missing of 3 parts") && missing.err().contains(": 2"));
    vary(parts, "reservoir.volume=3 L..8 L/3", "--part", "2/3");
    Result other = vary(merged, "--merge", parts.toString());
    assertEquals(2, other.code());
    assertTrue(other.err().contains("another key or range"), other.err());
    vary(parts, VOLUME, "--part", "2/3");
    Path copy = parts.resolve("vary-part-2-of-3 (1).json");
    Files.copy(parts.resolve("vary-part-2-of-3.json"), copy);
    Result twice = vary(merged, "--merge", parts.toString());
    assertEquals(2, twice.code());
    assertTrue(twice.err().contains("part 2 is there twice"), twice.err());
    Files.writeString(copy, "{\"kind\": \"vary part\"}");
    Result damaged = vary(merged, "--merge", parts.toString());
    assertEquals(2, damaged.code());
    assertTrue(damaged.err().contains("damaged"), damaged.err());
    Files.delete(copy);
    Path file = Path.of(scenario);
    Files.writeString(file, Files.readString(file).replace("volume: 5 L", "volume: 6 L"));
    Result changed = vary(merged, "--merge", parts.toString());
    assertEquals(2, changed.code());
    assertTrue(changed.err().contains("another scenario"), changed.err());
    assertFalse(Files.exists(merged), "nothing is written");
  }

  @Test
  void strangePartIsNotOverwritten() throws IOException {
    Path mine = folder.resolve("vary-part-1-of-2.json");
    Files.writeString(mine, "mine");
    Result refused = vary(folder, VOLUME, "--part", "1/2");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("--force"), refused.err());
    assertEquals("mine", Files.readString(mine));
    assertEquals(0, vary(folder, VOLUME, "--part", "1/2", "--force").code());
  }

  @Test
  void wrongInputEndsWithTwoAndWritesNothing() {
    Path out = folder.resolve("out");
    List<List<String>> wrong =
        List.of(
            List.of(),
            List.of("reservoir.volumme=3 L,5 L"),
            List.of("reservoir.volume=3..5"),
            List.of("reservoir.volume=100 L..300 L/3"),
            List.of("title=a,b"),
            List.of(VOLUME, "--result", "horses"),
            List.of(VOLUME, "--limit", "coolant=45"),
            List.of(VOLUME, "--threads", "0"),
            List.of(VOLUME, "--part", "3/2"),
            List.of(VOLUME, "--part", "0/2"),
            List.of(VOLUME, "--part", "half"),
            List.of(VOLUME, "--merge", "parts"),
            List.of("--part", "1/2", "--merge", "parts"));
    for (List<String> args : wrong) {
      Result result = vary(out, args.toArray(String[]::new));
      assertEquals(2, result.code(), args + result.err());
      assertFalse(result.err().isBlank() || result.err().contains("\tat "), result.err());
      assertFalse(Files.exists(out), args.toString());
    }
  }

  @Test
  void runsThatAllFailEndWithThree() {
    Path out = folder.resolve("out");
    Result result = vary(out, "start.charge=-35 degC,-30 degC");
    assertEquals(3, result.code());
    assertTrue(result.err().contains("none of the runs could finish"), result.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void fileOfTheUsersStopsItBeforeTheRuns() throws IOException {
    Files.writeString(folder.resolve("vary.csv"), "mine");
    Result result = vary(folder, "reservoir.volume=3 L..9 L/90000");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("vary.csv"), result.err());
  }

  @Test
  void brokenOffItLeavesNothing() throws Exception {
    Path out = folder.resolve("out");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "vary",
                scenario,
                "reservoir.volume=3 L..9 L/50000",
                "-o",
                out.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    boolean ended = process.waitFor(3, TimeUnit.SECONDS);
    process.destroy();
    assertTrue(process.waitFor(20, TimeUnit.SECONDS));
    assertFalse(ended, Files.readString(folder.resolve("said.txt")));
    assertFalse(Files.exists(out));
  }

  @Test
  void barIsDrawnAndWipedOnATerminalOnly() {
    StringWriter text = new StringWriter();
    try (ProgressBar bar = new ProgressBar(new PrintWriter(text, true), true)) {
      bar.at(1, 4);
      bar.at(1, 4);
      bar.at(4, 4);
    }
    assertEquals(2, text.toString().split("of 4 runs", -1).length - 1);
    assertTrue(text.toString().contains("[##########....") && text.toString().endsWith(" \r"));
    StringWriter nothing = new StringWriter();
    try (ProgressBar bar = new ProgressBar(new PrintWriter(nothing, true), false)) {
      bar.at(1, 4);
    }
    assertEquals("", nothing.toString());
  }
}
