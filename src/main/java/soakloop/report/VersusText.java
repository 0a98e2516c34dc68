package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.versus.VersusResult;

/** A comparison as plain text, for a console of 80 columns. */
public final class VersusText {
  private VersusText() {}

  /**
   * Writes the verdict, the pulls and where the logged difference comes from.
   *
   * @param result what it gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(VersusResult result) {
    Display display = new Display(result.plan().contenders().get(0).scenario().units(), true);
    VersusWords words = new VersusWords(result, display);
    VersusSentences say = new VersusSentences(result, words);
    VersusTables tables = new VersusTables(result, words);
    List<String> lines = new ArrayList<>();
    result
        .plan()
        .contenders()
        .forEach(c -> lines.addAll(TextSummary.wrapped(c.label() + ": " + c.scenario().title())));
    lines.add("");
    say.answer().sentences().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    for (VersusResult.Pairing pairing : result.pairings()) {
      lines.add("");
      lines.addAll(
          TextSummary.wrapped(
              Display.sentenceStart(result.plan().by().label())
                  + ", under the same conditions ("
                  + result.conditions()
                  + "); better is the chance that "
                  + words.label(pairing.other())
                  + " is:"));
      table(lines, tables.pulls(pairing));
      if (!pairing.logged().isEmpty()) {
        lines.add("");
        lines.addAll(TextSummary.wrapped("Where the difference of the logged rises comes from:"));
        table(lines, tables.shortParts(pairing));
      }
      lines.add("");
      if (result.isLogged()) {
        say.conditions(pairing).forEach(s -> lines.addAll(TextSummary.wrapped(s)));
      }
      say.elsewhere(pairing).forEach(s -> lines.addAll(TextSummary.wrapped(s)));
      say.settling(pairing).forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    }
    result
        .sheet()
        .ifPresent(
            sheet -> {
              lines.add("");
              lines.addAll(
                  TextSummary.wrapped(
                      "A fair test: the smallest difference that such a day tells apart, four"
                          + " times in five:"));
              table(lines, tables.sheet(sheet));
              say.sheet(sheet).forEach(s -> lines.addAll(TextSummary.wrapped(s)));
            });
    return String.join("\n", lines) + "\n";
  }

  private static void table(List<String> lines, Table table) {
    table.lines().forEach(l -> lines.add(TextSummary.cut(l)));
  }
}
