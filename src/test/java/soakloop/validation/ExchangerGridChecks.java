package soakloop.validation;

import static soakloop.exchange.FlowArrangement.CROSS_UNMIXED;

import java.util.List;
import java.util.Locale;
import soakloop.exchange.MultiPass;
import soakloop.rig.Exchanger.Grid;
import soakloop.rig.Passes;
import soakloop.simulate.SteadyExchanger;

/** The cells of an exchanger at rest, against exact steady effectivenesses. */
final class ExchangerGridChecks implements CheckSuite {
  private static final double[] UNITS = {0.5, 1, 1.5, 2, 2.5, 3};
  private static final double[] RATIOS = {0.25, 0.5, 0.75, 1};
  private static final Grid CORE = new Grid(4, 4);
  private static final Grid HEAT_EXCHANGER = new Grid(6, 2);
  private static final Grid A_PASS = new Grid(4, 2);
  private static final Grid FINE = new Grid(6, 6);
  private static final String SERIES =
      "crossflow, both fluids unmixed, exact series (Mason 1955, as in Shah and Sekulic 2003); ";

  private final CheckList list = new CheckList("Exchanger cells at rest");

  @Override
  public List<Check> checks() {
    coreGrid(true, "the air the smaller capacity rate");
    coreGrid(false, "the coolant the smaller capacity rate");
    otherGrids();
    order();
    throughTheDepth();
    onTheFace();
    return list.checks();
  }

  private void coreGrid(boolean airIsLess, String which) {
    list.from(Kind.ANALYTIC, SERIES + "core's grid of 4 along by 4 deep, " + which);
    for (double units : UNITS) {
      for (double ratio : RATIOS) {
        add("", CORE, units, ratio, airIsLess, 1);
      }
    }
  }

  private void otherGrids() {
    list.from(Kind.ANALYTIC, SERIES + "heat exchanger's grid of 6 along by 2 deep, the air less");
    for (double units : new double[] {0.25, 0.5, 1, 1.5}) {
      for (double ratio : RATIOS) {
        add("", HEAT_EXCHANGER, units, ratio, true, 1);
      }
    }
    for (double units : new double[] {2, 3}) {
      for (double ratio : RATIOS) {
        add("", HEAT_EXCHANGER, units, ratio, true, 2.5);
      }
    }
    list.from(Kind.ANALYTIC, SERIES + "6 by 6, the coarsest square grid within 1 % to N 5");
    for (double units : new double[] {4, 5}) {
      for (double ratio : RATIOS) {
        add("air less, ", FINE, units, ratio, true, 1);
        add("coolant less, ", FINE, units, ratio, false, 1);
      }
    }
  }

  private void add(
      String prefix, Grid grid, double units, double ratio, boolean airIsLess, double percent) {
    list.add(
        prefix + at(units, ratio),
        CROSS_UNMIXED.effectiveness(units, ratio),
        SteadyExchanger.effectiveness(Passes.ONE, grid, units, ratio, airIsLess),
        Tolerance.percent(percent),
        "-");
  }

  /** How the error falls as the grid is refined, where exchangers are hardest to get right. */
  private void order() {
    list.from(Kind.ANALYTIC, SERIES + "refinement at N 3, C 1");
    double exact = CROSS_UNMIXED.effectiveness(3, 1);
    double[] error = new double[5];
    for (int i = 0; i < error.length; i++) {
      int cells = 1 << i;
      double computed =
          SteadyExchanger.effectiveness(Passes.ONE, new Grid(cells, cells), 3, 1, true);
      error[i] = Math.abs(computed / exact - 1);
      list.add(
          String.format(Locale.ROOT, "effectiveness, %d by %d", cells, cells),
          exact,
          computed,
          Tolerance.percent(new double[] {30, 10, 1, 0.5, 0.15}[i]),
          "-");
    }
    list.add(
        "order of convergence from 8 by 8 to 16 by 16 (second: halving cells quarters the error)",
        2,
        Math.log(error[3] / error[4]) / Math.log(2),
        Tolerance.absolute(0.3),
        "-");
  }

  /** The default core of two or three passes has 4 cells through its whole depth, rounded up. */
  private void throughTheDepth() {
    list.from(
        Kind.ANALYTIC,
        "n passes in overall counterflow, both streams mixed between passes (Shah and Sekulic"
            + " 2003), each pass as the exact series; the cells keep the air unmixed between"
            + " passes, so that a fine grid does not come to it");
    for (int passes : new int[] {2, 3}) {
      for (double units : new double[] {1, 2, 3}) {
        for (double ratio : new double[] {0.5, 1}) {
          Passes arranged = new Passes(passes, Passes.Arranged.DEPTH);
          double formula = MultiPass.counterflow(CROSS_UNMIXED, units, passes, ratio);
          String what = passes + " passes, " + at(units, ratio);
          add(what + ", 4 by 2 a pass", formula, arranged, A_PASS, units, ratio, 1.5);
          add(what + ", 8 by 8 a pass", formula, arranged, new Grid(8, 8), units, ratio, 1);
        }
      }
    }
  }

  /** Passes side by side: each meets fresh air. */
  private void onTheFace() {
    list.from(
        Kind.ANALYTIC,
        "passes side by side on the face, each as the exact series against fresh air at 1/n of the"
            + " air, coolant mixed between passes (own composition)");
    for (int passes : new int[] {2, 3}) {
      for (double units : new double[] {1, 2, 3}) {
        for (double ratio : new double[] {0.5, 1}) {
          Passes arranged = new Passes(passes, Passes.Arranged.FACE);
          double exact = sideBySide(units, ratio, passes);
          String what = passes + " passes, " + at(units, ratio);
          add(what + ", 4 by 4 a pass", exact, arranged, CORE, units, ratio, 1);
        }
      }
    }
    list.from(
        Kind.ANALYTIC,
        "what the same passes lose against counterflow through the depth (formula above)");
    double counter = MultiPass.counterflow(CROSS_UNMIXED, 2, 2, 0.5);
    list.report(
        "effectiveness of 2 passes on the face over 2 passes through the depth, N 2, C 0.5",
        sideBySide(2, 0.5, 2) / counter,
        "-");
  }

  /** Air the smaller rate: each pass has the whole coolant and 1/n of air and conductance. */
  private static double sideBySide(double units, double ratio, int passes) {
    double pass = CROSS_UNMIXED.effectiveness(units, ratio / passes);
    double coolantShare = pass * ratio / passes;
    return (1 - Math.pow(1 - coolantShare, passes)) / ratio;
  }

  private void add(
      String what,
      double expected,
      Passes passes,
      Grid grid,
      double units,
      double ratio,
      double percent) {
    double computed = SteadyExchanger.effectiveness(passes, grid, units, ratio, true);
    list.add(what, expected, computed, Tolerance.percent(percent), "-");
  }

  private static String at(double units, double ratio) {
    return String.format(Locale.ROOT, "effectiveness, N %.3g, C %.3g", units, ratio);
  }
}
