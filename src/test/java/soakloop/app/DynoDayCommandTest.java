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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code dyno-day} as a person meets it. */
class DynoDayCommandTest {
  @TempDir private Path folder;

  private Result call(String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("dyno-day", "scenarios/small-pulley.yaml", "-o", folder.toString()));
    args.addAll(List.of(more));
    return Result.call(args.toArray(String[]::new));
  }

  @Test
  void saysHowLongToWait() throws Exception {
    Result result =
        call(
            "--draws",
            "32",
            "--pulls",
            "3",
            "--warm-ups",
            "1",
            "--within",
            "4 degF",
            "--horizon",
            "25 min",
            "--way",
            "idle, pump, fans");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().lines().allMatch(l -> l.length() <= 80 || l.contains("/")));
    assertTrue(result.out().contains("Pull every "), result.out());
    assertTrue(result.out().contains("power at the crank by up to"), result.out());
    String page = Files.readString(folder.resolve("dyno-day.html"));
    assertTrue(page.contains("Knock margin is proved on the engine"));
    assertFalse(page.contains("NaN"));
    JsonObject json =
        JsonParser.parseString(Files.readString(folder.resolve("dyno-day.json"))).getAsJsonObject();
    JsonObject way = json.getAsJsonArray("ways").get(0).getAsJsonObject();
    double from = way.getAsJsonArray("windows").get(0).getAsJsonObject().get("from").getAsDouble();
    assertTrue(from > 30 && from < 1500, String.valueOf(from));
    assertTrue(Files.size(folder.resolve("dyno-day.png")) > 5000);
    assertTrue(Files.readAllLines(folder.resolve("dyno-day.csv")).size() > 9);
  }

  @Test
  void saysWhatIsAllowed() {
    Result pulls = call("--pulls", "1");
    assertEquals(2, pulls.code());
    assertTrue(pulls.err().contains("pulls must be 2 to 20"), pulls.err());
    Result within = call("--within", "2 degC warm");
    assertEquals(2, within.code());
    assertTrue(within.err().contains("--within"), within.err());
    Result ice = call("--way", "off, pump, ice 2 kg");
    assertEquals(2, ice.code());
    assertTrue(ice.err().contains("never start alike"), ice.err());
  }
}
