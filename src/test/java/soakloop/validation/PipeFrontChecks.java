package soakloop.validation;

import java.util.List;
import soakloop.fluid.Water;
import soakloop.quantity.Curve;
import soakloop.rig.Hose;
import soakloop.simulate.CellChain;

/** A hot front through a steel pipe, measured by others, against the hose's cells. */
final class PipeFrontChecks implements CheckSuite {
  private static final double LENGTH = 39; // m, "about"
  private static final double BORE = 52.48e-3; // m
  private static final double OUTER = 60.3e-3; // m
  private static final double STEEL_CONDUCTIVITY = 50; // W/(m K), from memory; hardly matters
  private static final Hose.Wall STEEL =
      new Hose.Wall((OUTER - BORE) / 2, STEEL_CONDUCTIVITY, 7800 * 480);

  /** W/(m2 K) on the steel: 13 mm of insulation of 0.04 W/(m K), 5 W/(m2 K) beyond. */
  private static final double OUTSIDE = 2.44;

  private static final double ROOM = 291.15; // K
  private static final int CELLS = 120;
  private static final String SOURCE =
      "hot front through a steel pipe, measured at the University of Liege, data of the IBPSA"
          + " Modelica library (validation/pipe-front)";

  private final CheckList list = new CheckList("Hose cells against a measured front");

  @Override
  public List<Check> checks() {
    for (PipeRun run : PipeRun.all()) {
      check(run);
    }
    return list.checks();
  }

  private void check(PipeRun run) {
    double[] walled = outlet(run, LENGTH, CELLS, 1);
    double[] bare = outlet(run, LENGTH, CELLS, 0);
    double level = run.halfway();
    double measured = run.reaches(run.outlet(), level);
    list.from(Kind.MEASURED, SOURCE)
        .add(
            "half of the front leaves, " + run.name(),
            measured,
            Rounded.to(2, run.reaches(walled, level)),
            Tolerance.percent(7),
            "s")
        .add(
            "root mean square error of the water leaving, " + run.name(),
            0,
            Rounded.to(3, error(run, walled)),
            Tolerance.absolute(0.8),
            "K");
    list.from(Kind.MEASURED, SOURCE + "; the same without the wall's heat capacity")
        .report(
            "half of the front leaves, no wall, " + run.name(),
            Rounded.to(2, run.reaches(bare, level)),
            "s")
        .report(
            "root mean square error of the water leaving, no wall, " + run.name(),
            Rounded.to(3, error(run, bare)),
            "K");
  }

  /** Water leaving the cells at the measured instants, K. */
  static double[] outlet(PipeRun run, double length, int cells, int layers) {
    Hose pipe = new Hose("pipe", length, BORE, STEEL, OUTSIDE, cells, layers);
    Curve inlet = run.inletOverTime();
    Curve flow = run.flowOverTime();
    double[] later = java.util.Arrays.copyOfRange(run.time(), 1, run.time().length);
    CellChain chain =
        new CellChain(Water.INSTANCE, 300)
            .hose(pipe)
            .around(ROOM, 0)
            .fed(inlet::at, flow::at)
            .from(run.outlet()[0]);
    double[][] states = chain.at(later);
    double[] out = new double[run.time().length];
    out[0] = run.outlet()[0];
    for (int i = 0; i < later.length; i++) {
      out[i + 1] = chain.leaving(states[i]);
    }
    return out;
  }

  static double error(PipeRun run, double[] computed) {
    double sum = 0;
    for (int i = 0; i < computed.length; i++) {
      double off = computed[i] - run.outlet()[i];
      sum += off * off;
    }
    return Math.sqrt(sum / computed.length);
  }
}
