package soakloop.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Curve;

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
 * @param coolantFlow of the loop, from the heat balance of the core
 */
public record LogReading(
    Log log,
    Map<Signal, Channel> channels,
    List<Finding> findings,
    List<Pull> pulls,
    List<Wait> waits,
    OptionalDouble countedSpeed,
    List<PullReading> table,
    Effectiveness effectiveness,
    CoolantFlow coolantFlow) {
  /** Keeps the lists as they are. */
  public LogReading {
    channels = Map.copyOf(channels);
    findings = List.copyOf(findings);
    pulls = List.copyOf(pulls);
    waits = List.copyOf(waits);
    table = List.copyOf(table);
  }

  /**
   * Returns the same of a log with the same values, but other remarks.
   *
   * @param other the log
   */
  public LogReading with(Log other) {
    return new LogReading(
        other, channels, findings, pulls, waits, countedSpeed, table, effectiveness, coolantFlow);
  }

  /**
   * Returns a signal at its true updates; none if the log lacks it.
   *
   * @param signal which
   */
  public Updates updates(Signal signal) {
    return Optional.ofNullable(channels.get(signal)).map(Channel::updates).orElse(Updates.none());
  }

  /**
   * Returns a signal at its true updates without those of pulls in which it is stuck; none if the
   * log lacks it.
   *
   * @param signal which
   */
  public Updates usable(Signal signal) {
    Updates all = updates(signal);
    List<Span> stuck =
        findings.stream()
            .filter(f -> f.kind() == Finding.Kind.STUCK && f.signal().equals(Optional.of(signal)))
            .map(Finding::span)
            .toList();
    return stuck.isEmpty()
        ? all
        : all.where(
            i -> stuck.stream().noneMatch(s -> all.time(i) >= s.from() && all.time(i) <= s.to()));
  }

  /**
   * Returns a signal over log time, straight between its true updates; empty if it has none.
   *
   * @param signal which
   */
  public Optional<Curve> curve(Signal signal) {
    Updates all = updates(signal);
    return all.isEmpty() ? Optional.empty() : Optional.of(Curve.of(all.times(), all.values()));
  }

  /**
   * Returns the gauge pressure that the boost channel is cut off at, Pa; empty unless it surely is.
   * There the true boost is at least that.
   */
  public OptionalDouble boostCeiling() {
    Updates boost = updates(Signal.BOOST);
    boolean cut =
        findings.stream()
            .filter(f -> f.kind() == Finding.Kind.SATURATION && f.sureness() == Sureness.SURE)
            .flatMap(f -> f.signal().stream())
            .anyMatch(s -> s == Signal.BOOST || (s == Signal.MANIFOLD_PRESSURE && sameTop(boost)));
    return cut && !boost.isEmpty() ? OptionalDouble.of(boost.highest()) : OptionalDouble.empty();
  }

  /** Whether boost stands at its highest just as often as the absolute pressure: made from it. */
  private boolean sameTop(Updates boost) {
    Updates absolute = updates(Signal.MANIFOLD_PRESSURE);
    return boost.size() == absolute.size() && atTop(boost).size() == atTop(absolute).size();
  }

  private static Updates atTop(Updates updates) {
    double top = updates.highest();
    return updates.where(i -> updates.value(i) == top);
  }
}
