package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.reading.Pull;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/**
 * Holds the pulls that a log shows against those of the session. A pull's place is where it passes
 * the engine speed that the session counts it at, so that it does not matter where either lets it
 * begin; where the log does not tell, its end.
 */
final class PullsApart {
  /** How far a logged pull may lie from the session's, besides how well it is known, s. */
  private static final double APART = 1;

  /** Pulls that are named one by one. */
  private static final int NAMED = 3;

  private final Scenario.Logged logged;
  private final Trace trace;
  private final boolean replayed;

  private PullsApart(Scenario.Logged logged, Trace trace) {
    this.logged = logged;
    this.trace = trace;
    this.replayed = trace.spans().stream().anyMatch(s -> s.phase().drive() instanceof Drive.Replay);
  }

  /** Returns a warning if they do not lie where the session's do. */
  static Optional<Warning> of(Scenario.Logged logged, Trace trace) {
    return new PullsApart(logged, trace)
        .message()
        .map(message -> new Warning(Warning.Kind.PULLS_APART, message));
  }

  private Optional<String> message() {
    double first = logged.log().time(0) - logged.startsAt();
    double last = logged.log().endTime() - logged.startsAt();
    List<Trace.Span> stated =
        trace.pulls().stream().filter(s -> s.start() >= first && s.end() <= last).toList();
    List<Pull> shown =
        logged.reading().pulls().stream()
            .filter(p -> place(p) > 0 && place(p) < trace.time(trace.size() - 1))
            .toList();
    List<Pull> whole = shown.stream().filter(p -> !p.aborted()).toList();
    if (stated.isEmpty() || (shown.isEmpty() && !tellsPulls())) {
      return Optional.empty();
    }
    if (shown.size() == stated.size()) {
      return apart(stated, shown);
    }
    if (whole.size() == stated.size()) {
      return apart(stated, whole);
    }
    if (replayed && shown.size() > stated.size()) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "the log %s shows %s where the session has %d; they do not belong to each other",
            logged.log().name(),
            shown.isEmpty() ? "no pull" : count(shown.size()),
            stated.size()));
  }

  private boolean tellsPulls() {
    return logged.log().has(Signal.ENGINE_SPEED);
  }

  private double place(Pull pull) {
    return (pull.start() + pull.end()) / 2 - logged.startsAt();
  }

  private Optional<String> apart(List<Trace.Span> stated, List<Pull> shown) {
    List<String> apart = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < stated.size(); i++) {
      double later = later(stated.get(i), shown.get(i));
      least = Math.min(least, later);
      most = Math.max(most, later);
      if (Math.abs(later) > APART + shown.get(i).within()) {
        apart.add(stated.get(i).phase().name() + " " + words(later));
      }
    }
    if (apart.isEmpty()) {
      return Optional.empty();
    }
    String log = "the log " + logged.log().name();
    double middle = (least + most) / 2;
    if (most - least <= 2 * APART && !replayed) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "%s has its pulls %s than the session; `starts-at: %.1f s` under log lays them over"
                  + " each other",
              log,
              words(middle),
              logged.startsAt() + middle));
    }
    int more = apart.size() - NAMED;
    String list =
        String.join(", ", apart.subList(0, Math.min(NAMED, apart.size())))
            + (more > 0 ? " and " + more + " more" : "");
    return Optional.of(
        log + " has " + list + " than the session; what is compared there is not the same moment");
  }

  private static String count(int pulls) {
    return pulls == 1 ? "one pull" : pulls + " pulls";
  }

  private static String words(double later) {
    return String.format(
        Locale.ROOT, "%.1f s %s", Math.abs(later), later > 0 ? "later" : "earlier");
  }

  /** How much later the logged pull is, s. */
  private double later(Trace.Span stated, Pull shown) {
    double counted = trace.at(Channel.ENGINE_SPEED, stated.countedAt() - 1e-9);
    double from = shown.start() - logged.startsAt() - shown.within();
    double to = shown.end() - logged.startsAt() + shown.within();
    return Polyline.of(logged, Signal.ENGINE_SPEED)
        .map(speed -> speed.between(from, to).risesTo(counted))
        .filter(java.util.OptionalDouble::isPresent)
        .map(at -> at.getAsDouble() - stated.countedAt())
        .orElse(shown.end() - logged.startsAt() - stated.end());
  }
}
