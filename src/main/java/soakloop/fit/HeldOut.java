package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import soakloop.log.Signal;
import soakloop.reading.Updates;
import soakloop.simulate.Channel;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.PullResult;
import soakloop.study.PullResults;

/**
 * The last pull, foretold from all before it.
 *
 * @param label of the case
 * @param pull its name
 * @param foretold highest reading of the charge sensor from its start on, K
 * @param logged the same, as it was logged, K
 * @param without what would have been foretold without any log, K
 */
public record HeldOut(String label, String pull, Band foretold, double logged, Band without) {
  /** How long before a pull its run-up begins, s. */
  private static final double RUN_UP = 5;

  /** Returns foretold less logged, K. */
  public double error() {
    return foretold.middle() - logged;
  }

  /** Returns whether the logged reading lies within the 90 % interval. */
  public boolean inside() {
    return foretold.holds(logged);
  }

  /** Belief that intervals are as wide as they should be, counted in pulls foretold. */
  private static final double BELIEF = 3;

  /**
   * Returns how many times wider intervals should be, from how far pulls were off: the mean square
   * of their errors in deviations foretold, with some pulls at 1 thrown in for what is believed of
   * the method; never less than 1. (A scaled inverse chi-square belief of variance; general, no
   * source. Three pulls are our own judgement.)
   */
  static double widening(List<HeldOut> held) {
    double sum = BELIEF;
    for (HeldOut one : held) {
      double deviation = Math.max(one.foretold().half() / FitKey.NINETY, 1e-6);
      sum += one.error() * one.error() / (deviation * deviation);
    }
    return Math.sqrt(Math.max(1, sum / (BELIEF + held.size())));
  }

  /** A pull that can be held out. */
  private record Last(int inCase, String name, double from, double to, double logged) {}

  /**
   * Fits all cases without their last pulls and foretells these. Cases with fewer than two pulls,
   * or whose last is not logged to its end, hold out nothing.
   */
  static List<HeldOut> of(FitModel model, int draws) throws FitException {
    List<Last> lasts = new ArrayList<>();
    List<FitCase> shorter = new ArrayList<>();
    for (int i = 0; i < model.cases().size(); i++) {
      Optional<Last> last = last(model, i);
      last.ifPresent(lasts::add);
      FitCase whole = model.cases().get(i);
      shorter.add(last.map(l -> whole.before(l.from() - RUN_UP)).orElse(whole));
    }
    if (lasts.isEmpty()) {
      return List.of();
    }
    FitModel before = new FitModel(shorter, model.keys(), model.threads());
    Fitted fitted = Fitter.fit(before, new double[model.keys().size()], false);
    List<HeldOut> held = new ArrayList<>();
    for (Last last : lasts) {
      held.add(
          new HeldOut(
              model.cases().get(last.inCase()).label(),
              last.name(),
              peak(Prediction.after(fitted, draws), last),
              last.logged(),
              peak(Prediction.before(model, draws), last)));
    }
    return held;
  }

  private static Band peak(Prediction prediction, Last last) {
    return prediction.ofSession(
        last.inCase(),
        (trace, place, wrong) ->
            highest(trace, last.from(), last.to()) + prediction.bias(last.inCase(), place) + wrong);
  }

  private static double highest(Trace trace, double from, double to) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = trace.firstFrom(from); i < trace.size() && trace.time(i) <= to; i++) {
      highest = Math.max(highest, trace.value(Channel.SENSOR, i));
    }
    return highest;
  }

  private static Optional<Last> last(FitModel model, int inCase) {
    FitCase one = model.cases().get(inCase);
    if (one.scenario().logged().isEmpty()) {
      return Optional.empty();
    }
    Trace trace;
    try {
      trace = Simulation.run(one.scenario().setup().withoutLimit(), FitModel.OPTIONS);
    } catch (SimulationException e) {
      return Optional.empty();
    }
    List<PullResult> pulls =
        PullResults.of(trace, one.scenario().limits().chargeTemperature(), one.scenario().logged());
    if (pulls.size() < 2) {
      return Optional.empty();
    }
    PullResult last = pulls.get(pulls.size() - 1);
    double to = last.logged().map(PullResult.Logged::coveredTo).orElse(Double.NaN);
    double startsAt = one.scenario().logged().orElseThrow().startsAt();
    Updates charge =
        one.scenario()
            .logged()
            .orElseThrow()
            .reading()
            .usable(Signal.CHARGE_TEMPERATURE)
            .between(last.startTime() + startsAt, to + startsAt);
    if (charge.isEmpty()) {
      return Optional.empty();
    }
    double peak = new ArrayRealVector(charge.values()).getMaxValue();
    return Optional.of(new Last(inCase, last.name(), last.startTime(), to, peak));
  }
}
