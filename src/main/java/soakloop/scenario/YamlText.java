package soakloop.scenario;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.events.StreamEndEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * YAML text to nodes, from the parser's events only: no tags, no anchors, no types, scalars as they
 * were written.
 */
final class YamlText {
  /** Longest text read, characters. */
  static final int MAX_LENGTH = 1_000_000;

  private static final int MAX_DEPTH = 24;

  private final String file;
  private final Parser events;
  private final List<Problem> problems;

  private YamlText(String text, String file, List<Problem> problems) {
    this.file = file;
    this.problems = problems;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(MAX_LENGTH);
    this.events = new ParserImpl(new StreamReader(new StringReader(text)), options);
  }

  /**
   * A text that is one section.
   *
   * @param root the section
   * @param problems what was left out of it, because a key stands twice or is no single value
   */
  record Sections(Node.Section root, List<Problem> problems) {}

  /**
   * Reads a text that must be one section.
   *
   * @param text YAML
   * @param file its name, for messages
   * @throws ScenarioException if it is no YAML, or uses what scenarios do not
   */
  static Sections sections(String text, String file) throws ScenarioException {
    List<Problem> problems = new ArrayList<>();
    Node node = read(text, file, problems);
    if (node instanceof Node.Section section) {
      return new Sections(section, List.copyOf(problems));
    }
    throw failure(
        file,
        node.mark(),
        "is " + node.kind() + "; a scenario is keys with values, like `title: ...`");
  }

  /**
   * Reads a text.
   *
   * @param text YAML
   * @param file its name, for messages
   * @throws ScenarioException if it is no YAML, or uses what scenarios do not
   */
  static Node parse(String text, String file) throws ScenarioException {
    List<Problem> problems = new ArrayList<>();
    Node node = read(text, file, problems);
    if (!problems.isEmpty()) {
      throw new ScenarioException(problems);
    }
    return node;
  }

  private static Node read(String text, String file, List<Problem> problems)
      throws ScenarioException {
    if (text.length() > MAX_LENGTH) {
      throw failure(file, Mark.NONE, "is too long: more than " + MAX_LENGTH + " characters");
    }
    try {
      return new YamlText(text, file, problems).document();
    } catch (YAMLException e) {
      throw new ScenarioException(List.of(YamlProblem.of(e, text, file)));
    }
  }

  private Node document() throws ScenarioException {
    events.getEvent(); // stream start
    Event start = events.getEvent();
    if (start instanceof StreamEndEvent) {
      throw failure(file, Mark.NONE, "is empty; a scenario is keys with values, like `title: ...`");
    }
    Node node = node(events.getEvent(), 0);
    events.getEvent(); // document end
    Event next = events.getEvent();
    if (!(next instanceof StreamEndEvent)) {
      throw failure(
          file, mark(next.getStartMark()), "starts a second document; a scenario is one alone");
    }
    return node;
  }

  private Node node(Event event, int depth) throws ScenarioException {
    Mark mark = mark(event.getStartMark());
    if (depth > MAX_DEPTH) {
      throw failure(file, mark, "is nested too deeply");
    }
    if (event instanceof AliasEvent) {
      throw failure(file, mark, "uses an alias (*name); write the value out");
    }
    if (event instanceof NodeEvent anchored && anchored.getAnchor() != null) {
      throw failure(file, mark, "uses an anchor (&name); write the value where it is needed");
    }
    if (event instanceof ScalarEvent scalar) {
      noTag(scalar.getTag(), mark);
      return new Node.Scalar(scalar.getValue(), mark);
    }
    if (event instanceof SequenceStartEvent sequence) {
      noTag(sequence.getTag(), mark);
      return items(mark, depth);
    }
    if (event instanceof MappingStartEvent mapping) {
      noTag(mapping.getTag(), mark);
      return section(mark, depth);
    }
    throw failure(file, mark, "is empty");
  }

  private Node items(Mark mark, int depth) throws ScenarioException {
    List<Node> items = new ArrayList<>();
    Event event = events.getEvent();
    while (!(event instanceof SequenceEndEvent)) {
      items.add(node(event, depth + 1));
      event = events.getEvent();
    }
    return new Node.Items(items, mark);
  }

  private Node section(Mark mark, int depth) throws ScenarioException {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    Event event = events.getEvent();
    while (!(event instanceof MappingEndEvent)) {
      Node key = node(event, depth + 1);
      Node value = node(events.getEvent(), depth + 1);
      if (key instanceof Node.Scalar name) {
        Node.Entry earlier =
            entries.putIfAbsent(name.text(), new Node.Entry(name.text(), name.mark(), value));
        if (earlier != null) {
          problem(
              name.mark(),
              "`" + name.shown() + "` stands here twice; first on line " + earlier.mark().line());
        }
      } else {
        problem(key.mark(), "has " + key.kind() + " where a key should be");
      }
      event = events.getEvent();
    }
    return new Node.Section(List.copyOf(entries.values()), mark);
  }

  private void noTag(@org.jspecify.annotations.Nullable String tag, Mark mark)
      throws ScenarioException {
    if (tag != null && !tag.equals("!")) {
      throw failure(
          file,
          mark,
          "uses a type tag ("
              + Node.Scalar.shown(tag.replace("tag:yaml.org,2002:", "!!"))
              + "); write the value alone");
    }
  }

  private void problem(Mark mark, String message) {
    problems.add(new Problem(file, mark.line(), mark.column(), "", message));
  }

  private static ScenarioException failure(String file, Mark mark, String message) {
    return new ScenarioException(
        List.of(new Problem(file, mark.line(), mark.column(), "", message)));
  }

  static Mark mark(org.yaml.snakeyaml.error.Mark mark) {
    return new Mark(mark.getLine() + 1, mark.getColumn() + 1);
  }
}
