package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.plan.EveningAnswer;

/** A planned evening as plain text, for a console of 80 columns. */
public final class RoundsText {
  private RoundsText() {}

  /**
   * Writes the verdict, the plan and all rounds.
   *
   * @param answer what a plan gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(EveningAnswer answer) {
    WaitWords words = new WaitWords(new Display(answer.plan().question().scenario().units(), true));
    List<String> lines =
        new ArrayList<>(TextSummary.wrapped(answer.plan().question().scenario().title()));
    lines.add("");
    new RoundsSentences(answer, words)
        .answered()
        .sentences()
        .forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    new RoundsTables(answer, words).rounds().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    lines.add("");
    lines.addAll(
        TextSummary.wrapped(
            "Event rules first. Never open a hot loop. No ice water on the track."));
    return String.join("\n", lines) + "\n";
  }
}
