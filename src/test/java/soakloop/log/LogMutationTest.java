package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.invented.DressedLog;
import soakloop.invented.LogDresses;

/** Whatever bytes stand in a file: a log or a {@link LogException}, and nothing beside the file. */
class LogMutationTest {
  private static final List<String> BITS =
      List.of(
          "\"",
          ",",
          ";",
          "\t",
          "|",
          "\n",
          "\r",
          "\r\n",
          "#",
          "\u0000",
          "\ufeff",
          "NaN",
          "-",
          "1e999",
          "99999999999999999999",
          "12:60:99",
          "24:00:00",
          "2026-02-30T00:00:00",
          "\u00c2\u00b0C",
          "Time",
          "RPM",
          "IAT2 [degC]",
          "0,5",
          "1.234.567",
          "\ud83d",
          "[",
          ")",
          "1-2",
          "+",
          ".",
          ",,,,");

  @TempDir Path folder;

  @Test
  void mutatedLogsGiveALogOrALogException() throws IOException {
    Random random = new Random(4711);
    List<byte[]> logs =
        Stream.generate(() -> DressedLog.of(LogDresses.random(random)).bytes()).limit(25).toList();
    int read = 0;
    int refused = 0;
    for (int i = 0; i < 400; i++) {
      byte[] whole = logs.get(i % logs.size());
      byte[] bytes = Arrays.copyOf(whole, Math.min(whole.length, 2000 + random.nextInt(6000)));
      for (int times = 1 + random.nextInt(12); times > 0; times--) {
        bytes = mutated(bytes, random);
      }
      if (isRead(bytes)) {
        read++;
      } else {
        refused++;
      }
    }
    assertTrue(read > 100 && refused > 10, read + " read, " + refused + " refused");
  }

  @Test
  void noiseGivesALogOrALogException() throws IOException {
    Random random = new Random(4712);
    for (int i = 0; i < 300; i++) {
      byte[] bytes = new byte[random.nextInt(3000)];
      random.nextBytes(bytes);
      isRead(bytes);
      StringBuilder text = new StringBuilder();
      for (int k = random.nextInt(300); k > 0; k--) {
        text.append(BITS.get(random.nextInt(BITS.size())));
      }
      isRead(text.toString().getBytes(StandardCharsets.UTF_8));
    }
  }

  private boolean isRead(byte[] bytes) throws IOException {
    Path file = folder.resolve("fuzz.csv");
    Files.write(file, bytes);
    boolean read;
    try {
      Log log = LogReader.read(file, LogColumns.NONE);
      assertTrue(log.size() >= 2 && !log.signals().isEmpty());
      for (int i = 1; i < log.size(); i++) {
        assertTrue(log.time(i) > log.time(i - 1), "time must rise");
      }
      for (Signal signal : log.signals()) {
        assertTrue(log.curve(signal).isPresent(), signal + " has no value");
      }
      read = true;
    } catch (LogException e) {
      for (String problem : e.problems()) {
        assertTrue(problem.startsWith(file + ": "), problem);
        assertFalse(problem.lines().count() > 1, problem);
      }
      read = false;
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(e + " for:\n" + new String(bytes, StandardCharsets.ISO_8859_1), e);
    }
    assertArrayEquals(bytes, Files.readAllBytes(file));
    try (Stream<Path> beside = Files.list(folder)) {
      assertEquals(List.of(file), beside.toList());
    }
    return read;
  }

  private static byte[] mutated(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length + 1);
    byte[] bit = BITS.get(random.nextInt(BITS.size())).getBytes(StandardCharsets.UTF_8);
    byte[] head = Arrays.copyOf(bytes, at);
    byte[] tail =
        Arrays.copyOfRange(bytes, Math.min(bytes.length, at + random.nextInt(4)), bytes.length);
    return switch (random.nextInt(4)) {
      case 0 -> joined(head, tail);
      case 1 -> joined(joined(head, bit), tail);
      case 2 -> joined(joined(head, new byte[] {(byte) random.nextInt(256)}), tail);
      default -> random.nextInt(6) == 0 ? joined(tail, head) : joined(joined(head, bit), tail);
    };
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }
}
