package soakloop.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** {@code log.html}: one file that opens from disk, charts inside, no script. */
final class LogPage {
  private LogPage() {}

  /**
   * Writes the page.
   *
   * @param set the logs
   * @param version of the program
   * @param display how numbers are shown
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(LogSet set, String version, Display display, List<DrawnChart> charts)
      throws IOException {
    LogTables tables = new LogTables(set, new LogWords(display));
    LogSentences say = new LogSentences(set, display);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", set.title());
    model.put("about", set.single() ? LogSentences.extent(set.first().log()) : "Logs side by side");
    model.put("answer", PageTemplate.model(say.answer()));
    model.put("charts", PageTemplate.models(charts));
    model.put("units", Display.sentenceStart(tables.pullUnits()));
    model.put("single", set.single());
    model.put("logs", set.sheets().stream().map(s -> sheet(s, tables, say)).toList());
    return PageTemplate.fill("log.ftlh", model);
  }

  private static Map<String, Object> sheet(LogSheet sheet, LogTables tables, LogSentences say) {
    Map<String, Object> model = new HashMap<>();
    model.put("label", sheet.label());
    model.put("extent", LogSentences.extent(sheet.log()));
    model.put("pulls", tables.pulls(sheet).model());
    model.put("aborted", sheet.reading().table().stream().anyMatch(r -> r.pull().aborted()));
    model.put("cut", sheet.reading().table().stream().anyMatch(r -> r.boostIsLeast()));
    model.put("doubts", LogDoubt.of(sheet).stream().map(LogPage::doubt).toList());
    model.put("joined", sheet.joined().stream().map(say::joined).toList());
    model.put("sweeps", tables.sweeps(sheet).model());
    model.put("waits", tables.waits(sheet).model());
    model.put("columns", tables.columns(sheet).model());
    model.put("effectiveness", tables.effectiveness(sheet).model());
    model.put("noEffectiveness", sheet.reading().effectiveness().why());
    model.put("flows", tables.flows(sheet).model());
    model.put("noFlow", sheet.reading().coolantFlow().why());
    model.put("notes", sheet.log().notes());
    return model;
  }

  private static Map<String, Object> doubt(LogDoubt doubt) {
    return Map.of(
        "what", typeset(doubt.what()), "where", doubt.where(), "done", typeset(doubt.done()));
  }

  /** Units in words of the log's study are plain, as a console shows them. */
  private static String typeset(String text) {
    return text.replaceAll("\\bdeg(?=[CF]\\b)", "\u00b0");
  }
}
