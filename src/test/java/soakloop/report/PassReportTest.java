package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.UnitSystem;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.session.AirPower;
import soakloop.session.Drive;
import soakloop.session.PassCourse;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;
import soakloop.study.Outcome;
import soakloop.study.PullPower;
import soakloop.study.PullResult;
import soakloop.study.Run;

/** Passes from scenario to report. */
class PassReportTest {
  private static Scenario scenario;
  private static Outcome outcome;

  @BeforeAll
  static void run() throws Exception {
    scenario = ScenarioReader.read(Path.of("scenarios/evening-rounds.yaml"));
    outcome = Run.of(scenario);
  }

  private static PassCourse course(int pass) {
    return ((Drive.Pass) outcome.trace().pulls().get(pass).phase().drive()).course();
  }

  /** Air through the engine and through the heat exchanger follow the speeds of the pass. */
  @Tag("regression")
  @Test
  void aPassCountsLikeAPullAndEndsInTheTraps() {
    assertEquals(3, outcome.pulls().size());
    Trace trace = outcome.trace();
    for (int i = 0; i < 3; i++) {
      PullResult pass = outcome.pulls().get(i);
      assertEquals("pass " + (i + 1), pass.name());
      assertEquals(pass.endTime(), pass.countedAt());
      assertEquals(course(i).duration(), pass.endTime() - pass.startTime(), 1e-9);
      assertEquals(course(i).endEngineSpeed(), pass.countedTo(), 1e-6);
      assertTrue(pass.sensor().rise() > 10);
      double before = pass.endTime() - 1e-6;
      assertEquals(course(i).endSpeed(), trace.at(Channel.ROAD_SPEED, before), 1e-3);
      assertTrue(trace.at(Channel.FACE_SPEED, before) > 0.1 * course(i).endSpeed());
      // With the throttle shut the car still rolls, and hardly any air is burnt.
      assertTrue(trace.at(Channel.ROAD_SPEED, pass.endTime() + 1) > 0.8 * course(i).endSpeed());
      assertTrue(
          trace.at(Channel.AIR_MASS_FLOW, pass.endTime() + 1) < 0.3 * pass.airMassFlowPeak());
    }
  }

  /** The power that drives the pass is that of the run, up to the charge it was taken at. */
  @Tag("analytic")
  @Test
  void powerFromAirAgreesWithTheRun() {
    AirPower made =
        new AirPower(scenario.rig(), scenario.day(), scenario.output().power().orElseThrow());
    List<PullPower> powers = PullPower.of(outcome);
    for (int i = 0; i < 3; i++) {
      double speed = outcome.pulls().get(i).countedTo();
      double wheels = powers.get(i).crank().orElseThrow().wheelsFullSpark();
      assertEquals(wheels, made.atWheels(0.8 * speed, speed).at(speed), 0.02 * wheels);
    }
  }

  @Tag("regression")
  @Test
  void whatTheClocksShowIsTold() {
    String text = TextSummary.of(outcome);
    String elapsed = String.format(Locale.ROOT, "%.2f", course(2).times().elapsed());
    assertTrue(text.contains("Pass 3 takes " + elapsed + " s and goes through the traps at"), text);
    assertTrue(text.contains("an estimate."), text);
    assertTrue(text.contains("is not passed in any pass"), text);
    assertFalse(text.contains("pull"), text);
    JsonObject top = JsonParser.parseString(SummaryJson.of(outcome, "test")).getAsJsonObject();
    JsonObject pass = top.getAsJsonArray("pulls").get(1).getAsJsonObject().getAsJsonObject("pass");
    assertFalse(pass.get("measured").getAsBoolean());
    assertEquals(course(1).times().elapsed(), pass.get("elapsed").getAsDouble(), 1e-9);
    assertEquals(course(1).times().trapSpeed(), pass.get("trapSpeed").getAsDouble(), 1e-9);
    assertEquals(course(1).times().sixtyFoot(), pass.get("sixtyFoot").getAsDouble(), 1e-9);
  }

  @Tag("regression")
  @Test
  void aChartGoesFromLaunchToAfterTheTraps() {
    Display display = new Display(UnitSystem.METRIC, false);
    List<String> names = Chart.all(outcome, display).stream().map(Chart::name).toList();
    assertTrue(names.contains("charge-over-pass"));
    assertFalse(names.contains("charge-over-speed"));
    ChargeOverPass chart = new ChargeOverPass(outcome, display);
    assertEquals(3, chart.figure(ChartStyle.PAGE).panels().size());
  }

  @Tag("regression")
  @Test
  void aCarThatRunsOutOfGearsIsToldOf() throws Exception {
    Outcome low = Run.of(scenario.with("vehicle.final-drive", "5"));
    assertTrue(low.warnings().stream().anyMatch(w -> w.kind() == Warning.Kind.PASS_LIMITED));
    assertTrue(outcome.warnings().stream().noneMatch(w -> w.kind() == Warning.Kind.PASS_LIMITED));
    String page = ReportPage.of(low, "test", List.of(), OptionalInt.empty());
    assertTrue(page.contains("<h2>Passes</h2>"));
    assertTrue(page.contains("What the clocks would show"));
  }
}
