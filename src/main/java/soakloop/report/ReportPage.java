package soakloop.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;
import soakloop.study.Outcome;

/** {@code report.html}: one file that opens from disk, charts inside, no script. */
final class ReportPage {
  private static final String FOLDER = "/soakloop/report/";

  private ReportPage() {}

  /**
   * Writes the page.
   *
   * @param outcome what a run gave
   * @param version of the program
   * @param charts drawn for the page, in order
   * @throws IOException if the template cannot be read or filled
   */
  static String of(Outcome outcome, String version, List<DrawnChart> charts) throws IOException {
    Display display = new Display(outcome.scenario().units(), false);
    Map<String, Object> model = new HashMap<>();
    model.put("version", version);
    model.put("title", outcome.scenario().title());
    model.put("about", outcome.scenario().about());
    model.put("css", markup(resource("report.css")));
    Answer answer = Answer.of(outcome, display);
    model.put(
        "answer",
        Map.of(
            "number", answer.number(),
            "unit", answer.unit(),
            "sentences", answer.sentences()));
    model.put("warnings", outcome.warnings().stream().map(Warning::message).toList());
    Tables tables = new Tables(outcome, display);
    if (!outcome.pulls().isEmpty()) {
      model.put("pulls", tables.pulls().model());
      model.put("pullNote", pullNote(display, outcome));
    }
    model.put("charts", charts.stream().map(ReportPage::model).toList());
    Optional<String> agreement = new Sentences(outcome, display).agreement();
    if (!tables.misfits().rows().isEmpty()) {
      model.put("misfits", tables.misfits().model());
      model.put("errors", tables.errors().model());
      model.put("agreement", agreement.orElse("The log has no charge temperature to compare."));
    }
    model.put("heat", new HeatBars(outcome.trace().energy(), display).groups());
    model.put("closing", closing(outcome.trace()));
    model.put("assumed", tables.assumed().model());
    Conditions conditions = new Conditions(outcome, display);
    model.put("conditions", conditions.lines());
    model.put("session", conditions.session().model());
    model.put("events", tables.events().model());
    model.put("effort", effort(outcome.trace().effort()));
    StringWriter page = new StringWriter(1 << 19);
    try {
      configuration().getTemplate("report.ftlh").process(model, page);
    } catch (TemplateException e) {
      throw new IOException("the report's template does not fit its data: " + e.getMessage(), e);
    }
    return page.toString();
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setClassForTemplateLoading(ReportPage.class, FOLDER);
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    return configuration;
  }

  private static Map<String, Object> model(DrawnChart drawn) {
    return Map.of(
        "title", drawn.title(),
        "caption", drawn.caption(),
        "wide", markup(drawn.wide()),
        "narrow", markup(drawn.narrow()));
  }

  /** Marks a text as made here and safe to stand in the page as it is. */
  private static TemplateHTMLOutputModel markup(String text) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(text);
    } catch (TemplateModelException e) {
      throw new IllegalStateException("HTML takes any text", e);
    }
  }

  private static String pullNote(Display display, Outcome outcome) {
    String degrees = display.symbol(Dimension.TEMPERATURE);
    String differences = display.symbol(Dimension.TEMPERATURE_DIFFERENCE);
    String note =
        "What the charge sensor shows, in "
            + degrees
            + (degrees.equals(differences) ? "" : "; rise in " + differences)
            + ". End is where the pull is counted, peak the highest before the next pull, coolant in"
            + " what enters the core as the pull starts.";
    boolean logged = outcome.pulls().stream().anyMatch(p -> p.logged().isPresent());
    return logged ? note + " Error is modelled end less logged end." : note;
  }

  private static String closing(Trace trace) {
    return String.format(
        Locale.ROOT,
        "What came in, less what went out, is what stays. The sum is off by %.0e of all heat moved.",
        trace.energy().residualFraction());
  }

  private static String effort(Trace.Effort effort) {
    return effort.states()
        + " states, "
        + effort.steps()
        + " steps, "
        + effort.evaluations()
        + " evaluations";
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = ReportPage.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IOException("missing from the program: " + FOLDER + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
