package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.study.LimitLine;
import soakloop.study.Measure;
import soakloop.study.Variation;

/** What charts, page, table, CSV and JSON of a plan hold is what was computed. */
@Tag("analytic")
class VaryResultsTest {
  private static Variation curve;
  private static Variation map;

  @TempDir private Path temp;

  @BeforeAll
  static void run() throws Exception {
    curve = SampleVariation.of(List.of("end-charge=124 degF"), "airflow.inlet-rise=0 K..20 K/5");
    map =
        SampleVariation.of(
            List.of(), "reservoir.volume=3 L,5 L,12 L", "airflow.shop-fan=0.3 m/s,1.5 m/s,4 m/s");
  }

  private static double fahrenheit(double kelvin) {
    return kelvin * 1.8 - 459.67;
  }

  private static XYDataset drawn(Chart chart, ChartStyle style, int layer) {
    XYPlot plot = chart.figure(style).panels().get(0).plot();
    return plot.getDataset(layer);
  }

  @Test
  void curveIsDrawnAtTheValuesThatWereRun() {
    for (ChartStyle style : List.of(ChartStyle.PAGE, ChartStyle.PHONE)) {
      Chart chart = new VaryCurve(curve, Measure.END_CHARGE, SampleVariation.words(curve));
      XYDataset line = drawn(chart, style, 0);
      assertEquals(5, line.getItemCount(0));
      for (int i = 0; i < 5; i++) {
        assertEquals(5.0 * i, line.getXValue(0, i), 1e-12);
        assertEquals(fahrenheit(curve.value(i, Measure.END_CHARGE)), line.getYValue(0, i), 1e-9);
      }
    }
  }

  @Test
  void coursesEndWhereThePullIsOver() {
    Chart chart = new LastPullCourses(curve, SampleVariation.words(curve));
    XYDataset warmest = drawn(chart, ChartStyle.PAGE, 4);
    int last = warmest.getItemCount(0) - 1;
    assertEquals(0, warmest.getXValue(0, 0), 1e-9);
    assertEquals(10, warmest.getXValue(0, last), 1e-9);
    // The sensor still climbs at the end, past where the pull is counted.
    assertTrue(warmest.getYValue(0, last) > fahrenheit(curve.value(4, Measure.END_CHARGE)));
  }

  @Test
  void mapHoldsEveryRunInItsPlace() {
    VaryMap chart = new VaryMap(map, Measure.COOLANT, SampleVariation.words(map));
    double[][] grid = chart.grid();
    for (int i = 0; i < 9; i++) {
      assertEquals(fahrenheit(map.value(i, Measure.COOLANT)), grid[i / 3][i % 3], 1e-9);
    }
    XYPlot plot = chart.figure(ChartStyle.PAGE).panels().get(0).plot();
    assertEquals(3, plot.getDomainAxis().getLowerBound(), 0);
    assertEquals(12, plot.getDomainAxis().getUpperBound(), 0);
    assertEquals(4, plot.getRangeAxis().getUpperBound(), 0);
  }

  @Test
  void limitIsSaidWhereItIsCrossed() {
    LimitSentences say = new LimitSentences(curve, SampleVariation.words(curve));
    LimitLine line = say.leading(Measure.END_CHARGE).orElseThrow();
    double at = line.crossings().get(0).under();
    String number = SampleVariation.words(curve).found(at);
    assertEquals(
        "Pull 2 ends under 124 degF with airflow.inlet-rise up to " + number + " K.",
        say.sentence(line));
    Answer answer = new VarySentences(curve, SampleVariation.words(curve)).answer();
    assertTrue(answer.sentences().contains(say.sentence(line)));
    // The answer leads with the first result that crosses its limit once.
    LimitLine peak = say.leading(Measure.PEAK_CHARGE).orElseThrow();
    String leading = SampleVariation.words(curve).found(peak.crossings().get(0).under());
    assertEquals(leading, answer.number());
    assertEquals("K", answer.unit());
    assertEquals(say.sentence(peak), answer.sentences().get(0));
  }

  @Test
  void severalStretchesAreAllSaid() {
    LimitSentences say = new LimitSentences(map, SampleVariation.words(map));
    LimitLine line =
        new LimitLine(
            Measure.PEAK_CHARGE,
            327.15,
            0,
            java.util.OptionalInt.of(1),
            false,
            List.of(
                new LimitLine.Crossing(3.4561, 3.4564),
                new LimitLine.Crossing(7.001, 7.0005),
                new LimitLine.Crossing(9, 11)));
    assertEquals(
        "up to 3.46 L and from 7 L to somewhere between 9 L and 11 L", say.stretches(line));
    LimitLine never =
        new LimitLine(Measure.PEAK_CHARGE, 327.15, 0, java.util.OptionalInt.of(1), true, List.of());
    assertEquals(
        "With airflow.shop-fan 1.5 m/s, the charge sensor passes 129 degF with any"
            + " reservoir.volume from 3 L to 12 L.",
        say.sentence(never));
  }

  @Test
  void csvHoldsEveryPointWithUnitsInItsHeader() {
    List<String> lines = VaryCsv.of(map).lines().toList();
    assertEquals(
        "reservoir.volume [L],airflow.shop-fan [m/s],peak-charge [degC],end-charge [degC],"
            + "coolant [degC],over-limit [s],failed",
        lines.get(0));
    assertEquals(10, lines.size());
    String[] cells = lines.get(6).split(",", -1);
    assertEquals("5", cells[0]);
    assertEquals("4", cells[1]);
    assertEquals(map.value(5, Measure.PEAK_CHARGE) - 273.15, Double.parseDouble(cells[2]), 1e-9);
    assertEquals("", cells[6]);
  }

  @Test
  void jsonTellsTheCrossings() {
    JsonObject top = JsonParser.parseString(VaryJson.of(curve, "1.2.3")).getAsJsonObject();
    JsonObject end = top.getAsJsonArray("results").get(1).getAsJsonObject();
    assertEquals("end-charge", end.get("result").getAsString());
    assertEquals((124 - 32) / 1.8, end.get("limit").getAsDouble(), 1e-9);
    JsonObject line = end.getAsJsonArray("limitCrossings").get(0).getAsJsonObject();
    assertEquals("airflow.inlet-rise", line.get("along").getAsString());
    JsonObject crossing = line.getAsJsonArray("crossings").get(0).getAsJsonObject();
    assertTrue(crossing.get("under").getAsDouble() < crossing.get("over").getAsDouble());
    assertEquals(5, top.getAsJsonArray("points").size());
  }

  @Test
  void failedRunsAreGapsWithReasons() throws Exception {
    Variation holed =
        SampleVariation.of(List.of(), "start.charge=-30 degC,29 degC,32 degC,35 degC");
    VaryCurve chart = new VaryCurve(holed, Measure.PEAK_CHARGE, SampleVariation.words(holed));
    assertTrue(Double.isNaN(chart.curve()[1][0]));
    String row = VaryCsv.of(holed).lines().toList().get(1);
    assertTrue(row.startsWith("-30,,,,,") && row.contains("start.charge"), row);
    String text = VaryText.of(holed);
    assertTrue(text.contains("1 run of 4 could not finish"), text);
    assertTrue(text.contains("Not run: -30 degC: start.charge"), text);
  }

  @Test
  void linesOfTextFitAConsole() {
    for (Variation variation : List.of(curve, map)) {
      VaryText.of(variation)
          .lines()
          .forEach(line -> assertTrue(line.length() <= TextSummary.COLUMNS, line));
    }
  }

  @Test
  void filesOfRunAndVaryLiveInOneFolder() throws Exception {
    ResultFolder folder = ResultFolder.at(temp, false);
    folder.write(SampleOutcome.standard().make(), "1.2.3");
    List<Path> written = folder.write(curve, "1.2.3");
    assertEquals(temp.resolve("vary.html"), written.get(0));
    assertEquals(8, written.size());
    folder.requireRoom(map.plan());
    folder.write(map, "1.2.3");
    assertFalse(Files.exists(temp.resolve("vary-last-pull.png")), "of the question before");
    folder.write(SampleOutcome.standard().make(), "1.2.3");
    folder.write(map, "1.2.3");
    String page = Files.readString(temp.resolve("vary.html"));
    assertTrue(page.startsWith("<!DOCTYPE html>"), page.substring(0, 40));
    assertFalse(page.contains("<script") || page.contains("src=\"http"), "stands by itself");
    assertTrue(page.contains("Pressure-test a core"), "cautions");
  }

  @Test
  void nameListOfAPlanIsThatOfItsFiles() {
    assertEquals(new VaryFiles(curve, "1").names(), VaryFiles.names(curve.plan()));
    assertEquals(new VaryFiles(map, "1").names(), VaryFiles.names(map.plan()));
    assertTrue(new VaryFiles(map, "1").everyName().containsAll(VaryFiles.names(curve.plan())));
  }
}
