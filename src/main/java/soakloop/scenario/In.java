package soakloop.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soakloop.quantity.Curve;
import soakloop.quantity.Estimate;

/**
 * Reads one section of a scenario by the key table. What is wrong is noted and replaced by
 * something allowed, so that reading goes on and all problems are found at once.
 *
 * <p>A section that is not there reads as an empty one; of that, nothing is missed but the section.
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
      return stated(key, entry.get(), spec);
    }
    if (spec.defaultEstimate().isPresent()) {
      Estimate estimate = spec.defaultEstimate().get();
      context.value(path(key), spec.dimension().orElseThrow(), estimate, true);
      context.assumed(path(key), spec);
      return estimate.value();
    }
    missing(key);
    return fallback(spec).value();
  }

  /** Returns a value if it is there. */
  OptionalDouble optional(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    return entry.isPresent()
        ? OptionalDouble.of(stated(key, entry.get(), spec))
        : OptionalDouble.empty();
  }

  int count(String key) {
    return (int) number(key);
  }

  Optional<String> text(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty() && !spec.optional()) {
      missing(key);
    }
    return entry.flatMap(e -> scalar(e, spec)).map(s -> s.text().strip());
  }

  /** Returns a word that is there, or the default. */
  String choice(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    List<String> allowed =
        spec.takes() == KeySpec.Takes.SWITCH ? List.of("on", "off") : spec.choices();
    if (entry.isEmpty()) {
      if (spec.defaultText().isEmpty()) {
        missing(key);
        return allowed.get(0);
      }
      context.assumed(path(key), spec);
      return spec.defaultText().get();
    }
    Optional<Node.Scalar> word = scalar(entry.get(), spec);
    if (word.isEmpty() || allowed.contains(word.get().text())) {
      return word.map(Node.Scalar::text).orElse(allowed.get(0));
    }
    context.problem(
        word.get().mark(),
        path(key),
        "found `" + word.get().shown() + "`; allowed: " + Wanted.oneOf(allowed));
    return allowed.get(0);
  }

  boolean on(String key) {
    return choice(key).equals("on");
  }

  /** Returns the word that is there or assumed; empty if a quantity is there instead. */
  Optional<String> word(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty()) {
      context.assumed(path(key), spec);
      return spec.defaultText();
    }
    return entry.get().value() instanceof Node.Scalar s && spec.choices().contains(s.text())
        ? Optional.of(s.text())
        : Optional.empty();
  }

  /** Returns a curve that is there or assumed; a single value is a level one. */
  Optional<Curve> curve(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty() && spec.defaultEstimate().isPresent()) {
      return Optional.of(Curve.constant(number(key)));
    }
    if (entry.isEmpty() && !spec.optional()) {
      missing(key);
    }
    return entry.map(e -> new CurveReader(context, path(key), spec).read(e.value()));
  }

  /** Returns a section; one that is not there reads as empty, and is noted if it is needed. */
  In section(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty() && !spec.optional()) {
      missing(key);
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
        entry.flatMap(e -> section(e.value(), path(key), KeyTable.get().require(tablePath)));
    Mark at = entry.map(Node.Entry::mark).orElse(mark);
    return new In(context, path(key), tablePath, found, at);
  }

  private Optional<Node.Section> section(Node node, String at, KeySpec spec) {
    if (node instanceof Node.Section s) {
      return Optional.of(s);
    }
    context.problem(node.mark(), at, "is " + node.kind() + "; it takes " + Wanted.by(spec));
    return Optional.empty();
  }

  /** Returns the items of a list that is there. */
  List<Node> items(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty()) {
      if (!spec.optional()) {
        missing(key);
      }
      return List.of();
    }
    Node node = entry.get().value();
    if (node instanceof Node.Items items && !items.items().isEmpty()) {
      return items.items();
    }
    String takes =
        node instanceof Node.Items
            ? "; it needs one item at least"
            : "; it takes " + Wanted.by(spec);
    context.problem(node.mark(), path(key), "is " + node.kind() + takes);
    return List.of();
  }

  /** Returns the items of a list that is there, without reading it. */
  List<Node> peek(String key) {
    return entry(key)
        .map(Node.Entry::value)
        .filter(Node.Items.class::isInstance)
        .map(node -> ((Node.Items) node).items())
        .orElse(List.of());
  }

  /** Returns a section that stands in a list among other things. */
  In item(String key, Node.Section item) {
    return new In(context, path(key), join(table, key), Optional.of(item), item.mark());
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
      Node item = items.get(i);
      String itemPath = path(key) + "." + (i + 1);
      if (item instanceof Node.Section s) {
        found.add(new In(context, itemPath, tablePath, Optional.of(s), s.mark()));
      } else {
        String keys = String.join(", ", KeyTable.get().below(tablePath));
        context.problem(item.mark(), itemPath, "is " + item.kind() + "; it takes keys: " + keys);
      }
    }
    return found;
  }

  /** Returns the entries of this section without reading them. */
  List<Node.Entry> entries() {
    return section.map(Node.Section::entries).orElse(List.of());
  }

  /** Returns a value that says something of the model, not of the car: no study may move it. */
  double ofModel(String key) {
    KeySpec spec = spec(key);
    Optional<Node.Entry> entry = entry(key);
    if (entry.isEmpty()) {
      missing(key);
    }
    return entry.flatMap(e -> quantity(key, e, spec)).orElse(fallback(spec)).value();
  }

  /** Checks a value that has no use here and does no harm. */
  void idle(String key) {
    KeySpec spec = spec(key);
    entry(key).ifPresent(e -> quantity(key, e, spec));
  }

  /** Lets a key be, whatever it holds: another problem stands for it. */
  void ignore(String key) {
    read.add(key);
  }

  /** Notes a key that may not stand here, and why. */
  void refuse(String key, String why) {
    KeyTable.get().require(join(table, key));
    read.add(key);
    if (has(key)) {
      problem(key, why);
    }
  }

  /** Notes every key that was never asked for. */
  void done() {
    section.ifPresent(s -> strangers(new Strangers(table, s, read), true));
  }

  /** Notes every key that nothing could ask for, where reading broke off before the end. */
  void brokenOff() {
    section.ifPresent(s -> strangers(new Strangers(table, s, read), false));
  }

  private void strangers(Strangers strangers, boolean readToTheEnd) {
    for (Node.Entry entry : entries()) {
      if (!read.contains(entry.key()) && (readToTheEnd || !strangers.isKnown(entry.key()))) {
        context.problem(
            entry.mark(), path(Node.Scalar.shown(entry.key())), strangers.say(entry.key()));
      }
    }
  }

  private double stated(String key, Node.Entry entry, KeySpec spec) {
    Optional<Estimate> estimate = quantity(key, entry, spec);
    estimate.ifPresent(e -> context.value(path(key), spec.dimension().orElseThrow(), e, false));
    return estimate.orElse(fallback(spec)).value();
  }

  private Optional<Estimate> quantity(String key, Node.Entry entry, KeySpec spec) {
    QuantityReader reader = new QuantityReader(context, path(key), spec);
    return scalar(entry, spec)
        .flatMap(spec.takes() == KeySpec.Takes.COUNT ? reader::count : reader::value);
  }

  private Optional<Node.Scalar> scalar(Node.Entry entry, KeySpec spec) {
    if (entry.value() instanceof Node.Scalar s && !s.text().isBlank()) {
      return Optional.of(s);
    }
    context.problem(
        entry.value().mark(),
        path(entry.key()),
        "is " + entry.value().kind() + "; it takes " + Wanted.by(spec));
    return Optional.empty();
  }

  private void missing(String key) {
    if (present()) {
      context.problem(mark, path(key), Wanted.missing(spec(key)));
    }
  }

  private static Estimate fallback(KeySpec spec) {
    return spec.defaultEstimate().or(spec::low).or(spec::high).orElse(Estimate.exactly(1));
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

  private static String join(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
