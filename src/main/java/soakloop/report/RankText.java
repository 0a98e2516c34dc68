package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.study.Ranking;

/** A ranking as plain text, for a console of 80 columns. */
public final class RankText {
  private static final int ROWS = 12;

  private RankText() {}

  /**
   * Writes the answer and the first keys.
   *
   * @param ranking what a plan gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(Ranking ranking) {
    RankWords words =
        new RankWords(
            ranking.plan().measure(), new Display(ranking.plan().scenario().units(), true));
    RankTables tables = new RankTables(ranking, words);
    RankSentences say = new RankSentences(ranking, words);
    List<String> lines = new ArrayList<>(TextSummary.wrapped(ranking.plan().scenario().title()));
    lines.add("");
    say.answer().sentences().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    tables.first(ROWS).lines().forEach(l -> lines.add(TextSummary.cut(l)));
    lines.addAll(
        TextSummary.wrapped(
            "* assumed, not stated. Changes in "
                + words.symbol()
                + "; share: of the variance, with others."));
    return String.join("\n", lines) + "\n";
  }
}
