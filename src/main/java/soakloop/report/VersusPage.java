package soakloop.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soakloop.versus.VersusResult;

/** {@code versus.html}, and the one page of it that a customer gets. */
final class VersusPage {
  private final VersusResult result;
  private final VersusWords words;
  private final VersusSentences say;
  private final VersusTables tables;

  VersusPage(VersusResult result, Display display) {
    this.result = result;
    this.words = new VersusWords(result, display);
    this.say = new VersusSentences(result, words);
    this.tables = new VersusTables(result, words);
  }

  /** Returns the contenders' labels. */
  String title() {
    return String.join(
        " against ", result.plan().contenders().stream().map(c -> c.label()).toList());
  }

  /**
   * Writes the page.
   *
   * @param version of the program
   * @param charts drawn for it, in order
   * @throws IOException if the template cannot be read or filled
   */
  String whole(String version, List<DrawnChart> charts) throws IOException {
    Map<String, Object> model = model(version);
    model.put("pairings", result.pairings().stream().map(this::pairing).toList());
    model.put("charts", PageTemplate.models(charts));
    model.put("method", say.method());
    result
        .sheet()
        .ifPresent(
            sheet -> {
              model.put("sheet", tables.sheet(sheet).model());
              model.put("sheetSays", say.sheet(sheet));
            });
    return PageTemplate.fill("versus.ftlh", model);
  }

  /**
   * Writes the one page for a customer.
   *
   * @param version of the program
   * @param charts drawn, the first of which is shown
   * @throws IOException if the template cannot be read or filled
   */
  String sheet(String version, List<DrawnChart> charts) throws IOException {
    Map<String, Object> model = model(version);
    model.put("charts", PageTemplate.models(charts.subList(0, 1)));
    model.put("pairings", result.pairings().stream().map(this::pairing).toList());
    return PageTemplate.fill("versus-sheet.ftlh", model);
  }

  private Map<String, Object> model(String version) {
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", title());
    model.put("about", say.about());
    model.put("answer", PageTemplate.model(say.answer()));
    model.put("isLogged", result.isLogged());
    model.put("deciding", words.deciding());
    model.put("tolerated", words.display().fineSize(VersusResult.Condition.TOLERATED));
    List<String> who = new ArrayList<>();
    result.plan().contenders().forEach(c -> who.add(c.label() + ": " + c.scenario().title()));
    model.put("who", who);
    return model;
  }

  private Map<String, Object> pairing(VersusResult.Pairing pairing) {
    Map<String, Object> model = new HashMap<>();
    model.put(
        "title",
        result.pairings().size() > 1
            ? words.label(pairing.other()) + " against " + words.label(pairing.one())
            : "");
    model.put("verdict", say.verdict(pairing));
    model.put("pulls", tables.pulls(pairing).model());
    model.put("figures", tables.figures(pairing).model());
    model.put("logged", tables.logged(pairing).model());
    model.put("parts", tables.parts(pairing).model());
    model.put("conditions", tables.conditions(pairing).model());
    model.put("conditionsSay", say.conditions(pairing));
    model.put("elsewhere", tables.elsewhere(pairing).model());
    model.put("elsewhereSays", say.elsewhere(pairing));
    model.put("settling", say.settling(pairing));
    model.put("advice", tables.advice(pairing).model());
    return model;
  }
}
