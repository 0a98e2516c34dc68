package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.plan.SameStartAnswer;

/** A plan of pulls that must start alike as plain text, for a console of 80 columns. */
public final class SameStartText {
  private SameStartText() {}

  /**
   * Writes the answer and the ways.
   *
   * @param answer what a plan gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(SameStartAnswer answer) {
    Display display = new Display(answer.plan().scenario().units(), true);
    SameStartWords words = new SameStartWords(answer, display);
    List<String> lines = new ArrayList<>(TextSummary.wrapped(answer.plan().scenario().title()));
    lines.add("");
    words.answered().sentences().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    lines.addAll(
        TextSummary.wrapped(
            "How far apart they are then (or where they are least apart, if never):"));
    words.ways().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    return String.join("\n", lines) + "\n";
  }
}
