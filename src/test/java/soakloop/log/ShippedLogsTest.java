package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The logs that come with the scenarios. */
class ShippedLogsTest {
  private static List<Path> logs() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios", "logs"))) {
      return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
  }

  @Test
  void everyColumnIsUnderstoodAndEveryLogSaysThatItIsInvented() throws Exception {
    assertFalse(logs().isEmpty());
    for (Path file : logs()) {
      Log log = LogReader.read(file, LogColumns.NONE);
      List<String> unread =
          log.columns().stream().filter(c -> c.signal().isEmpty()).map(Log.Column::header).toList();
      assertEquals(List.of(), unread, log.name());
      assertTrue(log.has(Signal.CHARGE_TEMPERATURE), log.name());
      assertTrue(log.notes().stream().anyMatch(n -> n.startsWith("Invented log")), log.name());
    }
  }
}
