package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.fit.FitResult;
import soakloop.fit.KeyNews;
import soakloop.quantity.Dimension;

/** A fit as plain text, for a console of 80 columns. */
public final class FitText {
  private static final int ROWS = 14;

  private FitText() {}

  /**
   * Writes the answer, the keys and what the logs cannot tell.
   *
   * @param result what a fit gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(FitResult result) {
    FitWords words =
        new FitWords(new Display(result.plan().cases().get(0).scenario().units(), true));
    FitSentences say = new FitSentences(result, words);
    FitTables tables = new FitTables(result, words);
    List<String> lines = new ArrayList<>();
    result.plan().cases().forEach(c -> lines.addAll(TextSummary.wrapped(c.scenario().title())));
    lines.add("");
    say.answer().sentences().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    List<KeyNews> news = say.news();
    lines.add("What the log says of the car and its sensors, with what is left of the spread:");
    tables
        .short80(news.subList(0, Math.min(ROWS, news.size())))
        .lines()
        .forEach(l -> lines.add(TextSummary.cut(l)));
    lines.add("");
    lines.addAll(
        TextSummary.wrapped(
            "Model beside log, "
                + words.display().symbol(Dimension.TEMPERATURE_DIFFERENCE)
                + "; own error is what the model itself cannot do better:"));
    tables.signals().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    lines.add("");
    lines.add("What the log cannot tell:");
    say.cannotTell().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    List<String> advice = say.advice();
    if (!advice.isEmpty()) {
      lines.add("");
      advice.forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    }
    if (!result.cautions().isEmpty()) {
      lines.add("");
      result.cautions().forEach(c -> lines.addAll(TextSummary.wrapped("Note: " + c)));
    }
    return String.join("\n", lines) + "\n";
  }
}
