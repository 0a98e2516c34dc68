package soakloop.app;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import soakloop.log.Signal;
import soakloop.reading.Finding;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;

/** What a log shows, in a line or two. */
final class LogInShort {
  /** Pulls whose times are told. */
  private static final int TIMED = 8;

  private LogInShort() {}

  /** Returns the pulls; empty if the log has no channel that could show one. */
  static Optional<String> pulls(LogReading reading) {
    List<Pull> pulls = reading.pulls();
    if (pulls.isEmpty()) {
      return reading.log().has(Signal.ENGINE_SPEED) ? Optional.of("no pull") : Optional.empty();
    }
    long lifted = pulls.stream().filter(Pull::aborted).count();
    String starts =
        pulls.stream()
            .limit(TIMED)
            .map(p -> String.format(Locale.ROOT, "%.0f", p.start()))
            .collect(Collectors.joining(", "));
    return Optional.of(
        (pulls.size() == 1 ? "1 pull" : pulls.size() + " pulls")
            + (lifted > 0 ? ", " + lifted + " lifted early" : "")
            + ", from "
            + starts
            + (pulls.size() > TIMED ? ", ..." : "")
            + " s in the log's time");
  }

  /** Returns the findings by kind, with their channels; empty if there is none. */
  static Optional<String> findings(LogReading reading) {
    Map<Finding.Kind, TreeSet<Signal>> kinds = new EnumMap<>(Finding.Kind.class);
    for (Finding finding : reading.findings()) {
      TreeSet<Signal> of = kinds.computeIfAbsent(finding.kind(), k -> new TreeSet<>());
      finding.signal().ifPresent(of::add);
    }
    return kinds.isEmpty()
        ? Optional.empty()
        : Optional.of(
            kinds.entrySet().stream()
                .map(e -> e.getKey().label() + channels(e.getValue()))
                .collect(Collectors.joining("; ")));
  }

  private static String channels(java.util.Set<Signal> signals) {
    return signals.isEmpty()
        ? ""
        : " (" + signals.stream().map(Signal::label).collect(Collectors.joining(", ")) + ")";
  }
}
