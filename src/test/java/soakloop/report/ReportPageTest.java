package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.UnitSystem;
import soakloop.study.Outcome;

/** The page must be safe, whole and in the scenario's units. */
@Tag("analytic")
class ReportPageTest {
  private static String page(Outcome outcome) throws IOException {
    Display display = new Display(outcome.scenario().units(), false);
    List<DrawnChart> charts = Chart.all(outcome, display).stream().map(DrawnChart::of).toList();
    return ReportPage.of(outcome, "1.2.3", charts, OptionalInt.empty());
  }

  @Test
  void textOfTheScenarioIsNeverMarkup() throws IOException {
    String title = "<script>alert('x')</script> \"quoted\" & 5 < 6";
    String page = page(SampleOutcome.standard().titled(title).make());
    assertFalse(page.contains("<script"), "markup from a title");
    assertTrue(page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &quot;quoted&quot;"));
  }

  @Test
  void pageNeedsNothingFromElsewhere() throws IOException {
    String page = page(SampleOutcome.standard().make());
    assertFalse(page.contains("src="), "an outside asset");
    assertFalse(page.contains("@import"), "an outside style");
    assertFalse(page.matches("(?s).*\\bhref=.*"), "a link");
    String withoutNames = page.replaceAll("xmlns(:\\w+)?='[^']*'", "");
    assertFalse(withoutNames.contains("http"), "an address");
  }

  @Test
  void everyPullAndEveryPartIsThere() throws IOException {
    String page = page(SampleOutcome.standard().make());
    for (String heading :
        List.of(
            "Pulls",
            "Charts",
            "Model beside log",
            "Where the heat went",
            "What was assumed",
            "Conditions",
            "How far to trust it")) {
      assertTrue(page.contains("<h2>" + heading + "</h2>"), heading);
    }
    assertTrue(page.contains("sensor.time-constant"));
    assertTrue(page.contains("validation stops at parts"));
    assertTrue(page.contains("<strong>Note:</strong> The log has no coolant leaving the core"));
  }

  @Test
  void usUnitsReachEveryCorner() throws IOException {
    String page = page(SampleOutcome.standard().in(UnitSystem.US).make());
    assertTrue(page.contains("\u00b0F"));
    assertTrue(page.contains("Btu"));
    assertFalse(page.contains("\u00b0C"), "a metric temperature");
    assertFalse(page.contains("kJ"), "a metric heat");
    assertFalse(page.contains("kPa"), "a metric pressure");
  }

  @Test
  void sessionsOfEveryKindMakeAPage() throws IOException {
    SampleOutcome standard = SampleOutcome.standard();
    String cooling = page(standard.pulls(0).make());
    assertFalse(cooling.contains("<h2>Pulls</h2>"));
    String bare = page(standard.pulls(1).withoutLog().limit(OptionalDouble.empty()).make());
    assertFalse(bare.contains("Model beside log"));
    assertFalse(bare.contains(">limit "));
    assertFalse(bare.contains("pull by pull"), "one pull has no row of pulls");
    assertTrue(page(standard.make()).contains("pull by pull"));
  }

  @Test
  void chartsAreWellFormedDrawingsWithWords() throws Exception {
    Outcome outcome = SampleOutcome.standard().titled("5 < 6 & \"so\"").make();
    List<Chart> charts = Chart.all(outcome, new Display(UnitSystem.METRIC, false));
    assertEquals(6, charts.size());
    for (Chart chart : charts) {
      String svg = Drawing.svg(chart, ChartStyle.PAGE);
      var document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      int words = document.getElementsByTagName("text").getLength();
      assertTrue(words > 10, chart.name() + " has words: " + words);
      assertTrue(svg.length() < 150_000, chart.name() + " is large: " + svg.length());
    }
  }

  @Test
  void picturesArePictures() throws IOException {
    Outcome outcome = SampleOutcome.standard().make();
    Map<String, byte[]> files = Rendering.of(new RunFiles(outcome, "1.2.3", OptionalInt.empty()));
    assertEquals(
        new RunFiles(outcome, "1.2.3", OptionalInt.empty()).names(), List.copyOf(files.keySet()));
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().endsWith(".png")) {
        var image = ImageIO.read(new ByteArrayInputStream(file.getValue()));
        assertEquals(1840, image.getWidth());
        assertTrue(image.getHeight() >= 400);
      }
    }
  }
}
