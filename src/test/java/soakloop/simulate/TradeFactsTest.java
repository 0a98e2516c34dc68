package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What the trade sees on a dyno. Common practice, no source: a blown V8 above 20 psi swept 2,000 to
 * 8,000 rpm in still air, charge and day near 108 degF, engine coolant steady near 200 degF; the
 * charge sensor rises 32 to 47 degF in the first pull depending on the core; later pulls start and
 * end higher in shrinking steps.
 *
 * <p>The rig's hardware is plausible and its two cores' conductances are chosen to give both ends
 * of that range: this shows that such a rig reproduces what is seen, not that it predicts it.
 */
@Tag("trade")
class TradeFactsTest {
  private static final double GOOD_CORE = 1770;
  private static final double LESSER_CORE = 1430;
  private static final int PULLS = 5;
  private static final double FAHRENHEIT_PER_KELVIN = 1.8;

  @Test
  void firstPullRises32To47FahrenheitByCore() throws SimulationException {
    double good = firstRise(GOOD_CORE);
    double lesser = firstRise(LESSER_CORE);
    assertTrue(good >= 32 && good < 35, "good core: " + good + " degF");
    assertTrue(lesser > 44 && lesser <= 47, "lesser core: " + lesser + " degF");
    double last = lesser;
    for (double share = 0.25; share < 1; share += 0.25) {
      double rise = firstRise(LESSER_CORE + share * (GOOD_CORE - LESSER_CORE));
      assertTrue(rise < last && rise > good, rise + " degF is not between its neighbours");
      last = rise;
    }
  }

  @Test
  void laterPullsStartAndEndHigherInShrinkingSteps() throws SimulationException {
    for (double conductance : new double[] {GOOD_CORE, LESSER_CORE}) {
      Trace trace = Simulation.run(TradeRig.pulls(PULLS, conductance));
      double[] starts = trace.pulls().stream().mapToDouble(p -> sensor(trace, p.start())).toArray();
      double[] ends = trace.pulls().stream().mapToDouble(p -> sensor(trace, counted(p))).toArray();
      assertEquals(TradeRig.kelvin(108), starts[0], 0.05, "stated start of the first pull");
      stepsShrink(starts, "starts at " + conductance + " W/K");
      stepsShrink(ends, "ends at " + conductance + " W/K");
    }
  }

  /** Boost and engine coolant are given; that they go together with the air mass is not. */
  @Test
  void rigIsTheOneDescribed() throws SimulationException {
    Setup setup = TradeRig.pulls(1, GOOD_CORE);
    Trace trace = Simulation.run(setup);
    Trace.Span pull = trace.pulls().get(0);
    double end = counted(pull);
    double pressure = setup.day().pressure() + trace.at(Channel.BOOST, end);
    double swallowed =
        setup.rig().engine().swallowedVolume(TradeRig.FAST)
            * pressure
            / (287.05 * trace.at(Channel.CHARGE, end));
    assertEquals(swallowed, trace.at(Channel.AIR_MASS_FLOW, end), 0.08 * swallowed, "kg/s");
    for (int i = 0; i < trace.size(); i++) {
      assertEquals(TradeRig.kelvin(200), trace.value(Channel.ENGINE_COOLANT, i), 0.1, "steady");
    }
    for (int i = trace.firstFrom(pull.start()); trace.time(i) < end; i++) {
      assertTrue(trace.value(Channel.BOOST, i) > 20 * TradeRig.PSI, "above 20 psi");
    }
  }

  private static void stepsShrink(double[] temperatures, String what) {
    double before = Double.POSITIVE_INFINITY;
    for (int i = 1; i < temperatures.length; i++) {
      double step = temperatures[i] - temperatures[i - 1];
      String where = what + ", pull " + (i + 1) + ": step " + step + " K after " + before + " K";
      assertTrue(step > 0.5 && step < before, where);
      before = step;
    }
  }

  private static double firstRise(double conductance) throws SimulationException {
    Trace trace = Simulation.run(TradeRig.pulls(1, conductance));
    Trace.Span first = trace.pulls().get(0);
    double rise = sensor(trace, counted(first)) - sensor(trace, first.start());
    return rise * FAHRENHEIT_PER_KELVIN;
  }

  private static double sensor(Trace trace, double time) {
    return trace.at(Channel.SENSOR, time);
  }

  /** Just before the pull's end, where the next phase has not begun. */
  private static double counted(Trace.Span pull) {
    return pull.countedAt() - 1e-6;
  }
}
