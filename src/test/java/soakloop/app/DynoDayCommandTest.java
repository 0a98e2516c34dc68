package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** {@code dyno-day} as a person meets it. */
class DynoDayCommandTest {
  @TempDir private Path folder;

  private record Result(int code, String out, String err) {}

  private Result call(String... more) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    String[] args = new String[more.length + 4];
    args[0] = "dyno-day";
    args[1] = "scenarios/small-pulley.yaml";
    args[2] = "-o";
    args[3] = folder.toString();
    System.arraycopy(more, 0, args, 4, more.length);
    int code = line.execute(args);
    return new Result(code, out.toString(), err.toString());
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
