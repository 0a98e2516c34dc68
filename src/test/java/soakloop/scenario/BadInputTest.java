package soakloop.scenario;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;

/** Broken scenarios and logs, each with everything that is said of it. */
@Tag("regression")
class BadInputTest {
  @TempDir Path folder;

  static List<BadCase> cases() {
    return BadCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysAllThatIsWrong(BadCase bad) throws IOException {
    assertEquals(String.join("\n", bad.messages()), said(bad.write(folder)));
  }

  @Test
  void whatTheCasesBreakIsWhole() throws Exception {
    Scenario good = ScenarioReader.read(BadCase.FOLDER.resolve("good.yaml"));
    assertEquals(5, good.session().phases().size());
    assertTrue(good.logged().isPresent());
  }

  @Test
  void everyCaseSaysSomethingAndEveryProblemHasAPlace() {
    assertTrue(cases().size() >= 30);
    for (BadCase bad : cases()) {
      assertTrue(!bad.messages().isEmpty(), bad.what());
      for (String message : bad.messages()) {
        assertTrue(message.matches("bad\\.yaml:\\d+:\\d+: .+"), message);
      }
    }
  }

  @Test
  void filesThatAreNoScenario() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    files.put("empty.yaml", new byte[0]);
    files.put("comment.yaml", "# nothing but this\n".getBytes(UTF_8));
    files.put("text.yaml", "just a line\n".getBytes(UTF_8));
    files.put("list.yaml", "- a\n- b\n".getBytes(UTF_8));
    files.put("latin.yaml", "title: Temp\u00e9rature\n".getBytes(ISO_8859_1));
    files.put("zip.yaml", new byte[] {'P', 'K', 3, 4, (byte) 0xff, (byte) 0xfe});
    files.put("long.yaml", "# a line of no use\n".repeat(60_000).getBytes(UTF_8));
    files.put("longer.yaml", new byte[5_000_000]);
    Map<String, String> said = new TreeMap<>();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      said.put(file.getKey(), said(Files.write(folder.resolve(file.getKey()), file.getValue())));
    }
    said.put("folder", said(Files.createDirectory(folder.resolve("folder"))));
    said.put("lost.yaml", said(folder.resolve("lost.yaml")));
    String keys = "; a scenario is keys with values, like `title: ...`";
    Map<String, String> expected = new TreeMap<>();
    expected.put("empty.yaml", "empty.yaml: is empty" + keys);
    expected.put("comment.yaml", "comment.yaml: is empty" + keys);
    expected.put("text.yaml", "text.yaml:1:1: is a single value" + keys);
    expected.put("list.yaml", "list.yaml:1:1: is a list" + keys);
    expected.put("latin.yaml", "latin.yaml: is not UTF-8 text; save it as UTF-8");
    expected.put("zip.yaml", "zip.yaml: is not UTF-8 text; save it as UTF-8");
    expected.put("long.yaml", "long.yaml: is too long: more than 1000000 characters");
    expected.put("longer.yaml", "longer.yaml: is too large for a scenario");
    expected.put("folder", "folder: is a folder, not a scenario file");
    expected.put("lost.yaml", "lost.yaml: is not there; is the name right?");
    assertEquals(expected, said);
  }

  @Test
  void byteOrderMarkAndWindowsLinesAreRead() throws Exception {
    String good = BadCase.read(BadCase.FOLDER.resolve("good.yaml"));
    Files.copy(BadCase.FOLDER.resolve("good.csv"), folder.resolve("good.csv"));
    Path file = folder.resolve("windows.yaml");
    Files.writeString(file, "\ufeff" + good.replace("\n", "\r\n"));
    assertEquals("Two pulls", ScenarioReader.read(file).title());
  }

  /** The start is only known to be impossible when a run looks for it. */
  @Test
  void startThatNoLoopTemperatureGives() throws Exception {
    Scenario good = ScenarioReader.read(BadCase.FOLDER.resolve("good.yaml"));
    Scenario hot = good.with("start", "{charge: 145 degC}");
    SimulationException e =
        assertThrows(SimulationException.class, () -> Simulation.run(hot.setup(), Options.DEFAULT));
    assertTrue(e.isInputWrong());
    String shape =
        "start\\.charge: no loop temperature makes the sensor read 145\\.0 degC \\(293\\.0 degF\\)"
            + " at the start \\(it can read from -?[0-9.]+ degC \\([0-9.]+ degF\\)"
            + " to [0-9.]+ degC \\([0-9.]+ degF\\)\\)";
    String said = String.valueOf(e.getMessage());
    assertTrue(said.matches(shape), said);
  }

  @Test
  void neverMoreThanAHundredProblems() throws Exception {
    StringBuilder text = new StringBuilder("title: too many\n");
    for (int i = 0; i < 5000; i++) {
      text.append("zzz").append(i).append(": 1\n");
    }
    ScenarioException e =
        assertThrows(
            ScenarioException.class, () -> ScenarioReader.parse("many", text.toString(), folder));
    assertEquals(100, e.problems().size());
    List<Integer> lines = e.problems().stream().map(Problem::line).toList();
    assertEquals(lines.stream().sorted().toList(), lines);
  }

  private String said(Path file) {
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> ScenarioReader.read(file), file.toString());
    return e.problems().stream()
        .map(p -> p.toString().replace(folder.toString() + java.io.File.separator, ""))
        .collect(Collectors.joining("\n"));
  }
}
