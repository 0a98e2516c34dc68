package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.session.Drive;
import soakloop.session.Inputs;
import soakloop.session.PassCourse;
import soakloop.session.Phase;

/** A pass as it is written, and what is said of one that cannot be. */
@Tag("regression")
class PassReaderTest {
  private static final String CAR =
      """
      vehicle:
        mass: 1650 kg
        tyre-diameter: 660 mm
        final-drive: 3.55
        gears: [2.97, 2.07, 1.43, 1.0]
        shift-at: 6700 rpm
        wheel-power: 300 kW
      """;

  private static final String PASS = "session: [{pass: {}}]\n";

  private static PassCourse course(Scenario scenario, int phase) {
    Drive drive = scenario.session().phases().get(phase).drive();
    return assertInstanceOf(Drive.Pass.class, drive).course();
  }

  private static String problems(String text) {
    ScenarioException bad = assertThrows(ScenarioException.class, () -> Scenarios.read(text), text);
    return String.valueOf(bad.getMessage());
  }

  @Test
  void aPassBringsThePhasesThatStandInIt() throws ScenarioException {
    List<Phase> phases = Scenarios.read(Scenarios.PASSED).session().phases();
    assertEquals(
        List.of(
            "burnout 1",
            "staging 1",
            "pass 1",
            "shutdown 1",
            "return road 1",
            "wait after pass 1",
            "pass 2"),
        phases.stream().map(Phase::name).toList());
    assertEquals(
        List.of(Phase.Kind.PASS, Phase.Kind.PASS),
        phases.stream().map(Phase::kind).filter(Phase.Kind::isCounted).toList());
    PassCourse course = course(Scenarios.read(Scenarios.PASSED), 2);
    Inputs inputs = new Inputs();
    phases.get(2).drive().at(course.duration() - 1e-9, inputs);
    assertEquals(Inputs.Load.FULL, inputs.load);
    double traps = inputs.roadSpeed;
    phases.get(3).drive().at(0, inputs);
    assertEquals(traps, inputs.roadSpeed, 1e-6);
    assertEquals(Inputs.Load.IDLE, inputs.load);
    phases.get(3).drive().at(18, inputs);
    assertEquals(40 / 3.6, inputs.roadSpeed, 1e-9);
    assertTrue(phases.get(5).cooling().openHood());
  }

  @Test
  void passesThatAreAlikeAreWorkedOutOnce() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(Scenarios.SHORT_HEAD + CAR + "session: [{repeat: 3, steps: [{pass: {}}]}]");
    assertSame(course(scenario, 0), course(scenario, 2));
  }

  @Test
  void aMeasuredSpeedIsTakenAsItStands() throws ScenarioException {
    Scenario scenario = Scenarios.read(Scenarios.PASSED_TOO);
    PassCourse measured = course(scenario, 0);
    assertTrue(measured.measured());
    assertEquals(12, measured.duration());
    assertEquals(100 / 3.6, measured.roadSpeed().at(4), 1e-9);
    assertEquals(50, course(scenario, 1).engineSpeed().at(0), 1e-9);
  }

  /** Air against rollers: the same car, its power stated as what its air gives, is as quick. */
  @Test
  void powerComesFromTheAirWhereNoneIsStated() throws ScenarioException {
    String air = CAR.replace("  wheel-power: 300 kW\n", "") + "power: {}\n" + PASS;
    PassCourse made = course(Scenarios.read(Scenarios.SHORT_HEAD + air), 0);
    String denser = air.replace("power: {}", "power: {fuel-consumption: 250 g/kWh}");
    assertTrue(
        course(Scenarios.read(Scenarios.SHORT_HEAD + denser), 0).times().elapsed()
            < made.times().elapsed());
    double hot =
        course(Scenarios.read((Scenarios.SHORT_HEAD + air).replace("20 degC", "45 degC")), 0)
            .times()
            .elapsed();
    assertTrue(hot > made.times().elapsed());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gears: [2.97, 2.07, 1.43, 1.0] | gears: [2.97, 3] | must fall from gear to gear",
        "gears: [2.97, 2.07, 1.43, 1.0] | gears: [2.97, x] | found `x`, which",
        "gears: [2.97, 2.07, 1.43, 1.0] | gears: [25] | it takes ratios as plain numbers",
        "gears: [2.97, 2.07, 1.43, 1.0] | gears: 3 | it takes a list",
        "wheel-power: 300 kW | driven: both | needs the car's power: vehicle.wheel-power",
        "wheel-power: 300 kW | drivetrain-loss: 20 % | has no use without crank-power",
        "mass: 1650 kg | {} | vehicle.mass: is missing",
        "{pass: {}} | {pass: {launch-rpm: 7000 rpm}} | must be below vehicle.shift-at",
        "{pass: {}} | {pass: {distance: 10 m}} | allowed: 50 to 2000 m",
        "{pass: {}} | {pass: {engine-speed: 6000 rpm}} | goes with a measured road-speed only",
        "{pass: {}} | {pass: {road-speed: 60 mph}} | needs at least two points over time",
        "{pass: {}} | {pass: {road-speed: [[0 s, 0 mph], [2 s, 20 mph]]}} | cannot be a pass",
        "{pass: {}} | {pass: {distance: 660 ft, road-speed: [[0 s, 0 mph], [9 s, 90 mph]]}} |"
            + " has no use beside a measured road-speed",
        "{pass: {}} | {pass: {staging: {fro: 3 s}}} | did you mean `for`",
      })
  void whatIsWrongIsSaid(String out, String in, String said) {
    String text = Scenarios.SHORT_HEAD + CAR + PASS;
    String broken = in.equals("{}") ? text.replace("  " + out + "\n", "") : text.replace(out, in);
    String problems = problems(broken);
    assertTrue(problems.contains(said), problems);
  }

  @Test
  void aPassNeedsACar() {
    assertTrue(problems(Scenarios.SHORT_HEAD + PASS).contains("needs a section vehicle"));
    String stuck = (CAR + PASS).replace("300 kW", "5 kW").replace("mass: 1650 kg", "mass: 5000 kg");
    String said = problems(Scenarios.SHORT_HEAD + stuck);
    assertTrue(said.contains("the car does not move off"), said);
  }

  @Test
  void anOpenHoodBringsTheAirNearerToTheDay() throws ScenarioException {
    Scenario open = Scenarios.read(Scenarios.PASSED);
    assertEquals(0.5, open.rig().underhood().openHood(), 1e-12);
    double day = open.day().temperature();
    double shut = open.rig().underhood().temperature(day, 360, 0, false);
    assertEquals(
        (shut - day) / 2, open.rig().underhood().temperature(day, 360, 0, true) - day, 1e-9);
    Scenario never = Scenarios.read(Scenarios.SHORT_HEAD + CAR + PASS);
    assertTrue(never.values().stream().noneMatch(v -> v.key().equals("underhood.open-hood")));
  }
}
