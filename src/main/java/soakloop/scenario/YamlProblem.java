package soakloop.scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says in plain words why a text is no YAML. */
final class YamlProblem {
  /** Parts of the library's messages, and what mostly causes them. */
  private static final Map<String, String> CAUSES = new LinkedHashMap<>();

  static {
    CAUSES.put("\\t(TAB)", "has a tab; indent with spaces");
    CAUSES.put("could not find expected ':'", "has a line that is no `key: value`");
    CAUSES.put(
        "mapping values are not allowed here",
        "has a second `:` (then put the text in quotes) or a wrong indent here");
    CAUSES.put("expected ',' or '}'", "has a `{` that is not closed, or lacks a comma after it");
    CAUSES.put("expected ',' or ']'", "has a `[` that is not closed, or lacks a comma after it");
    CAUSES.put("expected <block end>", "is indented unlike the lines around it");
    CAUSES.put("unexpected end of stream", "has a quote that is not closed");
    CAUSES.put(
        "that cannot start any token", "has a sign that no value starts with; put it in quotes");
  }

  private YamlProblem() {}

  static Problem of(YAMLException e, String text, String file) {
    if (e instanceof ReaderException unreadable) {
      Mark mark = place(text, unreadable.getPosition());
      String sign = String.format("U+%04X", unreadable.getCodePoint());
      return new Problem(
          file,
          mark.line(),
          mark.column(),
          "",
          "has a sign (" + sign + ") that does not belong in a text file");
    }
    if (e instanceof MarkedYAMLException marked) {
      Mark mark = place(marked);
      return new Problem(file, mark.line(), mark.column(), "", say(marked.getProblem()));
    }
    return new Problem(file, 0, 0, "", say(e.getMessage()));
  }

  /** Returns where to look: at the start of what was not closed, else where reading stopped. */
  private static Mark place(MarkedYAMLException e) {
    String problem = String.valueOf(e.getProblem());
    boolean open = problem.contains("expected '") || problem.contains("end of stream");
    org.yaml.snakeyaml.error.Mark mark =
        open && e.getContextMark() != null ? e.getContextMark() : e.getProblemMark();
    return mark == null ? Mark.NONE : YamlText.mark(mark);
  }

  private static String say(@org.jspecify.annotations.Nullable String reason) {
    if (reason == null) {
      return "is not readable YAML";
    }
    for (Map.Entry<String, String> cause : CAUSES.entrySet()) {
      if (reason.contains(cause.getKey())) {
        return cause.getValue();
      }
    }
    return "is not readable YAML: " + reason.lines().findFirst().orElse("");
  }

  private static Mark place(String text, int position) {
    int end = Math.min(Math.max(position, 0), text.length());
    String before = text.substring(0, end);
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    return new Mark(line, end - before.lastIndexOf('\n'));
  }
}
