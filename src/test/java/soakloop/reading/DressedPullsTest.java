package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.invented.DressedLog;
import soakloop.invented.LogDress;
import soakloop.invented.LogDresses;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogReader;

/** Whatever dress a log wears, its true pulls are found in it and no others. */
class DressedPullsTest {
  @TempDir private Path folder;

  static List<LogDress> dresses() {
    return LogDresses.all();
  }

  /** Ends lie within what the pull says of itself: 0.3 s, more where speed is seldom measured. */
  @ParameterizedTest
  @MethodSource("dresses")
  void truePullsAreFoundAndNoOthers(LogDress dress) throws Exception {
    DressedLog wanted = DressedLog.of(dress);
    Path file = folder.resolve("dressed.csv");
    Files.write(file, wanted.bytes());
    OptionalDouble rate =
        dress.time() == LogDress.Time.ABSENT ? OptionalDouble.of(10) : OptionalDouble.empty();
    Log log = LogReader.read(file, new LogColumns(Map.of(), rate));
    List<Pull> pulls = LogStudy.of(log, LogOptions.DEFAULTS).pulls();
    assertEquals(wanted.pulls().size(), pulls.size(), dress + ": " + pulls);
    for (int i = 0; i < pulls.size(); i++) {
      Pull pull = pulls.get(i);
      assertEquals(wanted.pulls().get(i)[0], pull.start(), pull.within(), dress + ": " + pull);
      assertEquals(wanted.pulls().get(i)[1], pull.end(), pull.within(), dress + ": " + pull);
    }
  }
}
