package soakloop.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import soakloop.fit.StrdProblem;

/** The search under every fit, on NIST's certified problems (validation/nist-strd). */
final class StrdChecks implements CheckSuite {
  private static final double SIX_DIGITS = 1e-6;

  /** Beyond these digits machines differ. */
  private static final MathContext SHOWN = new MathContext(8);

  private final CheckList list = new CheckList("Nonlinear least squares");

  @Override
  public List<Check> checks() {
    list.from(
        Kind.PUBLISHED,
        "NIST Statistical Reference Datasets, nonlinear regression, certified values"
            + " (validation/nist-strd); six of eleven digits asked for");
    StrdProblem.all().forEach(this::check);
    return list.checks();
  }

  private void check(StrdProblem problem) {
    for (int start = 1; start <= 2; start++) {
      StrdProblem.Answer answer = problem.from(start);
      for (int k = 0; k < problem.parameters().size(); k++) {
        StrdProblem.Parameter wanted = problem.parameters().get(k);
        String what =
            problem.name() + " (" + problem.level() + "), start " + start + ", b" + (k + 1);
        list.add(
            what,
            wanted.certified(),
            shown(answer.parameters()[k]),
            Tolerance.relative(SIX_DIGITS),
            "-");
        list.add(
            what + ", standard deviation",
            wanted.deviation(),
            shown(answer.deviations()[k]),
            Tolerance.relative(SIX_DIGITS),
            "-");
      }
    }
  }

  private static double shown(double value) {
    return new BigDecimal(value).round(SHOWN).doubleValue();
  }
}
