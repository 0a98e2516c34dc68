package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import soakloop.log.Log;

/** What was understood of logs and what was doubted, for a console of 80 columns. */
public final class LogText {
  private static final int INDENT = 11;

  private LogText() {}

  /**
   * Writes it.
   *
   * @param set the logs
   * @return lines of at most {@link TextSummary#COLUMNS} characters, each ended by a line feed
   */
  public static String of(LogSet set) {
    LogWords words = new LogWords(new Display(set.units(), true));
    LogTables tables = new LogTables(set, words);
    LogSentences say = new LogSentences(set, words.display());
    List<String> lines = new ArrayList<>(TextSummary.wrapped(set.title()));
    lines.add("");
    say.answer().sentences().forEach(s -> lines.addAll(TextSummary.wrapped(s)));
    for (LogSheet sheet : set.sheets()) {
      lines.add("");
      if (!set.single()) {
        lines.add(sheet.label());
      }
      sheet(sheet, tables, say, lines);
    }
    return String.join("\n", lines) + "\n";
  }

  private static void sheet(
      LogSheet sheet, LogTables tables, LogSentences say, List<String> lines) {
    Log log = sheet.log();
    item("Rows", LogSentences.extent(log), lines);
    sheet.joined().forEach(j -> item("Joined", say.joined(j), lines));
    String left = left(log);
    if (!left.isEmpty()) {
      item("Not read", left, lines);
    }
    lines.add("");
    tables.read(sheet).lines().forEach(l -> lines.add(TextSummary.cut(l)));
    lines.add("");
    List<LogDoubt> doubts = LogDoubt.of(sheet);
    lines.add(doubts.isEmpty() ? "Nothing in it was doubtful." : "To know before it is trusted:");
    doubts.forEach(d -> bullet(d.text(), lines));
    if (sheet.reading().effectiveness().mean().isEmpty() && !sheet.reading().pulls().isEmpty()) {
      String why = sheet.reading().effectiveness().why();
      bullet("The core's effectiveness cannot be read. " + why, lines);
    }
    if (!sheet.reading().pulls().isEmpty()) {
      lines.add("");
      lines.addAll(TextSummary.wrapped("Pulls, " + tables.pullUnits() + ":"));
      tables.pulls(sheet).lines().forEach(l -> lines.add(TextSummary.cut(l)));
      notes(sheet, lines);
    }
  }

  private static void notes(LogSheet sheet, List<String> lines) {
    if (sheet.reading().table().stream().anyMatch(r -> r.pull().aborted())) {
      lines.addAll(TextSummary.wrapped("* lifted before the others' top speed; not compared."));
    }
    if (sheet.reading().table().stream().anyMatch(r -> r.boostIsLeast())) {
      lines.addAll(TextSummary.wrapped("+ the pressure is cut off there; the true one is higher."));
    }
  }

  private static String left(Log log) {
    return log.columns().stream()
        .filter(c -> c.signal().isEmpty() && !c.header().isEmpty())
        .map(Log.Column::header)
        .collect(Collectors.joining("; "));
  }

  private static void bullet(String text, List<String> lines) {
    List<String> told = TextSummary.wrapped(text, TextSummary.COLUMNS - 2);
    for (int i = 0; i < told.size(); i++) {
      lines.add((i == 0 ? "- " : "  ") + told.get(i));
    }
  }

  /** Adds a name and a text that wraps beside it. */
  private static void item(String name, String text, List<String> lines) {
    List<String> told = TextSummary.wrapped(text, TextSummary.COLUMNS - INDENT);
    for (int i = 0; i < told.size(); i++) {
      String head = i == 0 ? name : "";
      lines.add(head + " ".repeat(INDENT - head.length()) + told.get(i));
    }
  }
}
