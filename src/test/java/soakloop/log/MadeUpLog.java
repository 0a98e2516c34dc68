package soakloop.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** A made-up session of two minutes: idle, a pull from 40 to 50 s, idle; ten rows a second. */
final class MadeUpLog {
  private static final int ROWS = 1200;

  private MadeUpLog() {}

  /** A value at a time, with the load from 0 to 1. */
  interface Course {
    double at(double time, double load);
  }

  static double load(double t) {
    return t < 40 || t > 50 ? 0 : (t - 40) / 10;
  }

  /** Engine speed, rev/min. */
  static double rpm(double t) {
    return t >= 40 && t <= 50 ? 2600 + 4000 * load(t) : 850;
  }

  /** Writes columns to a file and reads them back. */
  static Log read(Path folder, Map<String, Course> columns, double offUntil, LogColumns said)
      throws IOException, LogException {
    StringBuilder text = new StringBuilder("Time [s],RPM");
    columns.keySet().forEach(name -> text.append(',').append(name));
    for (int i = 0; i < ROWS; i++) {
      double t = i * 0.1;
      text.append(String.format(Locale.ROOT, "%n%.1f,%.0f", t, t < offUntil ? 0 : rpm(t)));
      for (Course course : columns.values()) {
        text.append(String.format(Locale.ROOT, ",%.2f", course.at(t, load(t))));
      }
    }
    Path file = folder.resolve("run.csv");
    Files.writeString(file, text);
    return LogReader.read(file, said);
  }

  static Log.Column column(Log log, String header) {
    return log.columns().stream().filter(c -> c.header().equals(header)).findFirst().orElseThrow();
  }
}
