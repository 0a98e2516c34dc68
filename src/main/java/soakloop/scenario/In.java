package soakloop.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;

/**
 * Reads one section of a scenario by the key table. What is wrong is noted and replaced by
 * something allowed, so that reading goes on and all problems are found at once.
 */
final class In {
  private final Context context;
  private final String path;
  private final String table;
  private final Optional<Node.Section> section;
  private final Mark mark;
  private final Set<String> read = new HashSet<>();

  private In(
      Context context, String path, String table, Optional<Node.Section> section, Mark mark) {
    this.context = context;
    this.path = path;
    this.table = table;
    this.section = section;
    this.mark = mark;
  }

  static In root(Context context, Node.Section section) {
    return new In(context, "", "", Optional.of(section), section.mark());
  }

  boolean present() {
    return section.isPresent();
  }

  Mark mark() {
    return mark;
  }

  Context context() {
    return context;
  }

  /** Returns a key's full path. */
  String path(String key) {
    return join(path, key);
  }

  /** Notes a problem with one of this section's keys, or with the section for an empty key. */
  void problem(String key, String message) {
    Mark at = entry(key).map(Node.Entry::mark).orElse(mark);
    context.problem(at, key.isEmpty() ? path : path(key), message);
  }

  boolean has(String key) {
    return entry(key).isPresent();
  }

  /** Returns a value that is there, or its default, or notes that it is missing. */
  double number(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isPresent()) {
      return quantity(entry.get(), spec).value();
    }
    if (spec.defaultEstimate().isPresent()) {
      Estimate estimate = spec.defaultEstimate().get();
      context.value(path(key), spec.dimension().orElseThrow(), estimate, true);
      context.assumed(path(key), spec);
      return estimate.value();
    }
    missing(key, spec);
    return fallback(spec).value();
  }

  /** Returns a value if it is there. */
  OptionalDouble optional(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    return entry.isPresent()
        ? OptionalDouble.of(quantity(entry.get(), spec).value())
        : OptionalDouble.empty();
  }

  int count(String key) {
    double value = number(key);
    if (value != Math.rint(value)) {
      problem(key, "found `" + written(key) + "`, which must be a whole number");
      return (int) Math.ceil(fallback(spec(key)).value());
    }
    return (int) value;
  }

  Optional<String> text(String key) {
    spec(key);
    return entry(key).flatMap(this::scalar);
  }

  /** Returns a word that is there, or the default. */
  String choice(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    List<String> allowed =
        spec.takes() == KeySpec.Takes.SWITCH ? List.of("on", "off") : spec.choices();
    if (entry.isEmpty()) {
      if (spec.defaultText().isEmpty()) {
        missing(key, spec);
        return allowed.get(0);
      }
      if (!isCooling(spec)) {
        context.assumed(path(key), spec);
      }
      return spec.defaultText().get();
    }
    Optional<String> word = scalar(entry.get());
    if (word.isPresent() && !allowed.contains(word.get())) {
      context.problem(
          entry.get().value().mark(),
          path(key),
          "found `" + word.get() + "`; allowed: " + String.join(", ", allowed));
      return allowed.get(0);
    }
    return word.orElse(allowed.get(0));
  }

  boolean on(String key) {
    return choice(key).equals("on");
  }

  /** Returns a word if one of the key's words is there, else empty: then it is a quantity. */
  Optional<String> word(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty()) {
      context.assumed(path(key), spec);
      return spec.defaultText();
    }
    return entry
        .filter(e -> e.value() instanceof Node.Scalar s && spec.choices().contains(s.text()))
        .flatMap(this::scalar);
  }

  /** Returns a curve if it is there; a single value is a level one. */
  Optional<Curve> curve(String key) {
    KeySpec spec = spec(key);
    return entry(key).map(e -> new CurveReader(context, path(key), spec).read(e.value()));
  }

  /** Returns a section; one that is not there reads as empty, and is noted if it is needed. */
  In section(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty() && !spec.optional()) {
      missing(key, spec);
    }
    return under(key, spec.key(), entry);
  }

  /** Returns a section at the top that is called by a name of the user's. */
  In named(String name, String kind) {
    read.add(name);
    context.asked(KeyTable.get().require(kind));
    return under(name, kind, entry(name));
  }

  private In under(String key, String tablePath, Optional<Node.Entry> entry) {
    Optional<Node.Section> found =
        entry.flatMap(
            e -> {
              if (e.value() instanceof Node.Section s) {
                return Optional.of(s);
              }
              context.problem(
                  e.value().mark(),
                  path(key),
                  "is " + e.value().kind() + "; it takes a section of keys: " + keysOf(tablePath));
              return Optional.empty();
            });
    Mark at = entry.map(Node.Entry::mark).orElse(mark);
    return new In(context, path(key), tablePath, found, at);
  }

  /** Returns the items of a list that is there. */
  List<Node> items(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty()) {
      if (!spec.optional()) {
        missing(key, spec);
      }
      return List.of();
    }
    if (entry.get().value() instanceof Node.Items items) {
      return items.items();
    }
    context.problem(
        entry.get().value().mark(),
        path(key),
        "is " + entry.get().value().kind() + "; it takes a list");
    return List.of();
  }

  /** Returns the sections that a list is made of; their paths count from 1. */
  List<In> sections(String key) {
    return sections(key, join(table, key));
  }

  /** The same, read by another part of the key table. */
  List<In> sections(String key, String tablePath) {
    List<In> found = new ArrayList<>();
    List<Node> items = items(key);
    for (int i = 0; i < items.size(); i++) {
      String itemPath = path(key) + "." + (i + 1);
      if (items.get(i) instanceof Node.Section s) {
        found.add(new In(context, itemPath, tablePath, Optional.of(s), s.mark()));
      } else {
        context.problem(
            items.get(i).mark(),
            itemPath,
            "is " + items.get(i).kind() + "; it takes one of: " + keysOf(tablePath));
      }
    }
    return found;
  }

  /** Returns the entries of this section without reading them. */
  List<Node.Entry> entries() {
    return section.map(Node.Section::entries).orElse(List.of());
  }

  /** Notes every key that was never asked for. */
  void done() {
    for (Node.Entry entry : entries()) {
      if (!read.contains(entry.key())) {
        unknown(entry);
      }
    }
  }

  private void unknown(Node.Entry entry) {
    List<String> known = new ArrayList<>(KeyTable.get().below(table));
    known.addAll(read);
    known.removeIf(k -> k.startsWith("*"));
    Optional<String> near = Nearest.to(entry.key(), known);
    String help =
        near.isPresent()
            ? "did you mean `" + near.get() + "`?"
            : "known here: " + String.join(", ", new java.util.TreeSet<>(known));
    context.problem(entry.mark(), path(entry.key()), "is not a key; " + help);
  }

  private Estimate quantity(Node.Entry entry, KeySpec spec) {
    Optional<String> text = scalar(entry);
    if (text.isEmpty()) {
      return fallback(spec);
    }
    Dimension dimension = spec.dimension().orElseThrow();
    Mark at = entry.value().mark();
    try {
      Estimate estimate = context.quantity(text.get(), dimension);
      if (Ranges.outside(estimate.value(), spec)) {
        context.problem(
            at, path(entry.key()), "found `" + text.get() + "`; allowed: " + Ranges.of(spec));
        return fallback(spec);
      }
      context.value(path(entry.key()), dimension, estimate, false);
      return estimate;
    } catch (QuantityException e) {
      context.problem(at, path(entry.key()), "found `" + text.get() + "`, which " + e.getMessage());
      return fallback(spec);
    }
  }

  private Optional<String> scalar(Node.Entry entry) {
    if (entry.value() instanceof Node.Scalar s && !s.text().isBlank()) {
      return Optional.of(s.text().strip());
    }
    String found =
        entry.value() instanceof Node.Scalar ? "has no value" : "is " + entry.value().kind();
    context.problem(entry.value().mark(), path(entry.key()), found + "; it takes a single value");
    return Optional.empty();
  }

  private String written(String key) {
    return entry(key)
        .map(Node.Entry::value)
        .map(v -> v instanceof Node.Scalar s ? s.text() : v.kind())
        .orElse("");
  }

  private void missing(String key, KeySpec spec) {
    context.problem(mark, path(key), "is missing: " + spec.means() + Ranges.hint(spec));
  }

  private static Estimate fallback(KeySpec spec) {
    return spec.defaultEstimate().or(spec::low).or(spec::high).orElse(Estimate.exactly(1));
  }

  private static boolean isCooling(KeySpec spec) {
    return spec.takes() == KeySpec.Takes.SWITCH
        || spec.key().endsWith(".car-fan")
        || spec.key().equals("units");
  }

  private KeySpec spec(String key) {
    read.add(key);
    KeySpec spec = KeyTable.get().require(join(table, key));
    context.asked(spec);
    return spec;
  }

  private Optional<Node.Entry> entry(String key) {
    return section.flatMap(s -> s.find(key));
  }

  private static String keysOf(String tablePath) {
    return String.join(", ", KeyTable.get().below(tablePath));
  }

  private static String join(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
