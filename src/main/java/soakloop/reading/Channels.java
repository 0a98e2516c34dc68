package soakloop.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import soakloop.log.Log;
import soakloop.log.Signal;

/** The channels of a log at their true refresh, and what was found on the way. */
final class Channels {
  private final Log log;
  private final Map<Signal, Channel> channels = new EnumMap<>(Signal.class);
  private final List<Finding> findings = new ArrayList<>();

  private Channels(Log log) {
    this.log = log;
  }

  /** Reads all channels of a log. */
  static Channels of(Log log) {
    Channels channels = new Channels(log);
    Map<Signal, Updates> rows = new EnumMap<>(Signal.class);
    double[] times = new double[log.size()];
    Arrays.setAll(times, log::time);
    log.signals().forEach(signal -> rows.put(signal, Updates.ofRows(log, signal, times)));
    OptionalInt common = OptionalInt.empty();
    for (Updates each : rows.values()) {
      Refresh alone = new RefreshFinder(each).find(OptionalInt.empty(), quantum(each));
      if (alone.kind() == Refresh.Kind.IN_TURN) {
        common = OptionalInt.of((int) alone.rows());
      }
    }
    for (Map.Entry<Signal, Updates> each : rows.entrySet()) {
      if (!each.getValue().isEmpty()) {
        channels.add(each.getKey(), each.getValue(), common);
      }
    }
    return channels;
  }

  private void add(Signal signal, Updates rows, OptionalInt common) {
    double quantum = quantum(rows);
    RefreshFinder finder = new RefreshFinder(rows);
    Refresh refresh = finder.find(common, quantum);
    Updates measured = finder.updates(refresh);
    Updates good = new SpikeCheck(log, signal, quantum).clean(measured, findings);
    double noise = Numbers.noise(good.values());
    Channel channel = new Channel(signal, refresh, quantum, noise, good);
    ChannelWords.describe(log, channel).forEach(findings::add);
    channels.put(signal, channel);
  }

  /**
   * Smallest step between two different values, SI; 0 for fewer than two. Differences under a
   * billionth of the value are what remains of converting units.
   */
  static double quantum(Updates updates) {
    double[] sorted = updates.values();
    Arrays.sort(sorted);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < sorted.length; i++) {
      double step = sorted[i] - sorted[i - 1];
      if (step > 1e-9 * Math.abs(sorted[i]) && step < least) {
        least = step;
      }
    }
    return Double.isFinite(least) ? least : 0;
  }

  /** Exchanges what two signals hold. */
  void exchange(Signal one, Signal other) {
    Channel first = channels.get(one);
    Channel second = channels.get(other);
    if (first != null && second != null) {
      channels.put(one, named(one, second));
      channels.put(other, named(other, first));
    }
  }

  private static Channel named(Signal signal, Channel of) {
    return new Channel(signal, of.refresh(), of.quantum(), of.noise(), of.updates());
  }

  Log log() {
    return log;
  }

  Map<Signal, Channel> all() {
    return channels;
  }

  Optional<Channel> find(Signal signal) {
    return Optional.ofNullable(channels.get(signal));
  }

  /** A signal's updates; none if the log lacks it. */
  Updates updates(Signal signal) {
    return find(signal).map(Channel::updates).orElse(Updates.none());
  }

  List<Finding> findings() {
    return findings;
  }
}
