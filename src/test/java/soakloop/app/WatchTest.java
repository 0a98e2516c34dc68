package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Edit and rerun, as a person does it. */
@Tag("analytic")
class WatchTest {
  private static final String REFRESH = "http-equiv=\"refresh\" content=\"2\"";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private static void waitFor(StringWriter text, String wanted) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (!text.toString().contains(wanted)) {
      if (System.nanoTime() > end) {
        fail("`" + wanted + "` is not in: " + text);
      }
      Thread.sleep(20);
    }
  }

  /** Puts a text in a file's place, as editors do. */
  private void put(Path file, String text) throws Exception {
    Path draft = Files.writeString(folder.resolve("draft~"), text);
    Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
  }

  private void forget() {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
  }

  private CommandLine line() {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line;
  }

  @Test
  void everyEditIsRunOrRefused() throws Exception {
    Path scenario = folder.resolve("mine.yaml");
    Path log = folder.resolve("mine.csv");
    String text =
        Files.readString(Path.of("scenarios/cool-morning.yaml"))
            .replace("logs/cool-morning.csv", "mine.csv");
    String readings = Files.readString(Path.of("scenarios/logs/cool-morning.csv"));
    Files.writeString(scenario, text);
    Files.writeString(log, readings);
    Path results = folder.resolve("results");
    Path report = results.resolve("report.html");
    AtomicInteger code = new AtomicInteger(-1);
    Thread watch =
        new Thread(
            () ->
                code.set(
                    line()
                        .execute("run", scenario.toString(), "--watch", "-o", results.toString())));
    watch.start();
    try {
      waitFor(out, "Watching " + scenario + " and " + log + "; Ctrl-C ends it.");
      assertTrue(out.toString().contains("Report: " + report), out.toString());
      assertTrue(Files.readString(report).contains(REFRESH));

      forget();
      put(scenario, text.replaceFirst("(?m)^title: .*", "title: Edited once"));
      waitFor(out, scenario + " changed: Pull 5 ends at ");
      assertTrue(Files.readString(report).contains("Edited once"));
      assertEquals(1, out.toString().lines().count(), out.toString());

      forget();
      byte[] good = Files.readAllBytes(report);
      put(scenario, text.replace("reservoir:", "resevoir:"));
      waitFor(err, "the results stay as they were");
      assertTrue(err.toString().contains("did you mean `reservoir`?"), err.toString());
      assertTrue(err.toString().contains(scenario + " changed: 1 problem;"), err.toString());
      assertArrayEquals(good, Files.readAllBytes(report));

      forget();
      Files.writeString(scenario, text);
      waitFor(out, scenario + " changed: Pull 5 ends at ");
      assertFalse(Files.readString(report).contains("Edited once"));

      forget();
      Files.delete(log);
      waitFor(err, log + " is gone: 1 problem; the results stay as they were");
      assertTrue(err.toString().contains("there is no such file"), err.toString());

      forget();
      put(log, readings);
      waitFor(out, log + " changed: Pull 5 ends at ");
      assertEquals("", err.toString());

      forget();
      Files.delete(scenario);
      waitFor(err, scenario + " is gone: 1 problem; the results stay as they were");
      assertTrue(err.toString().contains("is not there; is the name right?"), err.toString());

      forget();
      put(scenario, text);
      waitFor(out, scenario + " changed: Pull 5 ends at ");
    } finally {
      watch.interrupt();
      watch.join(60_000);
    }
    assertEquals(0, code.get());
    assertEquals(0, line().execute("run", scenario.toString(), "-o", results.toString()));
    assertFalse(Files.readString(report).contains("http-equiv"), "only a watched page reloads");
  }

  @Test
  void firstRunThatFailsEndsTheWatch() {
    assertEquals(2, line().execute("run", folder.resolve("none.yaml").toString(), "--watch"));
    assertTrue(err.toString().contains("is not there; is the name right?"), err.toString());
  }
}
