package soakloop.validation;

import static soakloop.exchange.FlowArrangement.COUNTERFLOW;
import static soakloop.exchange.FlowArrangement.CROSS_BOTH_MIXED;
import static soakloop.exchange.FlowArrangement.CROSS_CMAX_MIXED;
import static soakloop.exchange.FlowArrangement.CROSS_CMIN_MIXED;
import static soakloop.exchange.FlowArrangement.CROSS_UNMIXED;
import static soakloop.exchange.FlowArrangement.CROSS_UNMIXED_APPROXIMATE;
import static soakloop.exchange.FlowArrangement.PARALLEL;

import java.util.List;
import java.util.Locale;
import soakloop.exchange.FlowArrangement;
import soakloop.exchange.MultiPass;

/** Effectiveness of each flow arrangement against high-precision arithmetic and closed forms. */
final class EffectivenessChecks implements CheckSuite {
  private static final FlowArrangement[] COLUMNS = {
    COUNTERFLOW,
    PARALLEL,
    CROSS_UNMIXED,
    CROSS_UNMIXED_APPROXIMATE,
    CROSS_CMAX_MIXED,
    CROSS_CMIN_MIXED
  };

  /** N, C, then the columns above, then two passes of unmixed crossflow. */
  private static final double[][] TABLE = {
    {1, 0.25, 0.59828602, 0.57079616, 0.58801133, 0.58720198, 0.58470381, 0.58720198, 0.59525660},
    {2, 0.25, 0.82276581, 0.73433200, 0.79742231, 0.80330098, 0.77759433, 0.79275992, 0.81420537},
    {0.5, 0.5, 0.36226557, 0.35175563, 0.35782705, 0.35194779, 0.35718290, 0.35750641, 0.36103300},
    {1, 0.5, 0.56473340, 0.51791323, 0.54748983, 0.54476371, 0.54196899, 0.54476371, 0.55940710},
    {2, 0.5, 0.77460033, 0.63347529, 0.73240925, 0.73875846, 0.70201272, 0.71754644, 0.75913558},
    {3, 0.5, 0.87442515, 0.65926067, 0.81970828, 0.82840516, 0.75636230, 0.78854428, 0.85201213},
    {5, 0.5, 0.95720092, 0.66629794, 0.90166775, 0.90527424, 0.78284502, 0.84051892, 0.93200834},
    {2, 0.75, 0.72182699, 0.55417292, 0.67108029, 0.67520717, 0.63622640, 0.64506708, 0.70199956},
    {1, 1, 0.50000000, 0.43233236, 0.47622239, 0.46853639, 0.46853639, 0.46853639, 0.49207962},
    {3, 1, 0.75000000, 0.49876062, 0.68129111, 0.68420900, 0.61334132, 0.61334132, 0.71809082}
  };

  private final CheckList list = new CheckList("Effectiveness");

  @Override
  public List<Check> checks() {
    table();
    library();
    extremes();
    balanced();
    identity();
    return list.checks();
  }

  private void table() {
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "textbook formulas (Shah and Sekulic 2003, table 3.4; Mason 1954) in 30-digit arithmetic,"
            + " mpmath 1.2.1");
    Tolerance tolerance = Tolerance.absolute(6e-9);
    for (double[] row : TABLE) {
      for (int i = 0; i < COLUMNS.length; i++) {
        single(COLUMNS[i], row[0], row[1], row[2 + i], tolerance);
      }
      passes(row[0], row[1], 2, row[8], tolerance);
    }
    passes(3, 0.5, 3, 0.86241491, tolerance);
    passes(3, 0.5, 4, 0.86698567, tolerance);
  }

  private void library() {
    list.from(Kind.LIBRARY, "ht 1.0.7, documentation and tests");
    Tolerance tolerance = Tolerance.absolute(1e-10);
    single(CROSS_UNMIXED, 5, 0.7, 0.844482179975, tolerance);
    single(COUNTERFLOW, 5, 0.7, 0.920670368605, tolerance);
    single(PARALLEL, 5, 0.7, 0.588115606842, tolerance);
    single(CROSS_CMAX_MIXED, 5, 0.7, 0.7158099831, tolerance);
    single(CROSS_CMIN_MIXED, 5, 0.7, 0.7497843942, tolerance);
  }

  private void extremes() {
    list.from(
        Kind.COMPUTED_ELSEWHERE, "the same formulas in 40 to 400-digit arithmetic, mpmath 1.4.1");
    Tolerance tight = Tolerance.relative(1e-12);
    single(CROSS_UNMIXED, 1e-9, 1e-9, 9.999999995e-10, tight);
    single(CROSS_UNMIXED, 1e-9, 1, 9.99999999e-10, tight);
    single(CROSS_UNMIXED, 1e-3, 0.5, 0.000999250458099061, tight);
    single(CROSS_UNMIXED, 0.01, 1, 0.00990082753481751, tight);
    single(CROSS_UNMIXED, 0.05, 0.3, 0.0484155970932277, tight);
    single(CROSS_UNMIXED, 0.3, 1, 0.228508377378584, tight);
    single(CROSS_UNMIXED, 3, 1e-4, 0.950190526331245, tight);
    single(CROSS_UNMIXED, 10, 0.9, 0.858593185730076, tight);
    single(CROSS_UNMIXED, 50, 0.95, 0.940850268140588, tight);
    single(CROSS_UNMIXED, 100, 0.99, 0.948097369648673, tight);
    single(CROSS_UNMIXED, 490, 0.98, 0.983059961551825, tight);
    Tolerance limit = Tolerance.absolute(1e-9);
    single(CROSS_UNMIXED, 501, 0.95, 0.992129871456938, limit);
    single(CROSS_UNMIXED, 600, 0.999, 0.977449209748791, limit);
    single(CROSS_UNMIXED, 1000, 0.95, 0.997010123290539, limit);
    single(CROSS_BOTH_MIXED, 0.01, 0.3, 0.00993533010851859, tight);
    single(CROSS_BOTH_MIXED, 1, 0.5, 0.539745874691332, tight);
    single(CROSS_BOTH_MIXED, 3, 1, 0.564506731927958, tight);
    single(CROSS_BOTH_MIXED, 5, 0.75, 0.634982412459749, tight);
    single(COUNTERFLOW, 1e-7, 0.5, 9.99999925000005e-08, tight);
    single(COUNTERFLOW, 2, 0.999999999, 0.666666666888889, tight);
    single(COUNTERFLOW, 30, 0.25, 0.999999999873108, tight);
  }

  private void balanced() {
    list.from(
        Kind.ANALYTIC,
        "balanced unmixed crossflow: 1 - exp(-2 N) (I0(2 N) + I1(2 N)), Bessel functions by mpmath"
            + " 1.4.1");
    Tolerance tight = Tolerance.relative(1e-12);
    single(CROSS_UNMIXED, 10, 1, 0.822713465931885, tight);
    single(CROSS_UNMIXED, 50, 1, 0.920311467675773, tight);
    single(CROSS_UNMIXED, 500, 1, 0.97477182928718, tight);
    Tolerance limit = Tolerance.absolute(1e-9);
    single(CROSS_UNMIXED, 501, 1, 0.974797013387284, limit);
    single(CROSS_UNMIXED, 1e4, 1, 0.994358139426702, limit);
    single(CROSS_UNMIXED, 1e6, 1, 0.999435810451714, limit);
  }

  private void identity() {
    list.from(Kind.ANALYTIC, "at one transfer unit the two formulas are the same expression");
    for (double ratio : new double[] {0.1, 0.5, 0.9}) {
      list.add(
          "unmixed, approximate, beside Cmin mixed, N 1, C " + Digits.of(ratio, 3),
          CROSS_CMIN_MIXED.effectiveness(1, ratio),
          CROSS_UNMIXED_APPROXIMATE.effectiveness(1, ratio),
          Tolerance.relative(1e-14),
          "-");
    }
  }

  private void single(
      FlowArrangement arrangement, double ntu, double ratio, double expected, Tolerance tolerance) {
    String name = arrangement.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    list.add(
        state(name, ntu, ratio), expected, arrangement.effectiveness(ntu, ratio), tolerance, "-");
  }

  private void passes(double ntu, double ratio, int count, double expected, Tolerance tolerance) {
    list.add(
        state(count + " passes of cross unmixed", ntu, ratio),
        expected,
        MultiPass.counterflow(CROSS_UNMIXED, ntu, count, ratio),
        tolerance,
        "-");
  }

  private static String state(String name, double ntu, double ratio) {
    return name + ", N " + Digits.of(ntu, 9) + ", C " + Digits.of(ratio, 9);
  }
}
