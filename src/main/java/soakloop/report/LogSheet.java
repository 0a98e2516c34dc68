package soakloop.report;

import java.util.List;
import java.util.Optional;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.reading.LogReading;
import soakloop.reading.PullReading;
import soakloop.reading.RpmMatch;

/**
 * One log as it is shown.
 *
 * @param label short name, different from those of the other logs beside it
 * @param reading what it shows
 * @param joined how further files were laid over its time, in their order
 */
public record LogSheet(String label, LogReading reading, List<Joined> joined) {
  /**
   * A file that was joined to the log.
   *
   * @param name the file's
   * @param match where its clock lies
   */
  public record Joined(String name, RpmMatch match) {}

  /** Copies the list. */
  public LogSheet {
    joined = List.copyOf(joined);
  }

  Log log() {
    return reading.log();
  }

  boolean has(Signal signal) {
    return reading.updates(signal).size() > 0;
  }

  /** Returns the pulls that were not lifted early. */
  List<PullReading> whole() {
    return reading.table().stream().filter(r -> !r.pull().aborted()).toList();
  }

  /** Returns the first whole pull that is read at the counted speed. */
  Optional<PullReading> firstCounted() {
    return whole().stream().filter(r -> r.counted().isPresent()).findFirst();
  }

  /** Returns the last whole pull that is read at the counted speed. */
  Optional<PullReading> lastCounted() {
    return whole().stream().filter(r -> r.counted().isPresent()).reduce((a, b) -> b);
  }
}
