package soakloop.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes to a text, gathered first and then made all at once. */
final class TextEdits {
  private final String text;
  private final List<Edit> edits = new ArrayList<>();

  private record Edit(int from, int to, String put) {}

  TextEdits(String text) {
    this.text = text;
  }

  /** Puts something in place of a stretch; at one place, what comes first is put first. */
  void replace(int from, int to, String put) {
    edits.add(new Edit(from, to, put));
  }

  void insert(int at, String put) {
    replace(at, at, put);
  }

  /**
   * Returns the changed text.
   *
   * @throws IllegalStateException if two changes meet
   */
  String apply() {
    StringBuilder changed = new StringBuilder();
    int at = 0;
    // The sort keeps the order of what goes to one place; what is put there goes before a stretch.
    Comparator<Edit> order = Comparator.comparingInt(Edit::from);
    for (Edit edit : edits.stream().sorted(order.thenComparing(e -> e.to() > e.from())).toList()) {
      if (edit.from() < at) {
        throw new IllegalStateException("two changes meet at " + edit.from());
      }
      changed.append(text, at, edit.from()).append(edit.put());
      at = edit.to();
    }
    return changed.append(text.substring(at)).toString();
  }

  /** Returns the index at which the line of a place starts. */
  int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  /** Returns the index after the line of a place, its line feed included. */
  int lineEnd(int at) {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end + 1;
  }

  /** Returns how the text ends its lines. */
  String newline() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** Returns whether the last line has no line feed. */
  boolean isOpen() {
    return !text.isEmpty() && !text.endsWith("\n");
  }

  String text() {
    return text;
  }
}
