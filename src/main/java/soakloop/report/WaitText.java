package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.plan.WaitAnswer;

/** A plan of waits as plain text, for a console of 80 columns. */
public final class WaitText {
  private WaitText() {}

  /**
   * Writes the answer, the ways and the gauge.
   *
   * @param answer what a plan gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(WaitAnswer answer) {
    WaitWords words = new WaitWords(new Display(answer.plan().scenario().units(), true));
    WaitTables tables = new WaitTables(answer, words);
    List<String> lines = new ArrayList<>(TextSummary.wrapped(answer.plan().scenario().title()));
    lines.add("");
    new WaitSentences(answer, words)
        .answered()
        .sentences()
        .forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    tables.ways().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    if (tables.hasGauge()) {
      lines.add("");
      lines.addAll(
          TextSummary.wrapped(
              "By the gauge of the coolant into the core, "
                  + words.way(answer.best().way())
                  + ":"));
      tables.gauge().lines().forEach(l -> lines.add(TextSummary.cut(l)));
    }
    lines.add("");
    lines.addAll(TextSummary.wrapped("Event rules first. Never open a hot loop."));
    return String.join("\n", lines) + "\n";
  }
}
