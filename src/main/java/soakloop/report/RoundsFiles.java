package soakloop.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.plan.EveningAnswer;
import soakloop.plan.WaitPlan;

/**
 * The files of a planned evening.
 *
 * @param answer what it gave
 * @param version of the program
 */
record RoundsFiles(EveningAnswer answer, String version) implements ResultFiles {
  private static final String PAGE = "rounds.html";
  private static final String JSON = "rounds.json";
  private static final String CSV = "rounds.csv";

  /** Every name; a plan always has all of them. */
  static final List<String> NAMES = List.of(PAGE, JSON, CSV);

  @Override
  public String pageName() {
    return PAGE;
  }

  @Override
  public List<Chart> charts() {
    return List.of();
  }

  @Override
  public Map<String, Callable<String>> texts() {
    Map<String, Callable<String>> texts = new LinkedHashMap<>();
    texts.put(JSON, () -> RoundsJson.of(answer, version));
    texts.put(CSV, () -> RoundsCsv.of(answer));
    return texts;
  }

  @Override
  public String page(List<DrawnChart> drawn) throws IOException {
    WaitPlan question = answer.plan().question();
    WaitWords words = new WaitWords(new Display(question.scenario().units(), false));
    RoundsSentences say = new RoundsSentences(answer, words);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", question.scenario().title());
    model.put(
        "about",
        "An evening of "
            + answer.rounds().size()
            + " rounds. Limit: "
            + words.display().temperature(question.limit())
            + " true charge, in "
            + words.percent(question.confidence())
            + " of equally likely cars.");
    model.put("answer", PageTemplate.model(say.answered()));
    model.put("rounds", new RoundsTables(answer, words).rounds().model());
    model.put("share", words.percent(question.confidence()));
    model.put("method", say.method());
    model.put("iceBelow", words.display().temperature(question.iceBelow()));
    model.put("ices", answer.plan().ice() > 0);
    return PageTemplate.fill("rounds.ftlh", model);
  }

  @Override
  public List<String> everyName() {
    return NAMES;
  }
}
