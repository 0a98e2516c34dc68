package soakloop.app;

import java.util.List;
import java.util.Locale;
import soakloop.log.Log;
import soakloop.log.LogException;

/** Makes sure that there is memory enough to study a log, before an hour's work ends without it. */
final class LogRoom {
  /**
   * Memory that a studied value takes at most, bytes: its time and value twice over, its text in
   * the clean log, and its part in charts (measured on a million rows of eight signals, rounded
   * up).
   */
  private static final double PER_VALUE = 100;

  /** Share of the memory that may be filled. */
  private static final double FILLED = 0.85;

  private LogRoom() {}

  /**
   * Checks.
   *
   * @param logs all that are studied together
   * @param memory that Java may take, bytes
   * @throws LogException if they need more; says how to get it
   */
  static void require(List<Log> logs, long memory) throws LogException {
    double needed =
        logs.stream().mapToDouble(l -> PER_VALUE * l.size() * (l.signals().size() + 1.0)).sum();
    if (needed > FILLED * memory) {
      double giga = 1e9;
      throw new LogException(
          List.of(
              String.format(
                  Locale.ROOT,
                  "%s: %,d rows of %d signals take about %.1f GB of memory to study, and Java has"
                      + " %.1f GB here: start it as `java -Xmx%.0fg -jar ...`, or cut the log into"
                      + " sessions",
                  logs.get(0).name(),
                  logs.stream().mapToInt(Log::size).sum(),
                  logs.get(0).signals().size(),
                  needed / giga,
                  memory / giga,
                  Math.ceil(needed / FILLED / giga) + 1)));
    }
  }
}
