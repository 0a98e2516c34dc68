package soakloop.scenario;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever bytes a scenario file holds, reading it gives a scenario or says what is wrong. */
@Tag("fuzz")
class ScenarioFuzzTest {
  static Stream<byte[]> seeds() throws IOException {
    List<String> texts = new ArrayList<>(Scenarios.ALL);
    texts.add(BadCase.read(BadCase.FOLDER.resolve("good.yaml")));
    return texts.stream().map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    " +/- ", " %", " points", " degF", " psi", " gpm", "1e308", "-0", "[[", "]]", ": ", "- ",
    "\\x0a", "{}", "&a ", "*a", "!!x ", "<<", "off", "none", "session", "repeat", "steps", "loop",
    "hose", "x-hose", "reservoir", "heat-exchanger", "pump", "core", "log", "replay", "curve"
  })
  @FuzzTest
  void onlyInputErrorsComeOut(byte[] content) throws IOException {
    Path file = Files.write(Readings.SCRATCH.resolve("fuzzed.yaml"), content);
    Readings.check(() -> ScenarioReader.read(file));
  }
}
