package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.charge.BlowerSize;
import soakloop.charge.BoostMatch;
import soakloop.charge.ChargePath;
import soakloop.charge.Swallowing;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** Boost as displacements, pulleys and the charge temperature make it, from scenario to trace. */
@Tag("analytic")
class BoostFromPulleysTest {
  private static final double GAS = 287.05;
  private static final double DAY = 298.15;

  @TempDir private Path folder;

  /** Both flows written down anew at every sample of the pull. */
  @Test
  void theEngineSwallowsWhatTheBlowerDelivers() throws Exception {
    Trace trace = Run.of(Pulleys.scenario()).trace();
    int looked = 0;
    for (int i = trace.firstFrom(5.05); i < trace.size() - 1; i++) {
      double speed = trace.value(Channel.ENGINE_SPEED, i);
      double ratio = (100e3 + trace.value(Channel.BOOST_BEFORE_CORE, i)) / 100e3;
      double share = 0.92 - 0.06 * (ratio - 2);
      double delivered = 1.7e-3 * 188 / 80 * speed * share * 100e3 / (GAS * DAY);
      double manifold = 100e3 + trace.value(Channel.BOOST, i);
      double swallowed =
          4.1e-3 / 2 * 0.96 * speed * manifold / (GAS * trace.value(Channel.CHARGE, i));
      double flow = trace.value(Channel.AIR_MASS_FLOW, i);
      assertEquals(delivered, flow, 2e-5 * delivered);
      assertEquals(swallowed, flow, 2e-5 * swallowed);
      assertEquals(ratio, trace.value(Channel.PRESSURE_RATIO, i), 1e-8);
      looked++;
    }
    assertTrue(looked > 50);
  }

  /** An engine that breathes less at the top swallows what its own curve says, at every sample. */
  @Test
  void volumetricEfficiencyMayFollowEngineSpeed() throws Exception {
    String points = "[[2600 rpm, 100 %], [5000 rpm, 104 %], [6500 rpm, 90 %]]";
    String text = Pulleys.text().replace("efficiency: 96 %", "efficiency: " + points);
    Trace trace = Run.of(ScenarioReader.parse("curve", text, Path.of(""))).trace();
    int looked = 0;
    for (int i = trace.firstFrom(5.05); i < trace.size() - 1; i++) {
      double rpm = 60 * trace.value(Channel.ENGINE_SPEED, i);
      double share =
          rpm < 5000 ? 1 + 0.04 * (rpm - 2600) / 2400 : 1.04 - 0.14 * (rpm - 5000) / 1500;
      double manifold = 100e3 + trace.value(Channel.BOOST, i);
      double swallowed =
          4.1e-3 / 2 * share * rpm / 60 * manifold / (GAS * trace.value(Channel.CHARGE, i));
      double flow = trace.value(Channel.AIR_MASS_FLOW, i);
      assertEquals(swallowed, flow, 2e-5 * swallowed);
      looked++;
    }
    assertTrue(looked > 50);
  }

  /** The match of the room of pure functions, found by bracketing instead. */
  @Test
  void theMatchOfThePureFunctionsIsTheSame() throws Exception {
    Outcome outcome = Run.of(Pulleys.scenario());
    double charge = Pulleys.end(outcome, Channel.CHARGE);
    double loss = Pulleys.end(outcome, Channel.CORE_LOSS);
    double flow = Pulleys.end(outcome, Channel.AIR_MASS_FLOW);
    double outlet = Pulleys.end(outcome, Channel.BLOWER_OUTLET);
    double before = 100e3 + Pulleys.end(outcome, Channel.BOOST_BEFORE_CORE);
    BoostMatch.Boost match =
        new BoostMatch(
                new BlowerSize(1.7e-3, 188.0 / 80, 0.98, 0.06),
                new Swallowing(4.1e-3, 0.96),
                new ChargePath(
                    ChargePath.Cooling.heldAt(charge),
                    loss,
                    flow,
                    before / (GAS * 0.5 * (outlet + charge))),
                ratio -> 0.70,
                0.95)
            .shut(new BoostMatch.Inlet(100e3, DAY, GAS), 6500 / 60.0);
    assertEquals(match.afterCore() - 100e3, Pulleys.end(outcome, Channel.BOOST), 2);
    assertEquals(match.beforeCore() - 100e3, Pulleys.end(outcome, Channel.BOOST_BEFORE_CORE), 2);
    assertEquals(match.massFlow(), flow, 2e-5 * flow);
    assertEquals(match.blowerOutlet(), outlet, 0.02);
    double power = Pulleys.end(outcome, Channel.BLOWER_POWER);
    assertEquals(match.blowerPower(), power, 3e-4 * power);
  }

  @Test
  void aCoolerChargeLowersBothBoostsAndBringsAirThroughLeakageOnly() throws Exception {
    Outcome warm = Run.of(Pulleys.scenario().with("start.loop-coolant", "60 degC"));
    Outcome cool = Run.of(Pulleys.scenario().with("start.loop-coolant", "10 degC"));
    assertTrue(Pulleys.end(cool, Channel.CHARGE) < Pulleys.end(warm, Channel.CHARGE) - 20);
    for (Channel falls :
        new Channel[] {
          Channel.BOOST, Channel.BOOST_BEFORE_CORE, Channel.BLOWER_POWER, Channel.BLOWER_OUTLET
        }) {
      assertTrue(Pulleys.end(cool, falls) < 0.98 * Pulleys.end(warm, falls), falls.label());
    }
    double gain =
        Pulleys.end(cool, Channel.AIR_MASS_FLOW) / Pulleys.end(warm, Channel.AIR_MASS_FLOW) - 1;
    double leaked =
        0.06
            * (Pulleys.end(warm, Channel.PRESSURE_RATIO)
                - Pulleys.end(cool, Channel.PRESSURE_RATIO));
    double warmShare = 0.92 - 0.06 * (Pulleys.end(warm, Channel.PRESSURE_RATIO) - 2);
    assertTrue(gain > 0.005 && gain < 0.03, "gain " + gain);
    assertEquals(leaked / warmShare, gain, 1e-6);
  }

  @Test
  void withoutLeakageTheAirMassDoesNotKnowTheCharge() throws Exception {
    Scenario tight = Pulleys.scenario().with("blower.leakage", "0 %");
    Outcome warm = Run.of(tight.with("start.loop-coolant", "60 degC"));
    Outcome cool = Run.of(tight.with("start.loop-coolant", "10 degC"));
    assertEquals(
        Pulleys.end(warm, Channel.AIR_MASS_FLOW), Pulleys.end(cool, Channel.AIR_MASS_FLOW), 1e-15);
    assertEquals(
        Pulleys.end(cool, Channel.CHARGE) / Pulleys.end(warm, Channel.CHARGE),
        (100e3 + Pulleys.end(cool, Channel.BOOST)) / (100e3 + Pulleys.end(warm, Channel.BOOST)),
        1e-6);
  }

  @Test
  void aSmallerPulleyMovesAllOfThem() throws Exception {
    Outcome large = Run.of(Pulleys.scenario());
    Outcome small = Run.of(Pulleys.scenario().with("blower.pulleys.blower", "72 mm"));
    for (Channel rises :
        new Channel[] {
          Channel.BOOST,
          Channel.BOOST_BEFORE_CORE,
          Channel.CORE_LOSS,
          Channel.AIR_MASS_FLOW,
          Channel.BLOWER_OUTLET,
          Channel.BLOWER_POWER,
          Channel.CHARGE,
          Channel.SENSOR
        }) {
      assertTrue(Pulleys.end(small, rises) > Pulleys.end(large, rises), rises.label());
    }
  }

  @Test
  void withoutPressureRiseNothingIsHeatedAndNoPowerIsTaken() throws Exception {
    Outcome outcome = Run.of(Pulleys.scenario().with("blower.pulleys.blower", "200 mm"));
    Trace trace = outcome.trace();
    for (int i = trace.firstFrom(5.05); i < trace.size(); i++) {
      assertEquals(1, trace.value(Channel.PRESSURE_RATIO, i));
      assertEquals(DAY, trace.value(Channel.BLOWER_OUTLET, i));
      assertEquals(0, trace.value(Channel.BLOWER_POWER, i));
      assertTrue(trace.value(Channel.BOOST, i) < 0);
    }
  }

  @Test
  void anOpenBypassIsExact() throws Exception {
    Trace trace = Run.of(Pulleys.scenario()).trace();
    double swallowed = 4.1e-3 / 2 * 0.96 * 800 / 60;
    for (int i = 0; trace.time(i) < 5; i++) {
      assertEquals(1, trace.value(Channel.PRESSURE_RATIO, i));
      assertEquals(DAY, trace.value(Channel.BLOWER_OUTLET, i));
      assertEquals(0, trace.value(Channel.BLOWER_POWER, i));
      assertEquals(swallowed * 38e3 / (GAS * DAY), trace.value(Channel.AIR_MASS_FLOW, i), 1e-12);
    }
  }

  @Test
  void aStatedBoostIsHeldWhateverTheCharge() throws Exception {
    Scenario held = Pulleys.with("boost: 90 kPa\n");
    for (String coolant : new String[] {"10 degC", "60 degC"}) {
      Outcome outcome = Run.of(held.with("start.loop-coolant", coolant));
      assertEquals(90e3, Pulleys.end(outcome, Channel.BOOST), 1e-9);
    }
  }

  @Test
  void theLoggedBoostReplacesIt() throws Exception {
    Files.writeString(
        folder.resolve("log.csv"),
        """
        Time [s],RPM [rpm],Boost [kPa]
        0,3000,60
        5,4500,80
        10,6000,70
        15,6000,70
        """);
    Files.writeString(
        folder.resolve("replay.yaml"),
        Pulleys.text()
                .replaceAll(
                    "(?s)session:.*", "session: [{replay: {pulls: [{from: 2 s, to: 12 s}]}}]\n")
            + "boost: from-pulleys\nlog: {file: log.csv}\n");
    Outcome outcome = Run.of(ScenarioReader.read(folder.resolve("replay.yaml")));
    assertEquals(80e3, outcome.trace().at(Channel.BOOST, 5), 1);
    assertEquals(70e3, outcome.trace().at(Channel.BOOST, 12), 1);
  }

  @Test
  void aBlowerThatRunsAwayIsRefused() throws Exception {
    Scenario huge =
        Pulleys.scenario().with("blower.displacement", "15 L/rev").with("blower.leakage", "0 %");
    SimulationException refused = assertThrows(SimulationException.class, () -> Run.of(huge));
    assertTrue(
        String.valueOf(refused.getMessage()).contains("check displacements and drive ratio"),
        refused.getMessage());
  }

  @Test
  void outsideItsTableTheEdgeCountsAndIsTold() throws Exception {
    String flat = "[[1000 rpm, 60 %], [20000 rpm, 60 %]]";
    Scenario inside = Pulleys.mapped("1", "4", flat);
    Scenario value = Pulleys.scenario().with("blower.adiabatic-efficiency", "60 %");
    assertEquals(
        Pulleys.end(Run.of(value), Channel.BLOWER_OUTLET),
        Pulleys.end(Run.of(inside), Channel.BLOWER_OUTLET),
        1e-6);
    assertTrue(tables(Run.of(inside)).isEmpty());
    Outcome outside = Run.of(Pulleys.mapped("1", "1.5", flat));
    assertEquals(
        Pulleys.end(Run.of(inside), Channel.BLOWER_OUTLET),
        Pulleys.end(outside, Channel.BLOWER_OUTLET),
        1e-6);
    Warning warning = tables(outside).get(0);
    assertEquals(1, tables(outside).size());
    assertEquals(1.5, warning.outside().orElseThrow().range().high());
    assertTrue(warning.message().contains("pressure ratio"), warning.message());
    Outcome fast = Run.of(Pulleys.mapped("1", "4", "[[1000 rpm, 60 %], [9000 rpm, 60 %]]"));
    assertTrue(tables(fast).get(0).message().contains("9000 rpm"), tables(fast)::toString);
  }

  private static java.util.List<Warning> tables(Outcome outcome) {
    return outcome.warnings().stream()
        .filter(w -> w.message().startsWith("blower.efficiency-table"))
        .toList();
  }
}
