package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;

/** Lines of a scenario with a comment beside or above each. */
final class StarterText {
  /** Where comments begin beside short lines. */
  private static final int COLUMN = 44;

  /** The longest line. */
  private static final int WIDTH = 110;

  private final List<String> lines = new ArrayList<>();

  /** Adds a line of keys with its comment. */
  StarterText line(String keys, String comment) {
    if (comment.isEmpty()) {
      lines.add(keys);
      return this;
    }
    String beside = keys + " ".repeat(Math.max(2, COLUMN - keys.length())) + "# " + plain(comment);
    if (beside.length() <= WIDTH) {
      lines.add(beside);
    } else {
      String indent = keys.substring(0, keys.length() - keys.stripLeading().length());
      wrapped(indent + "# ", comment);
      lines.add(keys);
    }
    return this;
  }

  /** Adds a line of keys that is ready to be uncommented; its words stand above it. */
  StarterText offered(String keys, String comment) {
    String indent = keys.substring(0, keys.length() - keys.stripLeading().length());
    return line(indent + "# " + keys.stripLeading(), comment);
  }

  /** Adds words over as many lines as they take. */
  StarterText words(String comment) {
    wrapped("# ", comment);
    return this;
  }

  /** Adds an empty line. */
  StarterText blank() {
    lines.add("");
    return this;
  }

  private void wrapped(String mark, String comment) {
    StringBuilder row = new StringBuilder(mark);
    for (String word : plain(comment).split(" ")) {
      if (row.length() > mark.length() && row.length() + word.length() + 1 > WIDTH) {
        lines.add(row.toString().stripTrailing());
        row = new StringBuilder(mark);
      }
      row.append(word).append(' ');
    }
    lines.add(row.toString().stripTrailing());
  }

  /** Returns the text. */
  String text() {
    return String.join("\n", lines) + "\n";
  }

  /** Words that can stand in a comment: what is no printable character is a question mark. */
  static String plain(String words) {
    StringBuilder plain = new StringBuilder();
    words.codePoints().map(c -> printable(c) ? c : '?').forEach(plain::appendCodePoint);
    return plain.toString();
  }

  /** A text in double quotes, as YAML writes what may hold anything. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int c : text.codePoints().toArray()) {
      if (c == '"' || c == '\\') {
        quoted.append('\\').appendCodePoint(c);
      } else if (printable(c)) {
        quoted.appendCodePoint(c);
      } else {
        quoted.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
      }
    }
    return quoted.append('"').toString();
  }

  private static boolean printable(int c) {
    return (c >= 0x20 && c <= 0x7e)
        || (c >= 0xa0 && c <= 0xd7ff && c != 0x2028 && c != 0x2029)
        || (c >= 0xe000 && c <= 0xfffd && c != 0xfeff)
        || c >= 0x10000;
  }
}
