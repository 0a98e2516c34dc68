package soakloop.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;

/**
 * What a scenario was read from. Immutable; changed scenarios come from {@link #with}. Logs and
 * quantities once read are kept, so that reading a changed scenario costs little.
 */
public final class Source {
  /** A source that says nothing. */
  static final Source EMPTY =
      of("", "", Path.of(""), new YamlText.Sections(Node.Section.EMPTY, List.of()));

  /** Sections that say nothing of the car. */
  private static final Set<String> ABOUT = Set.of("title", "about", "units", "variants", "fitted");

  private final String name;
  private final String file;
  private final Path folder;
  private final Node.Section root;
  private final List<Problem> problems;
  private final Context.Quantities quantities;
  private final Map<LogKey, LogReading> logs;
  private final Optional<LogReading> known;

  private final Map<Reckoned, LogReading> reckonings;

  private record LogKey(Path file, LogColumns columns) {}

  /** A log whose pressures are reckoned by a stated barometer, Pa. */
  private record Reckoned(String file, LogColumns columns, double barometer) {}

  /** A sweep over the day's pressure makes one for each point. */
  private static final int MOST_RECKONINGS = 64;

  private Source(
      String name,
      String file,
      Path folder,
      Node.Section root,
      List<Problem> problems,
      Context.Quantities quantities,
      Map<LogKey, LogReading> logs,
      Map<Reckoned, LogReading> reckonings,
      Optional<LogReading> known) {
    this.name = name;
    this.file = file;
    this.folder = folder;
    this.root = root;
    this.problems = problems;
    this.quantities = quantities;
    this.logs = logs;
    this.reckonings = reckonings;
    this.known = known;
  }

  static Source of(String name, String file, Path folder, YamlText.Sections text) {
    return new Source(
        name,
        file,
        folder,
        text.root(),
        text.problems(),
        new Context.Quantities(),
        new ConcurrentHashMap<>(),
        new ConcurrentHashMap<>(),
        Optional.empty());
  }

  /** Makes a source whose log is known already, whatever it calls it. */
  static Source beside(LogReading reading, String name, Path folder, YamlText.Sections text) {
    return new Source(
        name,
        name,
        folder,
        text.root(),
        text.problems(),
        new Context.Quantities(),
        new ConcurrentHashMap<>(),
        new ConcurrentHashMap<>(),
        Optional.of(reading));
  }

  /** Returns the scenario's short name. */
  public String name() {
    return name;
  }

  /** Returns the file as messages call it. */
  public String file() {
    return file;
  }

  Node.Section root() {
    return root;
  }

  /** Returns what was found wrong before any key was read. */
  List<Problem> problems() {
    return problems;
  }

  Context.Quantities quantities() {
    return quantities;
  }

  /**
   * Returns a log and what it shows.
   *
   * @param barometer that the scenario states, Pa
   */
  LogReading log(String relative, LogColumns columns, OptionalDouble barometer)
      throws LogException {
    if (known.isPresent()) {
      return known.get();
    }
    LogReading read = log(relative, columns);
    if (barometer.isEmpty()) {
      return read;
    }
    Log reckoned = read.log().withBarometer(barometer.getAsDouble());
    if (reckoned.signals().equals(read.log().signals())) {
      return read.with(reckoned);
    }
    return reckoned(new Reckoned(relative, columns, barometer.getAsDouble()), reckoned);
  }

  private LogReading reckoned(Reckoned key, Log log) {
    LogReading read = reckonings.get(key);
    if (read == null) {
      read = LogStudy.of(log, LogOptions.DEFAULTS);
      if (reckonings.size() >= MOST_RECKONINGS) {
        reckonings.clear();
      }
      reckonings.put(key, read);
    }
    return read;
  }

  private LogReading log(String relative, LogColumns columns) throws LogException {
    Path path = folder.resolve(relative);
    LogKey key = new LogKey(path, columns);
    LogReading read = logs.get(key);
    if (read == null) {
      read = LogStudy.of(LogReader.read(path, columns), LogOptions.DEFAULTS);
      logs.put(key, read);
    }
    return read;
  }

  /**
   * Returns the same with one key set.
   *
   * @param key dotted path; parts that are numbers count list items from 1
   * @param value as a file would have it, without quotes
   * @throws ScenarioException if the path leads through a single value or past a list, or the value
   *     is no YAML
   */
  Source with(String key, String value) throws ScenarioException {
    Node node =
        value.startsWith("[") || value.startsWith("{")
            ? YamlText.parse(value, "value of " + key)
            : new Node.Scalar(value, Mark.NONE);
    String[] parts = key.split("\\.", -1);
    Node.Section changed = set(root, key, parts, 0, node);
    return new Source(name, file, folder, changed, problems, quantities, logs, reckonings, known);
  }

  /** Returns a scenario of another name and text in the same folder. */
  Source variant(String other, Node.Section text) {
    return new Source(other, file, folder, text, problems, quantities, logs, reckonings, known);
  }

  /**
   * Returns the same with whole sections as another source has them, left out where it has none. A
   * log comes with the folder that it lies in.
   *
   * @param other where the sections come from
   * @param names of sections at the top
   */
  Source withSections(Source other, Collection<String> names) {
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry entry : root.entries()) {
      if (!names.contains(entry.key())) {
        entries.add(entry);
      }
    }
    for (Node.Entry entry : other.root.entries()) {
      if (names.contains(entry.key())) {
        entries.add(entry.key().equals("log") ? other.inItsFolder(entry) : entry);
      }
    }
    Map<LogKey, LogReading> read = new ConcurrentHashMap<>(logs);
    read.putAll(other.logs);
    return new Source(
        name,
        file,
        folder,
        new Node.Section(entries, root.mark()),
        problems,
        quantities,
        read,
        reckonings,
        names.contains("log") ? other.known : known);
  }

  private Node.Entry inItsFolder(Node.Entry log) {
    if (log.value() instanceof Node.Section section
        && section.find("file").map(Node.Entry::value).orElse(section)
            instanceof Node.Scalar scalar) {
      Node.Scalar whole = new Node.Scalar(folder.resolve(scalar.text()).toString(), scalar.mark());
      List<Node.Entry> entries =
          section.entries().stream()
              .map(e -> e.key().equals("file") ? new Node.Entry(e.key(), e.mark(), whole) : e)
              .toList();
      return new Node.Entry(log.key(), log.mark(), new Node.Section(entries, section.mark()));
    }
    return log;
  }

  /**
   * Returns whether sections at the top read alike in another source.
   *
   * @param other beside which
   * @param names of sections
   */
  boolean reads(Source other, Collection<String> names) {
    return names.stream().allMatch(n -> written(root.find(n)).equals(written(other.root.find(n))));
  }

  private static String written(Optional<Node.Entry> entry) {
    return entry.map(e -> written(e.value())).orElse("");
  }

  /** Returns a node's text without the places it was read from. */
  private static String written(Node node) {
    if (node instanceof Node.Section section) {
      return section.entries().stream()
          .map(e -> e.key() + ":" + written(e.value()))
          .collect(Collectors.joining(",", "{", "}"));
    }
    if (node instanceof Node.Items list) {
      return list.items().stream().map(Source::written).collect(Collectors.joining(",", "[", "]"));
    }
    return ((Node.Scalar) node).text().strip();
  }

  /**
   * Returns what the text says of car, day and session, whatever the order of its sections, without
   * the places it was read from and without what it is called.
   */
  String written() {
    return root.entries().stream()
        .filter(e -> !ABOUT.contains(e.key()))
        .map(e -> e.key() + ":" + written(e.value()))
        .sorted()
        .collect(Collectors.joining(","));
  }

  private Node.Section set(Node.Section section, String key, String[] parts, int i, Node value)
      throws ScenarioException {
    List<Node.Entry> entries = new ArrayList<>(section.entries());
    Optional<Node.Entry> old = section.find(parts[i]);
    Node below = old.map(Node.Entry::value).orElse(Node.Section.EMPTY);
    Mark mark = old.map(Node.Entry::mark).orElse(Mark.NONE);
    Node.Entry entry = new Node.Entry(parts[i], mark, below(below, key, parts, i + 1, value));
    if (old.isPresent()) {
      entries.set(entries.indexOf(old.get()), entry);
    } else {
      entries.add(entry);
    }
    return new Node.Section(entries, section.mark());
  }

  private Node below(Node at, String key, String[] parts, int i, Node value)
      throws ScenarioException {
    if (i == parts.length) {
      return value;
    }
    if (at instanceof Node.Section section) {
      return set(section, key, parts, i, value);
    }
    if (at instanceof Node.Items list && parts[i].matches("[1-9][0-9]{0,3}")) {
      int index = Integer.parseInt(parts[i]) - 1;
      if (index < list.items().size()) {
        List<Node> items = new ArrayList<>(list.items());
        items.set(index, below(items.get(index), key, parts, i + 1, value));
        return new Node.Items(items, list.mark());
      }
    }
    String held =
        at instanceof Node.Items list ? at.kind() + " of " + list.items().size() : at.kind();
    throw new ScenarioException(
        List.of(
            new Problem(
                file, 0, 0, key, "leads nowhere: there is no `" + parts[i] + "` in " + held)));
  }
}
