package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code fit} as a person meets it: two pulls of the shipped log, a few keys. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FitCommandTest {
  private static final Path SHIPPED = Path.of("scenarios/cool-morning.yaml");
  private static final Path LOG = Path.of("scenarios/logs/cool-morning.csv");
  private static final List<String> FILES =
      List.of(
          "fit.html",
          "fit.json",
          "fit.csv",
          "fit-over-time-1.png",
          "fit-next-pull.png",
          "fit-keys.png",
          "fit-residuals-1.png");

  private Path folder = Path.of("");
  private Path scenario = Path.of("");
  private Path one = Path.of("");
  private Result first = new Result(-1, "", "");

  private static Result fit(Path target, List<String> files, String... more) {
    List<String> args = new ArrayList<>(List.of("fit"));
    args.addAll(files);
    args.addAll(List.of("-o", target.toString(), "--draws", "200"));
    args.addAll(List.of("--key", "core.conductance.value", "--key", "plumbing"));
    args.addAll(List.of(more));
    return Result.call(args.toArray(String[]::new));
  }

  @BeforeAll
  void fitOnce(@TempDir Path given) throws IOException {
    folder = given;
    scenario = folder.resolve("rig.yaml");
    String text =
        Files.readString(SHIPPED)
            .replaceFirst("title: .*", "title: '<b>Sharp</b> & \"quoted\"'")
            .replace("pulls: 5", "pulls: 2")
            .replace("logs/cool-morning.csv", LOG.toAbsolutePath().toString().replace('\\', '/'));
    Files.writeString(scenario, text);
    one = folder.resolve("one");
    first = fit(one, List.of(scenario.toString()), "--threads", "1");
    assertEquals(0, first.code(), first.err());
  }

  @Test
  void filesDoNotDependOnThreads() throws IOException {
    Path three = folder.resolve("three");
    Result again = fit(three, List.of(scenario.toString()), "--threads", "3");
    assertEquals(0, again.code(), again.err());
    for (String file : FILES) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(file)), Files.readAllBytes(three.resolve(file)), file);
    }
  }

  @Test
  void keysAreFollowedOut() throws IOException {
    Path out = folder.resolve("followed");
    Result told = fit(out, List.of(scenario.toString()), "--profile", "core.conductance.value");
    assertEquals(0, told.code(), told.err());
    JsonObject json =
        JsonParser.parseString(Files.readString(out.resolve("fit.json"))).getAsJsonObject();
    JsonObject profile = json.getAsJsonArray("profiles").get(0).getAsJsonObject();
    JsonObject key = json.getAsJsonArray("keys").get(0).getAsJsonObject();
    for (JsonElement one : json.getAsJsonArray("keys")) {
      key =
          one.getAsJsonObject().get("key").equals(profile.get("key")) ? one.getAsJsonObject() : key;
    }
    JsonObject after = key.getAsJsonObject("after");
    double half = (after.get("high").getAsDouble() - after.get("low").getAsDouble()) / 2;
    assertEquals(after.get("low").getAsDouble(), profile.get("low").getAsDouble(), 0.3 * half);
    assertEquals(after.get("high").getAsDouble(), profile.get("high").getAsDouble(), 0.3 * half);
    assertTrue(Files.readString(out.resolve("fit.html")).contains("Intervals followed out"));
    Result unknown = fit(out, List.of(scenario.toString()), "--profile", "nothing");
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("`nothing` is no key with a spread"), unknown.err());
  }

  @Test
  void textKeepsToTheConsole() {
    List<String> lines = first.out().lines().filter(l -> !l.startsWith("Report")).toList();
    for (String line : lines) {
      assertTrue(line.length() <= 80, line);
    }
    assertTrue(first.out().contains("One more pull would peak at "), first.out());
    assertTrue(first.out().contains("Tried on pull 2"), first.out());
    assertTrue(first.out().contains("From pull 1 to pull 2"), first.out());
    assertTrue(first.out().contains("core.conductance.value"), first.out());
  }

  @Test
  void pageIsWholeAndEscaped() throws Exception {
    String page = Files.readString(one.resolve("fit.html"));
    assertFalse(page.contains("<b>"), "markup from a title");
    assertTrue(page.contains("<h1>&lt;b&gt;Sharp&lt;/b&gt; &amp; &quot;quoted&quot;</h1>"));
    for (String heading :
        List.of(
            "Core, loop and soak",
            "A pull it had not seen",
            "What the log cannot tell",
            "Charts",
            "Numbers",
            "How far to trust it")) {
      assertTrue(page.contains("<h2>" + heading + "</h2>"), heading);
    }
    assertFalse(page.contains("K above"), "a metric difference in a scenario of US units");
    Matcher drawings = Pattern.compile("(?s)<svg .*?</svg>").matcher(page);
    int count = 0;
    while (drawings.find()) {
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(drawings.group().getBytes(StandardCharsets.UTF_8)));
      count++;
    }
    assertEquals(8, count, "four charts, each for desk and phone");
  }

  @Test
  void jsonSaysWhatIsKnown() throws IOException {
    JsonObject top =
        JsonParser.parseString(Files.readString(one.resolve("fit.json"))).getAsJsonObject();
    JsonObject peak =
        top.getAsJsonArray("nextPull").get(0).getAsJsonObject().getAsJsonObject("nextPeak");
    assertEquals("degC", peak.get("unit").getAsString());
    JsonObject after = peak.getAsJsonObject("after");
    double middle = after.get("middle").getAsDouble();
    assertTrue(after.get("low").getAsDouble() < middle);
    assertTrue(after.get("high").getAsDouble() > middle);
    assertTrue(middle > 40 && middle < 70, "degC, not K or degF: " + middle);
    JsonObject held = top.getAsJsonArray("heldOut").get(0).getAsJsonObject();
    assertEquals("pull 2", held.get("pull").getAsString());
    JsonObject correlation = top.getAsJsonObject("correlation");
    JsonArray rows = correlation.getAsJsonArray("rows");
    assertEquals(correlation.getAsJsonArray("keys").size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      assertEquals(1, entry(rows, i, i), 1e-9);
      assertEquals(entry(rows, i, 0), entry(rows, 0, i), 1e-9);
    }
    for (JsonElement key : top.getAsJsonArray("keys")) {
      assertFalse(key.getAsJsonObject().get("unit").getAsString().contains("degF"));
    }
  }

  private static double entry(JsonArray rows, int i, int j) {
    return rows.get(i).getAsJsonArray().get(j).getAsDouble();
  }

  @Test
  void tableHasARowForEachKey() throws IOException {
    List<NamedCsvRecord> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> reader =
        CsvReader.builder().ofNamedCsvRecord(one.resolve("fit.csv"))) {
      reader.forEach(rows::add);
    }
    NamedCsvRecord core =
        rows.stream()
            .filter(r -> r.getField("key").equals("core.conductance.value"))
            .findFirst()
            .orElseThrow();
    assertEquals("W/K", core.getField("unit"));
    assertEquals(700, Double.parseDouble(core.getField("before")), 1e-6);
    assertEquals("yes", core.getField("log tells"));
    assertTrue(
        Double.parseDouble(core.getField("now low")) < Double.parseDouble(core.getField("now")));
    assertEquals(rows.size(), rows.stream().map(r -> r.getField("key")).distinct().count());
    for (NamedCsvRecord row : rows) {
      assertEquals(13, row.getFieldCount(), row.toString());
    }
  }

  @Test
  void filesOfOneFitAreReplacedByTheNext() throws IOException {
    Path target = folder.resolve("again");
    List<String> two = List.of(scenario.toString(), LOG.toString(), LOG.toString());
    Result joint = fit(target, two);
    assertEquals(0, joint.code(), joint.err());
    assertTrue(Files.exists(target.resolve("fit-over-time-2.png")));
    Files.writeString(target.resolve("mine.txt"), "my own");
    Result single = fit(target, List.of(scenario.toString()));
    assertEquals(0, single.code(), single.err());
    assertFalse(Files.exists(target.resolve("fit-over-time-2.png")), "of the fit before");
    assertTrue(Files.exists(target.resolve("fit-over-time-1.png")));
    assertEquals("my own", Files.readString(target.resolve("mine.txt")));
  }

  @Test
  void strangeFileStays() throws IOException {
    Path target = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(target.resolve("fit.csv"), "my own");
    Result refused = fit(target, List.of(scenario.toString()));
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("fit.csv"), refused.err());
    assertTrue(refused.err().contains("--force"), refused.err());
    assertEquals("my own", Files.readString(target.resolve("fit.csv")));
    assertFalse(Files.exists(target.resolve("fit.html")));
  }

  @Test
  void scenarioWithoutALogSaysWhatIsMissing() throws IOException {
    Path bare = folder.resolve("bare.yaml");
    Files.writeString(bare, Files.readString(scenario).replaceAll("(?m)^log: .*$", ""));
    Path target = folder.resolve("nothing");
    Result result = fit(target, List.of(bare.toString()));
    assertEquals(2, result.code());
    assertTrue(result.err().contains("bare.yaml: has no log to be fitted to"), result.err());
    assertFalse(Files.exists(target));
  }

  @ParameterizedTest
  @CsvSource({
    "--draws, 10, 200 or more",
    "--threads, 0, one or more",
    "--key, core.colour, is no key with a spread"
  })
  void questionsThatCannotBeAskedEndWithCodeTwo(String option, String value, String message) {
    Path target = folder.resolve("out");
    Result result = Result.call("fit", scenario.toString(), "-o", target.toString(), option, value);
    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().contains(message), result.err());
    assertFalse(Files.exists(target));
  }
}
