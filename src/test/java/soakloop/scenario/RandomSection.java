package soakloop.scenario;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** One section of a random scenario, in YAML's flow style. */
final class RandomSection {
  private final Draw draw;
  private final RandomValue values;
  private final String table;

  /** How often a key that may be left out is there, 0 to 1. */
  private final double density;

  private final Map<String, String> entries = new LinkedHashMap<>();

  RandomSection(Draw draw, RandomValue values, double density, String table) {
    this.draw = draw;
    this.values = values;
    this.density = density;
    this.table = table;
  }

  KeySpec spec(String key) {
    return KeyTable.get().require(table.isEmpty() ? key : table + "." + key);
  }

  /** Starts a section below this one. */
  RandomSection below(String key) {
    return new RandomSection(draw, values, density, spec(key).key());
  }

  /** Starts a section below this one whose values often are ends of their ranges. */
  RandomSection seldom(String key) {
    return new RandomSection(draw, values.oftenAtEnds(), density, spec(key).key());
  }

  /** Starts a section that is called by a name of the user's. */
  RandomSection named(String kind) {
    return new RandomSection(draw, values, density, kind);
  }

  /** Returns whether something that may be left out is there. */
  boolean wanted() {
    return draw.chance(density);
  }

  /** Writes a value that is given. */
  RandomSection put(String key, String value) {
    entries.put(key, value);
    return this;
  }

  /** Writes a section unless it is empty. */
  RandomSection put(String key, RandomSection section) {
    return section.entries.isEmpty() ? this : put(key, section.toString());
  }

  /** Returns the section's text where an empty one means something too. */
  String orEmpty() {
    return toString();
  }

  /** Writes a random value. */
  RandomSection any(String key) {
    return put(key, values.of(spec(key)));
  }

  /** Writes a random value, or leaves the key out. */
  RandomSection perhaps(String key) {
    return wanted() ? any(key) : this;
  }

  /** Writes all keys that stand for themselves: what is needed always, the others perhaps. */
  RandomSection others(String... except) {
    Set<String> no = Set.copyOf(Arrays.asList(except));
    for (String key : KeyTable.get().below(table)) {
      KeySpec spec = spec(key);
      boolean single =
          switch (spec.takes()) {
            case SECTION, LIST, CURVE -> false;
            default -> true;
          };
      if (single && !no.contains(key) && !entries.containsKey(key)) {
        boolean needed = !spec.optional() && spec.defaultText().isEmpty();
        if (needed || wanted()) {
          any(key);
        }
      }
    }
    return this;
  }

  boolean has(String key) {
    return entries.containsKey(key);
  }

  String get(String key) {
    return entries.getOrDefault(key, "");
  }

  /** Returns the text of a whole scenario, a line to a key. */
  String lines() {
    return entries.entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue() + "\n")
        .collect(Collectors.joining());
  }

  static String list(List<String> items) {
    return "[" + String.join(", ", items) + "]";
  }

  @Override
  public String toString() {
    return entries.entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
