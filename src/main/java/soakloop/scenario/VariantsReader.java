package soakloop.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads variants: scenarios that differ from the one they stand in by whole sections. That each can
 * be run is found out when it is asked for.
 */
final class VariantsReader {
  private static final String KEY = "variants";
  private static final String NAME = "name";

  private VariantsReader() {}

  /** Checks names, and that all else are sections of a scenario. */
  static void check(In root) {
    Set<String> names = new HashSet<>();
    for (In variant : root.sections(KEY)) {
      Optional<String> name = variant.text(NAME);
      if (name.isPresent() && !names.add(name.get())) {
        variant.problem(NAME, "`" + Node.Scalar.shown(name.get()) + "` stands in this list twice");
      }
      if (variant.entries().size() < 2 && name.isPresent()) {
        variant.problem("", "differs in nothing; give it a section such as core");
      }
      for (Node.Entry entry : variant.entries()) {
        if (!entry.key().equals(NAME)) {
          section(variant, entry.key());
        }
      }
    }
  }

  private static void section(In variant, String key) {
    boolean known = KeyTable.get().kindOf(key).isPresent() || KeyTable.get().find(key).isPresent();
    if (!known || key.equals(KEY) || key.contains(".")) {
      variant.problem(
          Node.Scalar.shown(key),
          Nearest.to(key, KeyTable.get().below(""))
              .map(near -> "is no section of a scenario; did you mean `" + near + "`?")
              .orElse("is no section of a scenario"));
    }
  }

  /**
   * Makes the variants of a source.
   *
   * @return one for each, without variants of their own; none if there are none
   */
  static List<Source> of(Source source) {
    List<Source> all = new ArrayList<>();
    Node listed =
        source.root().find(KEY).map(Node.Entry::value).orElse(new Node.Items(List.of(), Mark.NONE));
    if (listed instanceof Node.Items items) {
      for (Node item : items.items()) {
        if (item instanceof Node.Section section) {
          all.add(source.variant(name(section), merged(source.root(), section)));
        }
      }
    }
    return all;
  }

  private static String name(Node.Section variant) {
    return variant
        .find(NAME)
        .map(Node.Entry::value)
        .map(v -> v instanceof Node.Scalar s ? s.text().strip() : "")
        .orElse("");
  }

  private static Node.Section merged(Node.Section root, Node.Section variant) {
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry entry : root.entries()) {
      if (!entry.key().equals(KEY) && variant.find(entry.key()).isEmpty()) {
        entries.add(entry);
      }
    }
    variant.entries().stream().filter(e -> !e.key().equals(NAME)).forEach(entries::add);
    return new Node.Section(entries, root.mark());
  }
}
