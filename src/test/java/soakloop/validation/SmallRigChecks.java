package soakloop.validation;

import java.util.List;
import soakloop.simulate.Channel;
import soakloop.simulate.SmallRig;
import soakloop.simulate.Trace;

/**
 * A whole session of a small rig against the same equations written a second time.
 *
 * <p>The other program is a Python script of seven equations (reservoir, pump, core coolant and
 * metal, heat exchanger coolant and metal, sensor) for {@code scipy.integrate.solve_ivp}, method
 * LSODA, rtol 1e-10, atol 1e-9, phase by phase. It has coolant and air from their polynomials,
 * compression from entropy and enthalpy by root finding, and crossflow effectiveness from modified
 * Bessel functions where this project sums Mason's series. The cell's two clamps are in it; without
 * them, one cell holding so many transfer units, it lies up to 0.3 K away.
 */
final class SmallRigChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;

  private static final Channel[] COLUMNS = {
    Channel.SENSOR,
    Channel.CORE_COOLANT_IN,
    Channel.CORE_COOLANT_OUT,
    Channel.RESERVOIR,
    Channel.EXCHANGER_COOLANT_OUT
  };

  /** In degC at the ends of pull, idle, pull, idle; columns as above. */
  private static final double[][] ELSEWHERE = {
    {54.2191, 31.7981, 46.5995, 31.8944, 37.1766},
    {30.9156, 29.5627, 29.9161, 29.5077, 28.5970},
    {53.7742, 31.1839, 46.0928, 31.2836, 36.7021},
    {30.5596, 29.2489, 29.5916, 29.1946, 28.3150}
  };

  private static final String[] WHEN = {
    "end of pull 1", "end of idle 1", "end of pull 2", "end of idle 2"
  };

  @Override
  public List<Check> checks() {
    CheckList list = new CheckList("Small rig, whole session");
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "seven equations in Python, scipy 1.17.1 solve_ivp (LSODA, rtol 1e-10), invented rig of one"
            + " cell each");
    Trace trace = SmallRig.run();
    double time = 0;
    for (int row = 0; row < ELSEWHERE.length; row++) {
      time += row % 2 == 0 ? SmallRig.PULL : SmallRig.IDLE;
      for (int i = 0; i < COLUMNS.length; i++) {
        list.add(
            COLUMNS[i].label() + ", " + WHEN[row],
            ELSEWHERE[row][i],
            Rounded.to(3, trace.at(COLUMNS[i], time) - ZERO_CELSIUS),
            Tolerance.absolute(0.002),
            "degC");
      }
    }
    return list.checks();
  }
}
