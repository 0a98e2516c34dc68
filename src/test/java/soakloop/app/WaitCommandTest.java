package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code wait} as a person meets it. */
class WaitCommandTest {
  private static final List<String> FILES =
      List.of("wait.html", "wait.json", "wait.csv", "wait.png");

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
      start: {charge: 45 degC}
      session: [{pull: {from: 2600 rpm, to: 6000 rpm, in: 6 s}}, {wait: {for: 5 s}}]
      """;

  @TempDir private Path folder;
  private Path scenario = Path.of("");

  private Result call(String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("wait", scenario.toString(), "-o", folder + "/out", "--draws", "32"));
    args.addAll(List.of(more));
    return Result.call(args.toArray(String[]::new));
  }

  @BeforeEach
  void write() throws Exception {
    scenario = folder.resolve("rig.yaml");
    Files.writeString(scenario, TEXT);
  }

  @Test
  void windowsAreWrittenEverywhere() throws Exception {
    Result result = call("--limit", "100 degC", "--horizon", "20 min", "--ice", "2 kg");
    assertEquals(0, result.code(), result.err());
    for (String file : FILES) {
      assertTrue(Files.size(folder.resolve("out").resolve(file)) > 100, file);
    }
    assertTrue(result.out().contains("Event rules first"), result.out());
    result.out().lines().forEach(l -> assertTrue(l.length() <= 80 || l.contains("/"), l));
    JsonObject json =
        JsonParser.parseString(Files.readString(folder.resolve("out/wait.json"))).getAsJsonObject();
    assertEquals(100, json.getAsJsonObject("asked").get("limit").getAsDouble(), 1e-9);
    // No heat exchanger fan is stated: idling, off with the pump, all off, and with ice.
    assertEquals(4, json.getAsJsonArray("ways").size());
    for (var way : json.getAsJsonArray("ways")) {
      JsonObject window = way.getAsJsonObject().getAsJsonArray("windows").get(0).getAsJsonObject();
      assertEquals(1200, window.get("to").getAsDouble(), 1e-9);
      assertTrue(window.get("pastHorizon").getAsBoolean());
    }
    String page = Files.readString(folder.resolve("out/wait.html"));
    assertTrue(page.contains("An invented rig &lt;with marks&gt;"));
    assertTrue(page.indexOf("Event rules come first") < page.indexOf("Never open a hot loop"));
  }

  @Test
  void anEveningIsPlannedAndWrittenEverywhere() throws Exception {
    Result result =
        call(
            "--limit",
            "100 degC",
            "--rounds",
            "15 min, 12 min",
            "--lanes",
            "3 min",
            "--ice-left",
            "2 kg",
            "--battery",
            "20 W h",
            "--way",
            "off, pump");
    assertEquals(0, result.code(), result.err());
    for (String file : List.of("rounds.html", "rounds.json", "rounds.csv")) {
      assertTrue(Files.size(folder.resolve("out").resolve(file)) > 100, file);
    }
    assertTrue(result.out().contains("is never passed"), result.out());
    assertTrue(result.out().contains("0 actions"), result.out());
    assertTrue(result.out().contains("Event rules first"), result.out());
    result.out().lines().forEach(l -> assertTrue(l.length() <= 80 || l.contains("/"), l));
    JsonObject json =
        JsonParser.parseString(Files.readString(folder.resolve("out/rounds.json")))
            .getAsJsonObject();
    assertEquals(72_000, json.getAsJsonObject("asked").get("battery").getAsDouble(), 1e-9);
    assertEquals(3, json.getAsJsonArray("rounds").size());
    assertEquals(4, Files.readString(folder.resolve("out/rounds.csv")).lines().count());
    String page = Files.readString(folder.resolve("out/rounds.html"));
    assertTrue(page.contains("An invented rig &lt;with marks&gt;"));
    assertTrue(page.indexOf("Event rules come first") < page.indexOf("Never open a hot loop"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "--rounds;2 min, 20 s;interval 2 of 0.3 min leaves 0.3 min in the pit",
        "--rounds;twenty;--rounds",
        "--lanes;3 min;go with --rounds",
        "--battery;40 Wh;go with --rounds"
      })
  void badEveningsAreRefused(String option, String value, String says) {
    Result result = call("--limit", "90 degC", option, value);
    assertEquals(2, result.code(), result.out());
    assertTrue(result.err().replaceAll("\\s+", " ").contains(says), result.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void neverSaysWhyAndWhatWouldDo() {
    Result result = call("--limit", "25 degC", "--way", "idle, pump", "--horizon", "20 min");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Do not go: no wait up to 20 min"), result.out());
    assertTrue(result.out().contains("too warm"), result.out());
    assertFalse(result.out().contains("By the gauge"), result.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "--limit;100;needs a unit",
        "--confidence;20 %;from 50 % to 99 %",
        "--horizon;10 s;from 5 min to 12 h",
        "--way;roof;idle or off",
        "--ice;-1 kg;above 0",
        "--ice-below;80 degC;not opened above 50 degC"
      })
  void badOptionsAreRefused(String option, String value, String says) {
    Result result =
        option.equals("--limit") ? call(option, value) : call("--limit", "90 degC", option, value);
    assertEquals(2, result.code(), result.out());
    assertTrue(result.err().contains(says), result.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void aLimitIsNeeded() {
    Result result = call();
    assertEquals(2, result.code());
    assertTrue(result.err().contains("limits.charge-temperature"), result.err());
  }
}
