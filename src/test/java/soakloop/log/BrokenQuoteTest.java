package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote that never closes costs a cell or a row, not the log. Every log here is invented. */
class BrokenQuoteTest {
  private static final String LEFT_OUT =
      ": a quote opens a cell and never closes it; it is left out and the row is read without";

  @TempDir Path folder;

  private Log read(String text) throws Exception {
    Path file = folder.resolve("run.csv");
    Files.writeString(file, text);
    return LogReader.read(file, LogColumns.NONE);
  }

  private static double[] rpm(Log log) {
    return IntStream.range(0, log.size())
        .mapToDouble(i -> Math.round(log.value(Signal.ENGINE_SPEED, i) * 60))
        .toArray();
  }

  private static List<String> remarks(Log log) {
    return log.remarks().stream().map(Remark::text).toList();
  }

  @Test
  void theNumberBehindItIsRead() throws Exception {
    Log log = read("Time [s],RPM,Note\n0,900,a\n1,\"901,b\n2,902,c\n3,903,d\n");
    assertArrayEquals(new double[] {900, 901, 902, 903}, rpm(log));
    assertEquals(List.of("row 3, column `RPM`" + LEFT_OUT), remarks(log));
    Remark remark = log.remarks().get(0);
    assertEquals(Remark.Kind.CELLS, remark.kind());
    assertEquals(3, remark.firstRow());
    assertEquals(3, remark.lastRow());
  }

  @Test
  void itSwallowsNoRowsUpToTheNextQuote() throws Exception {
    Log log =
        read("Time [s],RPM,Note\n0,900,a\n1,901,\"lost\n2,902,\"well\"\n3,903,d\n4,904,\"e\"\n");
    assertArrayEquals(new double[] {900, 901, 902, 903, 904}, rpm(log));
    assertEquals(List.of("row 3, column `Note`" + LEFT_OUT), remarks(log));
    Log even = read("Time [s],RPM\n0,\"900\n1,901\"\n2,902\n3,903\n4,904\n5,905\n");
    assertArrayEquals(new double[] {900, 902, 903, 904, 905}, known(rpm(even)));
  }

  private static double[] known(double[] values) {
    return java.util.Arrays.stream(values).filter(v -> v > 0).toArray();
  }

  @Test
  void aSeparatorBehindItCostsTheRow() throws Exception {
    Log log = read("Time [s],RPM,Note\n0,900,a\n1,901,\"lift, cold\n2,902,c\n3,903,d\n");
    assertArrayEquals(new double[] {900, 902, 903}, rpm(log));
    assertTrue(
        remarks(log).contains("row 3 has more cells than the header (3); left out"),
        remarks(log).toString());
  }

  @Test
  void aCellThatGoesOverLinesStaysWhole() throws Exception {
    Log log =
        read(
            "Time [s],RPM,\"Note\nof the run\"\n0,900,a\n1,901,\"lift\nand \"\"go\"\"\"\n2,902,c\n");
    assertArrayEquals(new double[] {900, 901, 902}, rpm(log));
    assertEquals(List.of(), remarks(log));
    assertEquals(6, log.fileRow(2), "rows are counted as an editor shows them");
  }

  @Test
  void oneInAnyRowOfALongFileCostsThatRowAtMost() throws Exception {
    for (int broken = 2; broken < 4002; broken += 171) {
      StringBuilder text = new StringBuilder("Time [s],RPM,Note\n");
      for (int row = 2; row < 4002; row++) {
        text.append(row).append(row == broken ? ",\"" : ",").append(1000 + row % 7).append(",x\n");
      }
      Log log = read(text.toString());
      assertEquals(4000, log.size());
      assertEquals(1000 + broken % 7, log.value(Signal.ENGINE_SPEED, broken - 2) * 60, 1e-9);
      assertEquals(List.of("row " + broken + ", column `RPM`" + LEFT_OUT), remarks(log));
    }
  }

  @Test
  void aLongFileIsMendedToo() throws Exception {
    Log log =
        read(
            "Time [s],Channel,Value,Unit\n0,RPM,900,rpm\n1,RPM,\"901,rpm\n2,RPM,902,rpm\n3,RPM,903,"
                + "rpm\n");
    assertArrayEquals(new double[] {900, 901, 902, 903}, rpm(log));
    assertTrue(remarks(log).contains("row 3, column `Value`" + LEFT_OUT), remarks(log).toString());
  }

  @Test
  void quotesThroughoutThatMeanNothingAreRefused() {
    StringBuilder text = new StringBuilder("Time [s],RPM\n");
    for (int i = 0; i < 3000; i++) {
      text.append(i).append(i % 2 == 0 ? ",\"9" : ",9").append("00\n");
    }
    LogException e = assertThrows(LogException.class, () -> read(text.toString()));
    assertEquals(1, e.problems().size());
    assertTrue(
        e.problems()
            .get(0)
            .endsWith(
                "has quotes throughout that open a cell and never close it, the first in row 2; allowed: a"
                    + " pair of quotes around a cell, a quote within it doubled"),
        e.problems().get(0));
  }
}
