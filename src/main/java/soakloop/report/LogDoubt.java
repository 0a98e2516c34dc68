package soakloop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Confidence;
import soakloop.log.Log;
import soakloop.log.Remark;
import soakloop.log.Signal;
import soakloop.reading.Finding;
import soakloop.reading.Span;
import soakloop.reading.Sureness;

/**
 * Something to know before a log is trusted.
 *
 * @param what what was seen or decided, whole sentences
 * @param where rows of the file, such as {@code rows 12 to 40}; may be empty
 * @param done what was done about it, whole sentences; may be empty
 */
record LogDoubt(String what, String where, String done) {
  /** Places that are told of a thing that is seen at many. */
  private static final int PLACES = 4;

  /** Returns it in one text. */
  String text() {
    String told = where.isEmpty() ? what : Display.sentenceStart(where) + ": " + what;
    return done.isEmpty() ? told : told + " " + done;
  }

  /** Returns all of a log: meanings that are not sure, then its rows, then its channels. */
  static List<LogDoubt> of(LogSheet sheet) {
    List<LogDoubt> doubts = new ArrayList<>();
    meanings(sheet.log(), doubts);
    for (Remark remark : sheet.log().remarks()) {
      doubts.add(new LogDoubt(Display.sentenceStart(remark.text()) + ".", "", ""));
    }
    findings(sheet, doubts);
    return doubts;
  }

  /** Columns that were read in one way though another is thinkable, reasons alike told once. */
  private static void meanings(Log log, List<LogDoubt> doubts) {
    Map<String, List<Log.Column>> alike = new LinkedHashMap<>();
    for (Log.Column column : log.columns()) {
      if (column.signal().isPresent() && column.confidence() != Confidence.SURE) {
        alike
            .computeIfAbsent(column.confidence() + column.remark(), k -> new ArrayList<>())
            .add(column);
      } else if (column.signal().isEmpty() && column.confidence() != Confidence.SURE) {
        doubts.add(new LogDoubt(quoted(column) + " is not read: " + column.remark() + ".", "", ""));
      }
    }
    alike.values().forEach(columns -> doubts.add(meaning(columns)));
  }

  private static LogDoubt meaning(List<Log.Column> columns) {
    List<String> said =
        columns.stream()
            .map(c -> quoted(c) + " as " + c.signal().orElseThrow().label() + unit(c))
            .toList();
    Log.Column first = columns.get(0);
    String how = first.confidence() == Confidence.GUESSED ? "Guessed: " : "Likely: ";
    String why = first.remark().isEmpty() ? "" : "; " + first.remark();
    return new LogDoubt(how + LogWords.listed(said) + why + ".", "", "");
  }

  private static String quoted(Log.Column column) {
    return column.header().isEmpty() ? "a column without a name" : "`" + column.header() + "`";
  }

  private static String unit(Log.Column column) {
    return column.unit().isEmpty() ? "" : " in " + column.unit();
  }

  /** Findings, with what holds of several channels alike told once. */
  private static void findings(LogSheet sheet, List<LogDoubt> doubts) {
    Map<String, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding finding : sheet.reading().findings()) {
      String key = finding.kind() + tail(finding).orElse(finding.seen()) + finding.done();
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
    }
    alike.values().forEach(some -> doubts.add(finding(sheet.log(), some)));
  }

  /** What a finding says after its channel's name. */
  private static Optional<String> tail(Finding finding) {
    return finding
        .signal()
        .map(s -> Display.sentenceStart(s.label()))
        .filter(finding.seen()::startsWith)
        .map(name -> finding.seen().substring(name.length()));
  }

  private static LogDoubt finding(Log log, List<Finding> alike) {
    Finding first = alike.get(0);
    String seen = first.seen();
    List<String> names =
        alike.stream().flatMap(f -> f.signal().stream()).distinct().map(Signal::label).toList();
    if (names.size() > 1 && tail(first).isPresent()) {
      String several = tail(first).get().replaceFirst("^ is ", " are each ");
      several = several.replaceFirst("^ goes ", " each go ");
      seen = Display.sentenceStart(LogWords.listed(names)) + several;
    }
    String sure = first.sureness() == Sureness.POSSIBLE ? " Worth a look only." : "";
    return new LogDoubt(seen, where(log, alike), first.done() + sure);
  }

  private static String where(Log log, List<Finding> alike) {
    List<String> places =
        alike.stream().map(f -> rows(log, f.span())).filter(r -> !r.isEmpty()).distinct().toList();
    if (places.size() <= PLACES) {
      return String.join(", ", places);
    }
    return String.join(", ", places.subList(0, PLACES))
        + ", and "
        + (places.size() - PLACES)
        + " more";
  }

  private static String rows(Log log, Span span) {
    if (span.firstRow() == 0 && span.lastRow() == log.size() - 1) {
      return "";
    }
    long from = log.fileRow(span.firstRow());
    long to = log.fileRow(span.lastRow());
    return from == to ? "row " + from : String.format(Locale.ROOT, "rows %d to %d", from, to);
  }
}
