package soakloop.versus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.RealVector;
import soakloop.fit.FitCase;
import soakloop.fit.FitPlan;
import soakloop.fit.Foresight;
import soakloop.fit.Posterior;
import soakloop.fit.Quantity;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;

/**
 * Plans a day of testing two contenders.
 *
 * @param plan what is asked
 * @param one scenario of the first inside
 * @param other scenario of the second inside
 * @param last index of the pull that decides
 */
record SheetMaker(VersusPlan plan, Scenario one, Scenario other, int last) {
  private static final int PULLS = 6;

  private static final List<Signal> PLAIN = List.of(Signal.CHARGE_TEMPERATURE);
  private static final List<Signal> WITH_PROBE =
      List.of(Signal.CHARGE_TEMPERATURE, Signal.CORE_COOLANT_IN);

  /** Returns the sheet; empty if such a day cannot be run. */
  Optional<TestSheet> sheet(List<VersusResult.Condition> windows) {
    Optional<List<Double>> plain = smallest(List.of(one, other), List.of(0, 1), PLAIN);
    Optional<List<Double>> back = smallest(List.of(one, other, one), List.of(0, 1, 0), PLAIN);
    Optional<List<Double>> probe = smallest(List.of(one, other), List.of(0, 1), WITH_PROBE);
    if (plain.isEmpty() || back.isEmpty() || probe.isEmpty()) {
      return Optional.empty();
    }
    List<TestSheet.Row> rows = new ArrayList<>();
    for (int i = 0; i < PULLS; i++) {
      rows.add(new TestSheet.Row(i + 1, plain.get().get(i), back.get().get(i), probe.get().get(i)));
    }
    return Optional.of(new TestSheet(TestSheet.USUAL_POWER, rows, windows));
  }

  /** Returns the smallest difference that is told apart, by number of pulls from 1 on. */
  private Optional<List<Double>> smallest(
      List<Scenario> scenarios, List<Integer> groups, List<Signal> signals) {
    List<FitCase> cases = new ArrayList<>();
    for (int i = 0; i < scenarios.size(); i++) {
      cases.add(FitCase.planned("session " + (i + 1), scenarios.get(i), signals));
    }
    FitPlan planned =
        new FitPlan(
            cases,
            List.of(),
            plan.swapped(),
            groups,
            List.of(),
            Quantity.NEXT_END,
            plan.draws(),
            plan.threads());
    Posterior known = Posterior.believed(planned);
    Runner runner = new Runner(new Mixer(cases, plan.swapped()), plan.threads());
    List<Integer> first = List.of(0, 1);
    List<Mix> mixes = first.stream().map(c -> Mix.all(0).with(Origin.SWAPPED, c)).toList();
    RealVector gradient =
        new Inquiry(plan, known, runner, List.of("", ""), first, mixes, last).gradient(0, 1);
    double floor = known.modelError() * plan.by().errors() * Math.sqrt(2);
    return Foresight.of(known, PULLS, plan.threads())
        .map(
            ahead -> {
              List<Double> smallest = new ArrayList<>();
              for (int pulls = 1; pulls <= PULLS; pulls++) {
                double deviation = Math.hypot(ahead.deviation(gradient, pulls), floor);
                smallest.add(
                    TestSheet.smallest(deviation, plan.confidence(), TestSheet.USUAL_POWER));
              }
              return smallest;
            });
  }
}
