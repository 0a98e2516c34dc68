package soakloop.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * Writes what a fit found into a scenario's text. Values are put where the old ones stand, in their
 * unit; defaults are added to their section with a comment; all else stays as it was written, down
 * to comments and quotes. A section {@code fitted} goes to the end.
 */
public final class FittedText {
  private static final String HEAD = "# Fitted: ";

  /** Digits beyond what is known, tried one after the other if rounding makes things impossible. */
  private static final int[] MORE = {0, 2, 6};

  private final FitNews news;
  private final TextEdits edits;
  private final Spot.Keys root;
  private final Rounded rounded;
  private final FittedSection section;

  /** Keys that are to be added to a section, with those below them. */
  private static final class Added {
    private final Map<String, Object> keys = new LinkedHashMap<>();

    void put(String[] path, int from, String value) {
      if (from == path.length - 1) {
        keys.put(path[from], value);
      } else {
        Object below = keys.computeIfAbsent(path[from], k -> new Added());
        ((Added) below).put(path, from + 1, value);
      }
    }

    Map<String, String> written() {
      Map<String, String> written = new LinkedHashMap<>();
      keys.forEach((key, value) -> written.put(key, written(value)));
      return written;
    }

    private static String written(Object value) {
      if (value instanceof Added added) {
        StringJoiner entries = new StringJoiner(", ", "{", "}");
        added.written().forEach((key, below) -> entries.add(key + ": " + below));
        return entries.toString();
      }
      return String.valueOf(value);
    }
  }

  private FittedText(String text, Scenario scenario, FitNews news, int more) {
    this.news = news;
    this.edits = new TextEdits(text);
    this.root = SpotReader.of(text);
    this.rounded = new Rounded(scenario.units(), more);
    this.section = new FittedSection(news);
  }

  /**
   * Writes.
   *
   * @param text of the scenario's file as it stands
   * @param scenario read from it, perhaps with another log
   * @param news what the fit found
   * @return the new text, which reads as a scenario
   * @throws ScenarioException if what was found cannot stand in this text; says why
   */
  public static String of(String text, Scenario scenario, FitNews news) throws ScenarioException {
    ScenarioException last = new ScenarioException(List.of());
    for (int more : MORE) {
      String written = new FittedText(text, scenario, news, more).written();
      try {
        YamlText.Sections read = YamlText.sections(written, scenario.name());
        Path here = Path.of("");
        ScenarioReader.read(
            scenario.logged().isPresent()
                ? Source.beside(scenario.logged().get().reading(), scenario.name(), here, read)
                : Source.of(scenario.name(), scenario.name(), here, read));
        return written;
      } catch (ScenarioException e) {
        last = e;
      }
    }
    throw last;
  }

  private String written() {
    Map<Spot.Keys, Added> additions = new LinkedHashMap<>();
    for (FitNews.FittedValue value : news.values()) {
      List<String> texts = new ArrayList<>();
      for (FitNews.Part part : value.parts()) {
        texts.add(part.path().isEmpty() ? ofSensor(value, part) : ofKey(value, part, additions));
      }
      section.add(value.key(), texts);
    }
    log(additions);
    additions.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> -e.getKey().start()))
        .forEach(e -> add(e.getKey(), e.getValue().written(), true));
    head();
    fitted();
    return edits.apply();
  }

  private String ofSensor(FitNews.FittedValue value, FitNews.Part part) {
    return rounded.of(part.estimate(), value.dimension(), "", Optional.empty());
  }

  private String ofKey(
      FitNews.FittedValue value, FitNews.Part part, Map<Spot.Keys, Added> additions) {
    String[] path = part.path().split("\\.", -1);
    Spot at = root;
    Spot.Keys deepest = root;
    int depth = 0;
    int i = 0;
    while (i < path.length) {
      Optional<Spot> below = below(at, path[i]);
      if (below.isEmpty()) {
        break;
      }
      at = below.get();
      i++;
      if (at instanceof Spot.Keys keys) {
        deepest = keys;
        depth = i;
      }
    }
    Optional<KeySpec> spec = KeyTable.get().find(part.path());
    if (i == path.length && at instanceof Spot.Word word) {
      String text = rounded.of(part.estimate(), value.dimension(), word.text(), spec);
      edits.replace(word.start(), word.end(), quoted(text, word.quote()));
      return text;
    }
    String text = rounded.of(part.estimate(), value.dimension(), "", spec);
    additions.computeIfAbsent(deepest, k -> new Added()).put(path, depth, text);
    return text;
  }

  private static Optional<Spot> below(Spot at, String part) {
    if (at instanceof Spot.Keys keys) {
      return keys.find(part).map(Spot.Entry::value);
    }
    if (at instanceof Spot.Row row && part.matches("[1-9]\\d{0,3}")) {
      int index = Integer.parseInt(part) - 1;
      return index < row.items().size() ? Optional.of(row.items().get(index)) : Optional.empty();
    }
    return Optional.empty();
  }

  private static String quoted(String text, String quote) {
    return quote + text + quote;
  }

  /** Points to the log from where the new text will lie. */
  private void log(Map<Spot.Keys, Added> additions) {
    if (news.log().isEmpty()) {
      return;
    }
    Optional<Spot> log = below(root, "log");
    Optional<Spot> file = log.flatMap(l -> below(l, "file"));
    if (file.isPresent() && file.get() instanceof Spot.Word word) {
      edits.replace(word.start(), word.end(), FittedSection.text(news.log(), word.quote()));
    } else {
      Spot.Keys place = log.isPresent() && log.get() instanceof Spot.Keys k ? k : root;
      String[] path = place.equals(root) ? new String[] {"log", "file"} : new String[] {"file"};
      additions
          .computeIfAbsent(place, k -> new Added())
          .put(path, 0, FittedSection.text(news.log(), ""));
    }
  }

  /** Adds keys to the end of a section, in the style of the section. */
  private void add(Spot.Keys to, Map<String, String> keys, boolean told) {
    String newline = edits.newline();
    if (!to.flow()) {
      int at = edits.lineEnd(to.end());
      boolean open = at == edits.text().length() && edits.isOpen();
      StringBuilder lines = new StringBuilder();
      keys.forEach(
          (key, value) ->
              lines
                  .append(open ? newline : "")
                  .append(" ".repeat(column(to)))
                  .append(key + ": " + value)
                  .append(told ? "  # from the fit" : "")
                  .append(open ? "" : newline));
      edits.insert(at, lines.toString());
      return;
    }
    String indent = newline + " ".repeat(indent(to));
    StringJoiner lines = new StringJoiner(",", told ? indent + "# from the fit:" : "", "");
    keys.forEach((key, value) -> lines.add(indent + key + ": " + value));
    addInBraces(to, lines.toString(), indent);
  }

  private void addInBraces(Spot.Keys to, String lines, String indent) {
    int close = to.end() - 1;
    if (to.entries().isEmpty()) {
      edits.insert(close, lines);
      return;
    }
    int last = to.entries().get(to.entries().size() - 1).value().end();
    String gap = edits.text().substring(last, close);
    if (gap.isBlank()) {
      edits.insert(last, "," + lines);
      return;
    }
    // A comma or a comment stands after the last value: it stays with it.
    if (!gap.replaceAll("#[^\n]*", "").contains(",")) {
      edits.insert(last, ",");
    }
    edits.insert(close, lines + indent);
  }

  private int column(Spot.Keys keys) {
    return keys.start() - edits.lineStart(keys.start());
  }

  /** Returns how far a line within braces is set in: more than what the braces stand in. */
  private int indent(Spot.Keys keys) {
    int at = edits.lineStart(keys.start());
    int start = at;
    while (at < keys.start() && " -".indexOf(edits.text().charAt(at)) >= 0) {
      at++;
    }
    return at - start + 4;
  }

  /** Says on top what this is; of a text that was fitted before, in place of what it said. */
  private void head() {
    int at = 0;
    int put = edits.text().startsWith("# yaml-language-server:") ? edits.lineEnd(0) : 0;
    while (at < edits.text().length() && edits.text().startsWith("#", at)) {
      int next = edits.lineEnd(at);
      if (edits.text().startsWith(HEAD, at)) {
        edits.replace(at, next, "");
      }
      at = next;
    }
    String newline = edits.newline();
    edits.insert(
        put, section.head().stream().map(l -> HEAD + l + newline).reduce("", String::concat));
  }

  private void fitted() {
    Optional<Spot.Entry> old = root.find("fitted");
    if (root.flow()) {
      if (old.isPresent()) {
        Spot value = old.get().value();
        edits.replace(value.start(), value.end(), section.flow());
      } else {
        add(root, Map.of("fitted", section.flow()), false);
      }
      return;
    }
    old.ifPresent(
        e -> edits.replace(edits.lineStart(e.key().start()), edits.lineEnd(e.value().end()), ""));
    // Comments after the last key stay before it; what ends the document stays behind.
    int last = edits.lineEnd(root.end());
    boolean free = edits.text().substring(last).lines().allMatch(l -> l.matches("\\s*(#.*)?"));
    int at = free ? edits.text().length() : last;
    boolean open = at == edits.text().length() && edits.isOpen();
    String newline = edits.newline();
    String indent = " ".repeat(column(root));
    StringBuilder block = new StringBuilder(open ? newline : "");
    if (old.isEmpty()) {
      block.append(newline);
      Arrays.stream(FittedSection.ABOUT)
          .forEach(l -> block.append(indent).append("# ").append(l).append(newline));
    }
    section.block().forEach(l -> block.append(indent).append(l).append(newline));
    edits.insert(at, block.toString());
  }
}
