package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import soakloop.log.Signal;

/** Writes the section that says where fitted values come from and how they hang together. */
final class FittedSection {
  /** What stands above it. */
  static final String[] ABOUT = {
    "What the fit found: the cars that the log leaves possible. Leave it as it is: a key whose",
    "value is changed above no longer equals the one here and is then taken as independent."
  };

  private final FitNews news;
  private final List<String> keys = new ArrayList<>();

  FittedSection(FitNews news) {
    this.news = news;
  }

  /** Takes in a value as it is written elsewhere in the text. */
  void add(String key, List<String> values) {
    keys.add(
        values.size() == 1
            ? "{key: " + key + ", value: " + values.get(0) + "}"
            : "{key: " + key + ", values: [" + String.join(", ", values) + "]}");
  }

  /** Returns what stands on top of the text. */
  List<String> head() {
    return List.of(
        "values and spreads are those that a log leaves likely, found by `fit` on "
            + news.date()
            + ";",
        "see `fitted` at the end. The scenario it was made from is as it was.");
  }

  List<String> block() {
    List<String> lines = new ArrayList<>(List.of("fitted:"));
    facts().forEach((key, value) -> lines.add("  " + key + ": " + value));
    lines.add("  keys:");
    keys.forEach(k -> lines.add("    - " + k));
    lines.add("  correlation:");
    correlation().forEach(r -> lines.add("    - " + r));
    if (!news.errors().isEmpty()) {
      lines.add("  model-error:");
      errors().forEach(e -> lines.add("    - " + e));
    }
    return lines;
  }

  String flow() {
    StringBuilder flow = new StringBuilder("{");
    facts().forEach((key, value) -> flow.append(key).append(": ").append(value).append(", "));
    flow.append("keys: [").append(String.join(", ", keys)).append("], ");
    flow.append("correlation: [").append(String.join(", ", correlation())).append(']');
    if (!news.errors().isEmpty()) {
      flow.append(", model-error: [").append(String.join(", ", errors())).append(']');
    }
    return flow.append('}').toString();
  }

  private Map<String, String> facts() {
    Map<String, String> facts = new java.util.LinkedHashMap<>();
    String name = news.log().substring(news.log().lastIndexOf('/') + 1);
    facts.put("log", text(name, ""));
    facts.put("sha-256", news.sha256());
    facts.put("date", news.date());
    facts.put("version", text(news.version(), ""));
    return facts;
  }

  private List<String> correlation() {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < news.correlation().size(); i++) {
      List<String> row = new ArrayList<>();
      for (int j = 0; j < i; j++) {
        String entry = String.format(Locale.ROOT, "%.3f", news.correlation().at(i, j));
        row.add(entry.replaceFirst("^-?0\\.000$", "0"));
      }
      row.add("1");
      rows.add("[" + String.join(", ", row) + "]");
    }
    return rows;
  }

  private List<String> errors() {
    List<String> errors = new ArrayList<>();
    Map<Signal, FitRecord.ModelError> ordered = new TreeMap<>(news.errors());
    ordered.forEach(
        (signal, error) ->
            errors.add(
                String.format(
                    Locale.ROOT,
                    "{signal: %s, deviation: %.2f K, time: %.0f s}",
                    signal.key(),
                    error.deviation(),
                    Math.max(1, error.time()))));
    return errors;
  }

  /** Writes a text so that it reads as itself, in the quotes that are wanted if they will do. */
  static String text(String text, String quote) {
    if (quote.equals("\"")) {
      return quote + text.replace("\\", "\\\\").replace("\"", "\\\"") + quote;
    }
    boolean bare = quote.isEmpty() && text.matches("[\\p{L}\\p{N}./][\\p{L}\\p{N}./_-]*");
    return bare ? text : "'" + text.replace("'", "''") + "'";
  }
}
