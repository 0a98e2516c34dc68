package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.fluid.Coolant;
import soakloop.rig.Branches;
import soakloop.rig.Loop;
import soakloop.scenario.Scenario;
import soakloop.study.LoopText;

/** The table of flow over temperature against the operating point itself. */
@Tag("analytic")
class LoopFlowTest {
  private static final double WITHIN = 2e-3;

  @ParameterizedTest
  @ValueSource(strings = {LoopText.PIECES, LoopText.SIDE_BY_SIDE, LoopText.PARABOLA})
  void tableFollowsTheOperatingPoint(String text) throws Exception {
    Scenario scenario = LoopText.read(text);
    Loop loop = scenario.rig().loop();
    Coolant coolant = scenario.rig().coolant();
    LoopFlow table = new LoopFlow(loop, coolant);
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 400; i++) {
      double t = random.nextDouble(coolant.minTemperature(), coolant.maxTemperature());
      table.moveTo(t);
      LoopPoint point = LoopPoint.of(loop, coolant, t);
      assertEquals(1, table.flow() / point.flow(), WITHIN, "at " + t + " K");
      double power = loop.pump().power().at(point.flow(), point.point().orElseThrow().pressure());
      assertEquals(1, table.power() / power, 2 * WITHIN, "at " + t + " K");
      if (loop.elements().get(loop.elements().size() - 1) instanceof Branches ways) {
        double[] split = point.split(ways, coolant);
        assertEquals(split[0], table.share(0, 0), WITHIN, "at " + t + " K");
        assertEquals(1, table.share(0, 0) + table.share(0, 1), 1e-12);
      }
    }
  }

  /** Thick coolant flows less, and past the range of its properties the flow stays. */
  @Test
  void aColdLoopFlowsLess() throws Exception {
    Scenario scenario = LoopText.read(LoopText.PIECES);
    Coolant coolant = scenario.rig().coolant();
    LoopFlow table = new LoopFlow(scenario.rig().loop(), coolant);
    double before = 0;
    for (double t = coolant.minTemperature(); t < coolant.maxTemperature(); t += 10) {
      table.moveTo(t);
      assertTrue(table.flow() > before, "at " + t + " K");
      before = table.flow();
    }
    table.moveTo(coolant.maxTemperature());
    double hottest = table.flow();
    table.moveTo(coolant.maxTemperature() + 50);
    assertEquals(hottest, table.flow());
  }

  /** Runs by the method in use and by the explicit one, flow changing all the time. */
  @ParameterizedTest
  @ValueSource(strings = {LoopText.PIECES, LoopText.SIDE_BY_SIDE})
  void runsAgreeWithTheExplicitMethod(String text) throws Exception {
    Setup setup = LoopText.read(text).with("start.loop-coolant", "-5 degC").setup();
    Trace exact = Simulation.run(setup, Options.DEFAULT.explicitly().withTolerances(1e-9, 1e-12));
    Trace used = Simulation.run(setup);
    for (Channel channel : new Channel[] {Channel.SENSOR, Channel.CORE_COOLANT_IN}) {
      for (int i = 0; i < used.size(); i++) {
        assertEquals(
            exact.value(channel, i),
            used.value(channel, i),
            0.03,
            channel + " at " + used.time(i) + " s");
      }
    }
    assertTrue(used.energy().residualFraction() < 1e-12, used.energy().toString());
    double first = used.value(Channel.COOLANT_FLOW, 0);
    double last = used.value(Channel.COOLANT_FLOW, used.size() - 1);
    assertTrue(last > 1.02 * first, first + " to " + last);
  }
}
