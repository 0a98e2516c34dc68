package soakloop.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import soakloop.scenario.Scenario;
import soakloop.simulate.Trace;

/**
 * What a {@link Measure} is read off: a run with at least one pull.
 *
 * @param scenario that was run
 * @param trace what happened
 * @param pulls in order
 */
record Measured(Scenario scenario, Trace trace, List<PullResult> pulls) {
  static Measured of(Outcome outcome) {
    return new Measured(outcome.scenario(), outcome.trace(), outcome.pulls());
  }

  /** Returns the highest value over all pulls; NaN if none has one. */
  double highest(ToDoubleFunction<PullResult> value) {
    return pulls.stream().mapToDouble(value).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN);
  }

  /** Returns the core's pressure loss over all pulls; NaN where it is not known. */
  double loss(ToDoubleFunction<PullResult.ChargeLoss> value) {
    return highest(p -> p.chargeLoss().map(value::applyAsDouble).orElse(Double.NaN));
  }

  PullResult last() {
    return pulls.get(pulls.size() - 1);
  }

  PullPower power() {
    return PullPower.at(scenario, trace, last());
  }

  /** Returns power behind the blower where the last pull is counted; NaN where not asked for. */
  double crank(ToDoubleFunction<PullPower.Crank> value) {
    Optional<PullPower.Crank> crank = power().crank();
    return crank.isPresent() ? value.applyAsDouble(crank.get()) : Double.NaN;
  }

  /** Returns spark taken out where the last pull is counted; NaN without a table. */
  double sparkOut() {
    return power().spark().map(PullPower.Spark::out).orElse(Double.NaN);
  }
}
