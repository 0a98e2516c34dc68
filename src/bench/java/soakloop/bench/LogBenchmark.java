package soakloop.bench;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;

/**
 * A log of 100,000 rows and 40 columns, 24 of them known: the import, and the CSV library alone.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LogBenchmark {
  private static final int ROWS = 100_000;
  private static final String[] KNOWN = {
    "Time [s]",
    "RPM",
    "Vehicle speed [km/h]",
    "Boost [kPa]",
    "MAP [kPa]",
    "Inlet air [degC]",
    "Blower outlet [degC]",
    "IAT2 [degC]",
    "Core coolant in [degC]",
    "Core coolant out [degC]",
    "Reservoir [degC]",
    "ECT [degC]",
    "Baro [kPa]",
    "MAF [g/s]",
    "Gear",
    "Throttle [%]",
    "Power [kW]",
    "Torque [Nm]",
    "Spark [deg]",
    "Knock [deg]",
    "Lambda",
    "Pump",
    "Fan",
    "Boost before core [kPa]"
  };

  private Path file = Path.of("");

  /** Writes the log. */
  @Setup(Level.Trial)
  public void write() throws IOException {
    file = Files.createTempFile("soakloop-bench", ".csv");
    write(file, ROWS);
  }

  /** Writes an invented log of a number of rows. */
  public static void write(Path file, long rows) throws IOException {
    Random random = new Random(4);
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write(String.join(",", KNOWN));
      for (int i = KNOWN.length; i < 40; i++) {
        out.write(",Probe " + i);
      }
      out.write('\n');
      StringBuilder row = new StringBuilder();
      for (long i = 0; i < rows; i++) {
        row.setLength(0);
        row.append(String.format(Locale.ROOT, "%d.%02d", i / 100, i % 100));
        for (int c = 1; c < 40; c++) {
          int value = c == 1 ? 800 + random.nextInt(5800) : 20 + random.nextInt(70);
          row.append(',')
              .append(c == 14 ? 1 + value % 6 : c == 20 ? 1 : c > 20 && c < 23 ? value % 2 : value);
          if (c != 1 && c != 14 && c != 21 && c != 22) {
            row.append('.').append(random.nextInt(10));
          }
        }
        out.write(row.append('\n').toString());
      }
    }
  }

  /** Removes it. */
  @TearDown(Level.Trial)
  public void remove() throws IOException {
    Files.delete(file);
  }

  /** Reads the log: every known column to numbers. */
  @Benchmark
  public Log readLog() throws LogException {
    return LogReader.read(file, LogColumns.NONE);
  }

  /** Parts the same file into texts, with the CSV library alone. */
  @Benchmark
  public long parseOnly() throws IOException {
    long cells = 0;
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(file)) {
      for (CsvRecord row : reader) {
        cells += row.getFieldCount();
      }
    }
    return cells;
  }
}
