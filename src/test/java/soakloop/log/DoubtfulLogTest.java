package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Logs with faults that do not forbid their use: what is said, and what is left. */
class DoubtfulLogTest {
  @TempDir Path folder;

  private Log read(String text) throws IOException, LogException {
    Path file = folder.resolve("run.csv");
    Files.writeString(file, text);
    return LogReader.read(file, LogColumns.NONE);
  }

  private static double[] times(Log log) {
    return IntStream.range(0, log.size()).mapToDouble(log::time).toArray();
  }

  static Stream<Arguments> doubtful() {
    return Stream.of(
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,20\n# note\n1,2o\n",
            "row 4, column `IAT2 [degC]`: `2o` is no number; taken as having no value",
            new double[] {0, 1}),
        Arguments.of(
            "Time [s],RPM\n0,900\n1,x\n2,900\n3,y\n",
            "column `RPM`: 2 cells from row 3 (`x`) to row 5 are no number; taken as having no value",
            new double[] {0, 1, 2, 3}),
        Arguments.of(
            "Time [s],RPM\n0,900\n,900\n2,900\n",
            "row 3 has no time; left out",
            new double[] {0, 2}),
        Arguments.of(
            "Time [s],RPM\n0,900\n1.0,900\n# note\n\n1.0,900\n2,900\n3,900\n4,900\n5,900\n",
            "row 6 has the time of the row before; left out",
            new double[] {0, 1, 2, 3, 4, 5}),
        Arguments.of(
            "Time [s],RPM\n0,900\n1,900\n3,900\n2,900\n4,900\n5,900\n",
            "row 5 goes back in time; left out",
            new double[] {0, 1, 3, 4, 5}),
        Arguments.of(
            "Time [s],RPM\n0,900\n9,900\n0,900\n1,900\n2,900\n",
            "row 4: time begins again; what follows is put 60 s behind what was, the true pause is"
                + " not known",
            new double[] {0, 9, 69, 70, 71}),
        Arguments.of(
            "Time [s],RPM\n9,903\n8,902\n7,901\n",
            "time falls from row to row: the file is read from its end",
            new double[] {7, 8, 9}),
        Arguments.of(
            "Time [s],RPM\n0,900\n0,900\n1,900\n1,900\n2,900\n2,900\n",
            "times are rounded to 1 s: 6 rows share theirs with a neighbour and are spread evenly,"
                + " 0.5 s apart",
            new double[] {0, 0.5, 1, 1.5, 2, 2.5}),
        Arguments.of(
            "Time [s],RPM\n0,900\n0.1,900\n0.2,900\n60.2,900\n60.3,900\n",
            "60.0 s without rows between rows 4 and 5",
            new double[] {0, 0.1, 0.2, 60.2, 60.3}),
        Arguments.of(
            "Time [s],RPM,IAT2 [degC]\n0,900\n1,900,20\n2,900,20\n",
            "1 row has fewer cells than the header; the cells that lack have no value",
            new double[] {0, 1, 2}),
        Arguments.of(
            "Time [s],RPM\n0,900\n1,900,7\n2,900\n",
            "row 3 has more cells than the header (2); left out",
            new double[] {0, 2}),
        Arguments.of(
            "Time [s],IAT2 [degF]\n0,1040\n1,104\n2,104\n",
            "row 2, column `IAT2 [degF]`: 1040.0 degF is 560.0 degC, outside -60 to 400 degC; is the"
                + " unit wrong? Left out",
            new double[] {0, 1, 2}),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,1e999\n1,30\n2,30\n",
            "row 2, column `IAT2 [degC]`: n/a degC is outside -60 to 400 degC; is the unit wrong?"
                + " Left out",
            new double[] {0, 1, 2}));
  }

  @ParameterizedTest
  @MethodSource("doubtful")
  void saysWhatWasWrongAndReadsTheRest(String text, String remark, double[] times)
      throws Exception {
    Log log = read(text);
    assertEquals(List.of(remark), log.remarks().stream().map(Remark::text).toList());
    assertArrayEquals(times, times(log), 1e-12);
  }

  @Test
  void rowsOfAReversedFileKeepTheirValuesAndNumbers() throws Exception {
    Log log = read("Time [s],RPM\n9,903\n8,902\n7,901\n");
    assertEquals(901 / 60.0, log.value(Signal.ENGINE_SPEED, 0), 1e-12);
    assertEquals(4, log.fileRow(0));
    assertEquals(2, log.fileRow(2));
  }

  @Test
  void readsAColumnNamedBoostAsAbsoluteIfItsIdleSaysSo() throws Exception {
    Log log = read("Time [s],RPM,Boost [kPa]\n0,850,36\n1,3000,190\n");
    assertEquals(190e3, log.value(Signal.MANIFOLD_PRESSURE, 1), 1e-9);
    Log.Column column = log.columns().get(2);
    assertEquals(Confidence.LIKELY, column.confidence());
    assertEquals("reads 36 kPa at idle, so absolute", column.remark());
  }
}
