package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever a text editor does to a scenario, reading it gives a scenario or says what is wrong:
 * nothing else comes out, and soon.
 */
@Tag("regression")
class MutationTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("basedir", ""), "scenarios");
  private static final int MUTATIONS = 2000;
  private static final long SEED = 20_260;
  private static final List<String> TOKENS =
      List.of(
          "5 L",
          "off",
          "[]",
          "{}",
          "-3 K",
          "1e308 kPa +/- 1e308 %",
          "0",
          "",
          "&a",
          "*a",
          "!!x y",
          "[[0 s, 1 rpm]]",
          "200",
          "core",
          "pump",
          "hose",
          "reservoir",
          "NaN",
          "~",
          "|",
          ">",
          "? ",
          "<<",
          "- - -",
          "% +/- 4 points",
          "\u00b0C",
          "\ud83d\ude00",
          "100 h",
          "0.1 s",
          "null");

  private final Random random = new Random(SEED);

  @Test
  void onlyScenarioExceptionsComeOut() throws IOException {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      files
          .filter(f -> f.toString().endsWith(".yaml"))
          .sorted()
          .forEach(f -> texts.add(BadCase.read(f)));
    }
    int read = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      String text = texts.get(i % texts.size());
      for (int times = 1 + random.nextInt(3); times > 0; times--) {
        text = mutate(text);
      }
      if (isRead(text)) {
        read++;
      }
    }
    assertTrue(read > MUTATIONS / 20 && read < MUTATIONS, read + " were read");
  }

  private static boolean isRead(String text) {
    try {
      return Readings.check(() -> ScenarioReader.parse("mutated", text, SCENARIOS));
    } catch (AssertionError | RuntimeException | StackOverflowError e) {
      throw new AssertionError("what came out was " + e + " of:\n" + text, e);
    }
  }

  private String mutate(String text) {
    if (text.isEmpty()) {
      return TOKENS.get(random.nextInt(TOKENS.size()));
    }
    int at = random.nextInt(text.length());
    List<String> lines = new ArrayList<>(text.lines().toList());
    int line = lines.isEmpty() ? 0 : random.nextInt(lines.size());
    switch (random.nextInt(9)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.add(random.nextInt(lines.size()), lines.get(line));
      case 2 -> Collections.swap(lines, line, random.nextInt(lines.size()));
      case 3, 4 -> {
        return replaceToken(text);
      }
      case 5 -> {
        return text.substring(0, at);
      }
      case 6 -> {
        return text.substring(0, at) + anyCharacter() + text.substring(at);
      }
      case 7 -> {
        return text.substring(0, at)
            + text.substring(Math.min(text.length(), at + 1 + random.nextInt(9)));
      }
      default -> lines.set(line, " ".repeat(random.nextInt(5)) + lines.get(line).strip());
    }
    return String.join("\n", lines) + "\n";
  }

  private String replaceToken(String text) {
    String[] parts = text.split("(?<=[:,\\[\\]{} ])|(?=[:,\\[\\]{} ])", -1);
    int from = random.nextInt(parts.length);
    parts[from] =
        random.nextBoolean()
            ? TOKENS.get(random.nextInt(TOKENS.size()))
            : parts[random.nextInt(parts.length)];
    return String.join("", parts);
  }

  private String anyCharacter() {
    return random.nextInt(4) == 0
        ? String.valueOf((char) random.nextInt(0x10000))
        : String.valueOf((char) (' ' + random.nextInt(95)));
  }
}
