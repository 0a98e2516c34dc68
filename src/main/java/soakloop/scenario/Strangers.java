package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Says what may have been meant by a key that a section does not know. */
final class Strangers {
  private static final int MAX_HOMES = 3;

  private final String table;
  private final Node.Section section;
  private final Set<String> read;

  /**
   * Looks at a section.
   *
   * @param table its path in the key table
   * @param section what was written
   * @param read keys that were asked for
   */
  Strangers(String table, Node.Section section, Set<String> read) {
    this.table = table;
    this.section = section;
    this.read = read;
  }

  /** Returns whether the table knows the key here, or it is the name of a piece of the loop. */
  boolean isKnown(String key) {
    return KeyTable.get().below(table).contains(key)
        || (table.isEmpty() && KeyTable.get().kindOf(key).isPresent());
  }

  /** Returns what to say of a key that nobody asked for. */
  String say(String key) {
    Set<String> known = known();
    List<String> free = known.stream().filter(k -> section.find(k).isEmpty()).toList();
    Optional<String> near = Nearest.to(key, free);
    if (isKnown(key)) {
      if (!table.isEmpty() || KeyTable.get().kindOf(key).isEmpty()) {
        return "has no use beside the other keys here";
      }
      return near.isPresent()
          ? "is not in the loop; did you mean `" + near.get() + "`?"
          : "is not in the loop; name it in `loop` where the coolant meets it, or take it out";
    }
    List<String> homes = homes(key);
    if (!homes.isEmpty()) {
      return "does not stand here; it goes under " + Wanted.oneOf(homes);
    }
    return near.isPresent()
        ? "is not a key; did you mean `" + near.get() + "`?"
        : "is not a key; known here: " + String.join(", ", known);
  }

  private Set<String> known() {
    Set<String> known = new TreeSet<>(read);
    for (String key : KeyTable.get().below(table)) {
      if (!key.startsWith("*")) {
        known.add(key);
      }
    }
    return known;
  }

  /** Returns the sections that know a key that slipped out of its own, if they are few. */
  private List<String> homes(String key) {
    List<String> homes = new ArrayList<>();
    if (!table.isEmpty()) {
      return homes;
    }
    for (KeySpec spec : KeyTable.get().specs()) {
      if (spec.key().endsWith("." + key)) {
        homes.add(spec.key().substring(0, spec.key().length() - key.length() - 1).replace("*", ""));
      }
    }
    return homes.size() > MAX_HOMES ? List.of() : homes;
  }
}
