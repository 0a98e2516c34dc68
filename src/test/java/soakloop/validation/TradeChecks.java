package soakloop.validation;

import java.util.List;
import soakloop.simulate.Channel;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.simulate.TradeRig;

/**
 * What the trade sees on a dyno, beside an invented rig of plausible hardware whose two cores'
 * conductances are chosen to give both ends of the range: it reproduces what is seen, it does not
 * predict it.
 */
final class TradeChecks implements CheckSuite {
  private static final double FAHRENHEIT_PER_KELVIN = 1.8;
  private static final int PULLS = 5;

  private final CheckList list = new CheckList("Trade facts");

  @Override
  public List<Check> checks() {
    try {
      list.from(
          Kind.TRADE,
          "common practice, no source: a blown V8 above 20 psi swept 2,000 to 8,000 rpm in still air,"
              + " charge and day near 108 degF, engine coolant steady near 200 degF; the sensor rises"
              + " 32 to 47 degF in the first pull depending on the core, later pulls start and end"
              + " higher in shrinking steps. The rig's cores were chosen to span that range");
      core("good core, 1770 W/K", 1770);
      core("lesser core, 1430 W/K", 1430);
      return list.checks();
    } catch (SimulationException e) {
      throw new IllegalStateException(e);
    }
  }

  private void core(String name, double conductance) throws SimulationException {
    Trace trace = Simulation.run(TradeRig.pulls(PULLS, conductance));
    double before = Double.NaN;
    int number = 0;
    for (Trace.Span pull : trace.pulls()) {
      number++;
      double start = trace.at(Channel.SENSOR, pull.start());
      double end = trace.at(Channel.SENSOR, pull.countedAt() - 1e-6);
      if (Double.isNaN(before)) {
        list.add(
            name + ": rise of the first pull",
            39.5,
            Rounded.to(1, (end - start) * FAHRENHEIT_PER_KELVIN),
            Tolerance.absolute(7.5),
            "degF");
      } else {
        list.report(
            name + ": pull " + number + " ends above the one before",
            Rounded.to(1, (end - before) * FAHRENHEIT_PER_KELVIN),
            "degF");
      }
      before = end;
    }
  }
}
