package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code rank} as a person meets it. */
class RankCommandTest {
  private static final List<String> FILES =
      List.of("rank.html", "rank.json", "rank.csv", "rank.png");

  private static final String TEXT =
      """
      title: An invented rig <with marks>
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.3}
      boost: 85 kPa +/- 5 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [reservoir, pump, core, heat-exchanger]
      heat-exchanger: {face: {width: 600 mm, height: 300 mm}}
      coolant: {glycol: ethylene, by-volume: 30 %}
      start: {charge: 30 degC}
      session: [{pull: {from: 2600 rpm, to: 6000 rpm, in: 6 s}}, {wait: {for: 5 s}}]
      """;

  @TempDir private Path folder;
  private Path scenario = Path.of("");

  private Result rank(Path target, String... more) {
    List<String> args =
        new java.util.ArrayList<>(
            List.of("rank", scenario.toString(), "-o", target.toString(), "--top", "1"));
    args.addAll(List.of(more));
    return Result.call(args.toArray(String[]::new));
  }

  @BeforeEach
  void write() throws IOException {
    scenario = folder.resolve("rig.yaml");
    Files.writeString(scenario, TEXT);
  }

  @Test
  void filesDoNotDependOnThreads() throws IOException {
    Result one = rank(folder.resolve("one"), "--threads", "1");
    Result three = rank(folder.resolve("three"), "--threads", "3");
    assertEquals(0, one.code(), one.err());
    assertEquals(0, three.code(), three.err());
    for (String file : FILES) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("one").resolve(file)),
          Files.readAllBytes(folder.resolve("three").resolve(file)),
          file);
    }
    String page = Files.readString(folder.resolve("one/rank.html"));
    assertTrue(page.contains("An invented rig &lt;with marks&gt;"));
    assertTrue(page.contains("boost"));
    for (String line : one.out().lines().filter(l -> !l.startsWith("Report")).toList()) {
      assertTrue(line.length() <= 80, line);
    }
  }

  @Test
  void everyRowOfTheTableHasAsManyCells() throws IOException {
    assertEquals(0, rank(folder.resolve("out"), "--units", "us").code());
    List<String> lines = Files.readAllLines(folder.resolve("out/rank.csv"));
    assertTrue(lines.size() > 20, "the defaults of this rig carry some thirty spreads");
    for (String line : lines) {
      assertEquals(14, line.split(",", -1).length, line);
    }
  }

  @Test
  void strangeFileStays() throws IOException {
    Path target = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(target.resolve("rank.csv"), "my own");
    Result refused = rank(target);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("rank.csv"), refused.err());
    assertEquals("my own", Files.readString(target.resolve("rank.csv")));
    assertFalse(Files.exists(target.resolve("rank.html")));
    assertEquals(0, rank(target, "--force").code());
  }

  @ParameterizedTest
  @CsvSource({
    "--of, lap-time, is no result",
    "--of, over-limit, limits.charge-temperature",
    "--top, -1, 0 to 100",
    "--threads, 0, one or more"
  })
  void questionsThatCannotBeAskedEndWithCodeTwo(String option, String value, String message) {
    Path target = folder.resolve("out");
    Result result =
        Result.call("rank", scenario.toString(), "-o", target.toString(), option, value);
    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().contains(message), result.err());
    assertFalse(Files.exists(target));
  }
}
