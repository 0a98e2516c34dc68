package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;

/** The answer and a table of a plan's results as plain text, for a console of 80 columns. */
public final class VaryText {
  private static final int COLUMNS = 6;

  private VaryText() {}

  /**
   * Writes the answer.
   *
   * @param variation what a plan gave
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(Variation variation) {
    VaryPlan plan = variation.plan();
    VaryWords words = new VaryWords(plan, new Display(plan.scenario().units(), true));
    VaryTables tables = new VaryTables(variation, words);
    List<String> lines = new ArrayList<>(TextSummary.wrapped(plan.scenario().title()));
    lines.add("");
    new VarySentences(variation, words)
        .answer()
        .sentences()
        .forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    lines.add("");
    if (plan.keys().size() == 1) {
      lines.add(words.units() + ":");
      tables.curve(TextSummary.COLUMNS).lines().forEach(l -> lines.add(TextSummary.cut(l)));
    } else {
      Measure measure = plan.measures().get(0);
      lines.addAll(
          TextSummary.wrapped(
              measure.label()
                  + ", "
                  + words.display().symbol(measure.dimension())
                  + ", across: "
                  + words.heading(plan.keys().get(0))
                  + ":"));
      tables.map(measure, COLUMNS).lines().forEach(l -> lines.add(TextSummary.cut(l)));
    }
    variation.holes().stream()
        .limit(3)
        .forEach(
            hole ->
                lines.addAll(
                    TextSummary.wrapped(
                        "Not run: "
                            + new VarySentences(variation, words).place(hole.index())
                            + ": "
                            + hole.reason())));
    return String.join("\n", lines) + "\n";
  }
}
