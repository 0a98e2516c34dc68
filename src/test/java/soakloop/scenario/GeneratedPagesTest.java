package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds the printed key table and the schema to the key table, or rewrites them when asked to. */
@Tag("regression")
class GeneratedPagesTest {
  static final Path SCENARIOS = Path.of(System.getProperty("basedir", ""), "scenarios");
  static final String SCHEMA = "soakloop.schema.json";

  @Test
  void keysAreUpToDate() throws IOException {
    holds(SCENARIOS.resolve("KEYS.md"), KeysPage.render());
  }

  @Test
  void schemaIsUpToDate() throws IOException {
    holds(SCENARIOS.resolve(SCHEMA), SchemaPage.render());
  }

  @Test
  void hardwareIsUpToDate() throws IOException {
    holds(SCENARIOS.resolve("HARDWARE.md"), HardwarePage.render());
  }

  @Test
  void shippedScenariosNameTheSchema() throws IOException {
    List<Path> files = shipped();
    assertTrue(files.size() >= 4);
    for (Path file : files) {
      assertEquals(
          "# yaml-language-server: $schema=" + SCHEMA,
          Files.readAllLines(file).get(0),
          file.toString());
    }
  }

  static List<Path> shipped() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static void holds(Path page, String rendered) throws IOException {
    if (Boolean.getBoolean("soakloop.write")) {
      Files.writeString(page, rendered);
    }
    assertEquals(
        rendered,
        Files.exists(page) ? Files.readString(page) : "",
        "stale page: run mvn test -Dtest=GeneratedPagesTest -Dsoakloop.write=true");
  }
}
