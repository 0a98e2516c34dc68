package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever bytes a log holds, reading it gives a sound log or says what is wrong. */
@Tag("fuzz")
class LogFuzzTest {
  private static final LogColumns CHOSEN =
      new LogColumns(
          Map.of(
              Signal.TIME,
              new LogColumns.Choice("t", Optional.of(Signal.TIME.dimension().require("ms"))),
              Signal.RESERVOIR,
              new LogColumns.Choice("tank", Optional.empty())));

  private static final Path FILE = scratch();

  static Stream<byte[]> seeds() {
    return Stream.of(
            "Time [s],RPM,IAT2 [degC]\n0,900,20\n0.5,3000,24.5\n1,6500,\n",
            "# invented\nTime [ms];Engine speed [rpm];Boost [psi]\r\n-5;900;0\r\n0;4000;9,5\r\n",
            "\ufefft\tRPM\ttank [degF]\n0\t900\t80\n20\t901\tN/A\n",
            "\"Time [s]\",\"Charge temp [K]\"\n\"0\",300\n\"1\",301\n,\n\n2,NaN\n",
            "Invented car\nRun;3\n\nTime;RPM;T2\ns;1/min;C\n00:00:01.250;900;24,7C\n",
            "Time [s],Road speed [mph],Inlet air [degF]\n0,0,68\n1,30,68\n")
        .map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  private static Path scratch() {
    try {
      Path file = Files.createTempFile("soakloop-fuzzed", ".csv");
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "Time [s]",
    "RPM",
    "IAT2 [degC]",
    "Boost [psi]",
    " [degF]",
    ",",
    ";",
    "NaN",
    "N/A",
    "1e308",
    "-0",
    "12:34:56.789",
    "24,7",
    "# ",
    "rpm",
    "kPa",
    "tank"
  })
  @FuzzTest
  void onlyLogErrorsComeOut(byte[] content) throws IOException {
    Files.write(FILE, content);
    check(LogColumns.NONE);
    check(CHOSEN);
  }

  private static void check(LogColumns columns) {
    try {
      Log log = LogReader.read(FILE, columns);
      assertTrue(log.size() >= 2);
      for (int i = 0; i < log.size(); i++) {
        assertTrue(Double.isFinite(log.time(i)), "time " + i);
        assertTrue(i == 0 || log.time(i) > log.time(i - 1), "time " + i);
        for (Signal signal : log.signals()) {
          assertFalse(Double.isInfinite(log.value(signal, i)), signal.key());
        }
      }
    } catch (LogException e) {
      assertFalse(e.problems().isEmpty());
      for (String problem : e.problems()) {
        assertFalse(problem.isBlank());
        assertEquals(1, problem.lines().count(), problem);
      }
    }
  }
}
