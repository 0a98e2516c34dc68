package soakloop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soakloop.quantity.Estimate;
import soakloop.scenario.KeySpec;
import soakloop.scenario.Scenario;
import soakloop.scenario.Stated;

/** Finds the keys of a scenario that carry a spread. */
public final class UncertainKeys {
  /** A point of a curve: its number, and that the second of the pair is meant. */
  private static final Pattern POINT = Pattern.compile("(.+)\\.\\d+\\.2");

  private UncertainKeys() {}

  /**
   * Returns the keys in the order in which the scenario is read.
   *
   * @param scenario which
   */
  public static List<UncertainKey> of(Scenario scenario) {
    Map<String, List<Stated>> groups = new LinkedHashMap<>();
    for (Stated stated : scenario.values()) {
      if (stated.estimate().spread() > 0) {
        groups.computeIfAbsent(name(stated), n -> new ArrayList<>()).add(stated);
      }
    }
    List<UncertainKey> keys = new ArrayList<>();
    groups.forEach((name, group) -> key(name, group).ifPresent(keys::add));
    return List.copyOf(keys);
  }

  private static String name(Stated stated) {
    Matcher point = POINT.matcher(stated.key());
    boolean curve =
        KeyLookup.spec(stated.key()).filter(s -> s.takes() == KeySpec.Takes.CURVE).isPresent();
    return curve && point.matches() ? point.group(1) : stated.key();
  }

  private static Optional<UncertainKey> key(String name, List<Stated> group) {
    Optional<KeySpec> spec = KeyLookup.spec(name);
    if (spec.isEmpty()) {
      return Optional.empty();
    }
    List<UncertainKey.Part> parts =
        group.stream().flatMap(s -> part(s, spec.get()).stream()).toList();
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    boolean assumed = group.stream().anyMatch(Stated::assumed);
    return Optional.of(
        new UncertainKey(name, spec.get().means(), group.get(0).dimension(), assumed, parts));
  }

  /** Returns the interval within what the key may take; empty if nothing of it is left. */
  private static Optional<UncertainKey.Part> part(Stated stated, KeySpec spec) {
    double value = stated.estimate().value();
    double spread = stated.estimate().spread();
    double low = spec.low().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
    double high = spec.high().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
    double from = Math.max(low, value - spread);
    double to = Math.min(high, value + spread);
    boolean clipped = from > value - spread || to < value + spread;
    return from < to
        ? Optional.of(new UncertainKey.Part(stated.key(), value, from, to, clipped))
        : Optional.empty();
  }
}
