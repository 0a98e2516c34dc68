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

/** Fills the templates of pages. Whatever a model holds is escaped, unless it was made here. */
final class PageTemplate {
  private static final String FOLDER = "/soakloop/report/";

  private PageTemplate() {}

  /**
   * Fills a template.
   *
   * @param template its file name
   * @param model what the page is about; the style sheet is put in as {@code css}
   * @throws IOException if the template cannot be read or does not fit
   */
  static String fill(String template, Map<String, Object> model) throws IOException {
    Map<String, Object> all = new HashMap<>(model);
    all.put("css", markup(resource("report.css")));
    StringWriter page = new StringWriter(1 << 19);
    try {
      configuration().getTemplate(template).process(all, page);
    } catch (TemplateException e) {
      throw new IOException("the page's template does not fit its data: " + e.getMessage(), e);
    }
    return page.toString();
  }

  /** Returns what a template needs of the charts. */
  static List<Map<String, Object>> models(List<DrawnChart> charts) {
    return charts.stream().map(PageTemplate::model).toList();
  }

  private static Map<String, Object> model(DrawnChart drawn) {
    return Map.of(
        "title", drawn.title(),
        "caption", drawn.caption(),
        "wide", markup(drawn.wide()),
        "narrow", markup(drawn.narrow()));
  }

  /** Returns what a template needs of an answer. */
  static Map<String, Object> model(Answer answer) {
    return Map.of(
        "number", answer.number(), "unit", answer.unit(), "sentences", answer.sentences());
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setClassForTemplateLoading(PageTemplate.class, FOLDER);
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    return configuration;
  }

  /** Marks a text as made here and safe to stand in the page as it is. */
  private static TemplateHTMLOutputModel markup(String text) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(text);
    } catch (TemplateModelException e) {
      throw new IllegalStateException("HTML takes any text", e);
    }
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = PageTemplate.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IOException("missing from the program: " + FOLDER + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
