package soakloop.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds {@code validation/README.md} to the checks, or rewrites it when asked to. */
@Tag("regression")
class ValidationReadmeTest {
  private static final Path PAGE =
      Path.of(System.getProperty("basedir", ""), "validation", "README.md");

  @Test
  void pageIsUpToDate() throws IOException {
    String rendered = ValidationReadme.render(Suites.checks());
    if (Boolean.getBoolean("soakloop.write")) {
      Files.createDirectories(PAGE.toAbsolutePath().getParent());
      Files.writeString(PAGE, rendered);
    }
    String onDisk = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    assertEquals(
        rendered,
        onDisk,
        "stale page: run mvn test -Dtest=ValidationReadmeTest -Dsoakloop.write=true");
  }

  @Test
  void numbersAreRoundedExactly() {
    assertEquals("0.1", Digits.of(0.1, 8));
    assertEquals("1034", Digits.of(1034, 8));
    assertEquals("0.0012855527", Digits.of(1.28555270049e-3, 8));
    assertEquals("1.2855527e-5", Digits.of(1.28555270049e-5, 8));
    assertEquals("-9e-12", Digits.of(-8.96e-12, 2));
    assertEquals("0", Digits.of(0, 3));
    assertEquals("-", Digits.of(Double.NaN, 3));
  }
}
