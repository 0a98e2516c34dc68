package soakloop.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import soakloop.invented.DressedLog;
import soakloop.invented.LogDress;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;

/** Logs read and studied for the tests of their views. */
final class LogViews {
  private LogViews() {}

  static Log dressed(LogDress dress, Path folder) throws IOException, LogException {
    Path file = folder.resolve("dressed.csv");
    Files.write(file, DressedLog.of(dress).bytes());
    OptionalDouble rate =
        dress.time() == LogDress.Time.ABSENT ? OptionalDouble.of(10) : OptionalDouble.empty();
    return LogReader.read(file, new LogColumns(Map.of(), rate));
  }

  static Log shipped(String name) throws LogException {
    return LogReader.read(Path.of("scenarios/logs", name), LogColumns.NONE);
  }

  static LogSet set(UnitSystem units, Log... logs) {
    LogOptions options = LogOptions.DEFAULTS.withLimit(273.15 + 54);
    List<LogReading> readings = LogStudy.together(List.of(logs), options);
    List<LogSheet> sheets = new ArrayList<>();
    for (int i = 0; i < logs.length; i++) {
      sheets.add(new LogSheet(i + " " + logs[i].name(), readings.get(i), List.of()));
    }
    return new LogSet(sheets, units, options.limit());
  }
}
