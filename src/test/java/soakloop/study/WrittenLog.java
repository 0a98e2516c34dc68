package soakloop.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.Signal;

/** An invented log as a file, its columns called so that only a scenario can name them. */
record WrittenLog(Path file, LogColumns columns) {
  static WrittenLog of(Log log, Path file) throws IOException {
    Map<Signal, LogColumns.Choice> named = new EnumMap<>(Signal.class);
    List<Signal> signals = List.copyOf(log.signals());
    StringBuilder text = new StringBuilder("Time [s]");
    for (int i = 0; i < signals.size(); i++) {
      String header = "K" + (char) ('A' + i);
      named.put(
          signals.get(i),
          new LogColumns.Choice(header, java.util.Optional.of(signals.get(i).dimension().si())));
      text.append(',').append(header);
    }
    for (int row = 0; row < log.size(); row++) {
      int r = row;
      text.append('\n').append(String.format(java.util.Locale.ROOT, "%.3f,", log.time(r)));
      text.append(
          signals.stream().map(s -> number(log.value(s, r))).collect(Collectors.joining(",")));
    }
    Files.writeString(file, text);
    return new WrittenLog(file, new LogColumns(named));
  }

  private static String number(double value) {
    return Double.isNaN(value) ? "" : Double.toString(value);
  }
}
