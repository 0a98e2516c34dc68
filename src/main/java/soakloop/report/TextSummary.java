package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.fit.BandedRun;
import soakloop.quantity.Dimension;
import soakloop.study.CoreTrade;
import soakloop.study.Outcome;

/** The answer and the table of pulls as plain text, for a console of 80 columns. */
public final class TextSummary {
  /** Most characters in a line. */
  public static final int COLUMNS = 80;

  private TextSummary() {}

  /**
   * Writes the answer.
   *
   * @param outcome what a run gave
   * @return lines of at most {@link #COLUMNS} characters, in ASCII where the scenario is, each
   *     ended by a line feed
   */
  public static String of(Outcome outcome) {
    return of(BandedRun.plain(outcome));
  }

  /**
   * Writes the answer with what is known of it.
   *
   * @param run what a run gave
   * @return as {@link #of(Outcome)}
   */
  public static String of(BandedRun run) {
    Outcome outcome = run.outcome();
    Display display = new Display(outcome.scenario().units(), true);
    List<String> lines = new ArrayList<>(wrapped(outcome.scenario().title()));
    lines.add("");
    Answer.of(run, display).sentences().forEach(s -> lines.addAll(wrapped(s)));
    if (!outcome.pulls().isEmpty()) {
      lines.add("");
      lines.addAll(
          wrapped(
              "Charge sensor and coolant, "
                  + display.symbol(Dimension.TEMPERATURE)
                  + "; rise and error, "
                  + display.symbol(Dimension.TEMPERATURE_DIFFERENCE)
                  + ":"));
      new Tables(outcome, display).pulls().lines().forEach(l -> lines.add(cut(l)));
    }
    PassTables passes = new PassTables(outcome, display);
    if (passes.hasSomething()) {
      lines.add("");
      lines.addAll(wrapped(passes.note()));
      passes.times().lines().forEach(l -> lines.add(cut(l)));
    }
    PowerTables power = PowerTables.of(outcome, display);
    if (power.hasSomething()) {
      lines.add("");
      lines.addAll(wrapped(power.note()));
      power.pullByPull().lines().forEach(l -> lines.add(cut(l)));
    }
    CoreTrade.of(outcome)
        .ifPresent(
            trade -> {
              lines.add("");
              lines.addAll(wrapped(new CoreTradeWords(trade, display).line()));
            });
    if (!outcome.warnings().isEmpty()) {
      lines.add("");
      outcome.warnings().forEach(w -> lines.addAll(wrapped("Note: " + w.message())));
    }
    return String.join("\n", lines) + "\n";
  }

  /**
   * Returns the first sentence of the answer, in one line whatever its length.
   *
   * @param outcome what a run gave
   */
  public static String firstSentence(Outcome outcome) {
    return Answer.of(outcome, new Display(outcome.scenario().units(), true)).sentences().get(0);
  }

  /** Breaks a text between words; a word longer than a line is broken too. */
  static List<String> wrapped(String text) {
    return wrapped(text, COLUMNS);
  }

  /** Breaks a text between words into lines of at most so many characters. */
  static List<String> wrapped(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > columns) {
        lines.add(rest.substring(0, columns));
        rest = rest.substring(columns);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Cuts a line of a table to what fits. */
  static String cut(String line) {
    return line.length() <= COLUMNS ? line : line.substring(0, COLUMNS - 3) + "...";
  }
}
