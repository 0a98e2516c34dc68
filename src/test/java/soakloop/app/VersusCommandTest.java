package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code versus} as a person meets it: two descriptions without logs, and wrong questions. */
class VersusCommandTest {
  @TempDir private Path folder;

  /** Writes a shipped scenario with one pull, without its log. */
  private String unlogged(String name) throws IOException {
    String text = Files.readString(Path.of("scenarios", name + ".yaml"));
    String shorter = text.replaceFirst("(?m)^log:.*$", "").replace("pulls: 5", "pulls: 1");
    Path file = folder.resolve(name + ".yaml");
    Files.writeString(file, shorter);
    return file.toString();
  }

  @Test
  void comparesDescriptionsAndPlansATest() throws IOException {
    Path out = folder.resolve("out");
    Result result =
        Result.call(
            "versus",
            unlogged("cool-morning"),
            unlogged("denser-core"),
            "--draws",
            "200",
            "--at-least",
            "1 degF",
            "-o",
            out.toString());
    assertEquals(0, result.code(), result.err());
    assertEquals("", result.err());
    assertTrue(
        result.out().lines().allMatch(l -> l.length() <= 80 || l.contains("/")), result.out());
    assertTrue(result.out().contains("Denser-core is better"), result.out());
    assertTrue(result.out().contains("A fair test"), result.out());
    assertFalse(result.out().contains("NaN"), result.out());
    try (Stream<Path> files = Files.list(out)) {
      List<String> names = files.map(f -> f.getFileName().toString()).sorted().toList();
      assertTrue(
          names.containsAll(
              List.of(
                  "versus-elsewhere.png",
                  "versus-for-the-customer.html",
                  "versus-map.png",
                  "versus-over-speed.png",
                  "versus.csv",
                  "versus.html",
                  "versus.json")),
          names.toString());
    }
    String page = Files.readString(out.resolve("versus.html"));
    assertTrue(page.contains("an estimate"), "does not say that it is an estimate");
    String sheet = Files.readString(out.resolve("versus-for-the-customer.html"));
    assertTrue(sheet.contains("Event rules and local codes come first"));
    JsonObject json =
        JsonParser.parseString(Files.readString(out.resolve("versus.json"))).getAsJsonObject();
    assertEquals(0.95, json.get("confidence").getAsDouble());
    JsonObject pairing = json.getAsJsonArray("pairings").get(0).getAsJsonObject();
    assertEquals("better", pairing.get("verdict").getAsString());
    JsonObject end =
        pairing.getAsJsonArray("differences").get(0).getAsJsonObject().getAsJsonObject("end");
    assertTrue(end.get("low").getAsDouble() < end.get("middle").getAsDouble());
    assertTrue(end.get("better").getAsDouble() > 0.95);
    assertEquals(6, json.getAsJsonObject("testSheet").getAsJsonArray("smallestDifference").size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--by cold|--by takes one of end, peak, rise, not `cold`",
        "--at-least 3 apples|--at-least",
        "--at-least=-1 K|--at-least must be 0 or more",
        "--confidence 40|--confidence must be above 50",
        "--draws 10|--draws must be 200 or more",
        "--swapped turbo|--swapped turbo: cool-morning.yaml has no such section",
        "--threads 0|--threads must be one or more",
        "--like nowhere.yaml|nowhere.yaml"
      })
  void wrongQuestionsAreToldWhatIsAllowed(String option, String said) throws IOException {
    String[] words = option.split(" ", 2);
    String[] given = option.contains("=") ? new String[] {option} : words;
    String a = unlogged("cool-morning");
    String b = unlogged("denser-core");
    String[] all =
        Stream.concat(Stream.of("versus", a, b), Stream.of(given)).toArray(String[]::new);
    Result result = Result.call(all);
    assertEquals(2, result.code(), result.out() + result.err());
    assertTrue(result.err().contains(said), result.err());
  }

  /** One file with the other core as a variant gives what two files give. */
  @Test
  void variantsAreComparedToo() throws IOException {
    String two =
        Result.call(
                "versus", unlogged("cool-morning"), unlogged("denser-core"), "-o", folder + "/two")
            .out();
    Path file = folder.resolve("both.yaml");
    String text = Files.readString(folder.resolve("cool-morning.yaml"));
    String variant =
        """
        variants:
          - name: denser-core
            core:
              size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
              mass: 4.1 kg
              coolant: 0.9 L
              conductance: {value: 0.89 kW/K +/- 15 %, air-flow: 0.5 kg/s, coolant-flow: 25 L/min, air-side-share: 70 %}
              passes: {count: 2, arranged: depth}
            start: {charge: 33 degC, loop-coolant: 27 degC, engine-coolant: 88 degC}
        """;
    Files.writeString(file, text + variant);
    Result one = Result.call("versus", file.toString(), "-o", folder + "/one");
    assertEquals(0, one.code(), one.err());
    assertEquals(pullLine(two), pullLine(one.out()));
  }

  private static String pullLine(String text) {
    return text.lines().filter(l -> l.startsWith("Pull 1")).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[{core: {mass: 3 kg}}]|variants.1.name",
        "[{name: a}]|differs in nothing",
        "[{name: a, cor: {mass: 3 kg}}]|did you mean `core`?",
        "[{name: a, limits: {}}, {name: a, limits: {}}]|stands in this list twice",
        "[other]|variants.1: is a single value"
      })
  void brokenVariantsAreTold(String variants, String said) throws IOException {
    Path file = folder.resolve("broken.yaml");
    String text = Files.readString(Path.of(unlogged("cool-morning")));
    Files.writeString(file, text + "variants: " + variants + "\n");
    Result result = Result.call("check", file.toString());
    assertEquals(2, result.code(), result.out());
    assertTrue(result.err().contains(said), result.err());
  }

  @Test
  void oneScenarioIsNotEnough() throws IOException {
    Result result = Result.call("versus", unlogged("cool-morning"));
    assertEquals(2, result.code());
    assertTrue(result.err().contains("takes two scenarios or more"), result.err());
  }
}
