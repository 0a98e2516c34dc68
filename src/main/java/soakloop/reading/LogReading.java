package soakloop.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.Signal;

/**
 * All that a log shows.
 *
 * @param log the log
 * @param channels its signals at their true updates, swapped ones exchanged
 * @param findings what a reader should know, in the order of {@link Finding.Kind}
 * @param pulls in order of time
 * @param waits between them
 * @param countedSpeed engine speed at which pulls are read, rev/s; empty if they have none in
 *     common
 * @param table one row for each pull
 * @param effectiveness of the core
 */
public record LogReading(
    Log log,
    Map<Signal, Channel> channels,
    List<Finding> findings,
    List<Pull> pulls,
    List<Wait> waits,
    OptionalDouble countedSpeed,
    List<PullReading> table,
    Effectiveness effectiveness) {
  /** Keeps the lists as they are. */
  public LogReading {
    channels = Map.copyOf(channels);
    findings = List.copyOf(findings);
    pulls = List.copyOf(pulls);
    waits = List.copyOf(waits);
    table = List.copyOf(table);
  }

  /**
   * Returns a signal at its true updates; none if the log lacks it.
   *
   * @param signal which
   */
  public Updates updates(Signal signal) {
    return Optional.ofNullable(channels.get(signal)).map(Channel::updates).orElse(Updates.none());
  }
}
