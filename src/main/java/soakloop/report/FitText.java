package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import soakloop.fit.FitResult;
import soakloop.fit.KeyNews;

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
    for (int i = 0; i < result.after().size(); i++) {
      FitMeaning.of(result, i, words.display())
          .ifPresent(m -> m.sentences().forEach(t -> lines.addAll(TextSummary.wrapped(t))));
    }
    lines.add("");
    List<KeyNews> news = say.news();
    lines.addAll(
        TextSummary.wrapped(
            "What the log says of car and sensors; left is the share of the spread that is left:"));
    tables
        .short80(news.subList(0, Math.min(ROWS, news.size())))
        .lines()
        .forEach(l -> lines.add(TextSummary.cut(l)));
    if (news.size() > ROWS) {
      lines.add("and " + (news.size() - ROWS) + " more in fit.csv");
    }
    if (!result.profiles().isEmpty()) {
      lines.add("");
      lines.addAll(
          TextSummary.wrapped(
              "Intervals followed out, without taking the model for a straight line:"));
      tables.profiles().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    }
    lines.add("");
    lines.addAll(
        TextSummary.wrapped(
            "Modelled sensors beside logged ones; own error is what the model is off by itself,"
                + " however the keys are set:"));
    tables.signals().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    List<String> dark = say.cannotTell();
    if (!dark.isEmpty()) {
      lines.add("");
      lines.add("What the log cannot tell:");
      dark.forEach(t -> point(t).forEach(lines::add));
    }
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

  private static List<String> point(String text) {
    List<String> lines = TextSummary.wrapped(text, TextSummary.COLUMNS - 2);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> (i == 0 ? "- " : "  ") + lines.get(i))
        .toList();
  }
}
