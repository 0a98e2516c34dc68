package soakloop.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import soakloop.scenario.BadCase;

/**
 * Every broken scenario and log ends {@code run} with code 2 and its messages, and leaves nothing.
 */
@Tag("regression")
class BadInputExitTest {
  @TempDir Path folder;

  static List<BadCase> cases() {
    return BadCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void endsWithCodeTwo(BadCase bad) throws IOException {
    Path out = folder.resolve("out");
    StringWriter said = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setErr(new PrintWriter(said));
    line.setOut(new PrintWriter(new StringWriter()));
    int code = line.execute("run", bad.write(folder).toString(), "-o", out.toString());
    assertEquals(2, code, said.toString());
    String text = said.toString().replace(folder + File.separator, "");
    for (String message : bad.messages()) {
      assertTrue(text.contains(message), text);
    }
    assertFalse(said.toString().contains("\tat "), said.toString());
    assertFalse(Files.exists(out));
  }
}
