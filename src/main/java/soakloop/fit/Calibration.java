package soakloop.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import soakloop.log.Signal;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.Outcome;
import soakloop.study.Run;

/** Finds what logs say of cars. */
public final class Calibration {
  /**
   * What a key must do to a log, in deviations of independent news, to be fitted at all: a key
   * below it would keep more than nine tenths of its spread.
   */
  private static final double NEWS = 0.5;

  /** Most keys that are fitted together. */
  private static final int MOST_KEYS = 40;

  /** Keys this much correlated cannot be told apart [-]. */
  private static final double TIED = 0.9;

  /** Root mean square of the charge sensor from which on it says nothing at all, K. */
  private static final double HOPELESS = 8;

  private static final int STEPS = 6;

  private final FitPlan plan;
  private final Steps steps;

  private Calibration(FitPlan plan, Steps steps) {
    this.plan = plan;
    this.steps = steps;
  }

  /**
   * Fits.
   *
   * @param plan what is asked
   * @throws FitException if nothing can be found out; says why
   */
  public static FitResult of(FitPlan plan) throws FitException {
    return of(plan, Steps.SILENT);
  }

  /**
   * Fits, telling how far it has come.
   *
   * @param plan what is asked
   * @param steps is told
   * @throws FitException if nothing can be found out; says why
   */
  public static FitResult of(FitPlan plan, Steps steps) throws FitException {
    return new Calibration(plan, steps).result();
  }

  /**
   * Fits, and says no more than what is then known of the keys.
   *
   * @param plan what is asked
   * @throws FitException if nothing can be found out; says why
   */
  public static Posterior posterior(FitPlan plan) throws FitException {
    Found found = new Calibration(plan, Steps.SILENT).found();
    return Posterior.known(found.fitted(), found.untold(), found.heldOut());
  }

  /**
   * What a search found.
   *
   * @param fitted keys that the logs tell of
   * @param untold those that they do not
   * @param heldOut last pulls, foretold
   * @param widening how many times wider intervals are for them
   */
  private record Found(
      Fitted fitted, List<FitKey> untold, List<HeldOut> heldOut, double widening) {}

  private FitResult result() throws FitException {
    Found found = found();
    return read(found.fitted(), found.untold(), found.heldOut(), found.widening());
  }

  private Found found() throws FitException {
    steps.begin(0, STEPS, "asking what the log can tell");
    List<FitKey> all = chosen(new FitKeys(plan.cases(), plan.own(), plan.groups()).all());
    FitModel everything = new FitModel(plan.cases(), all, plan.threads());
    boolean[] told = told(everything);
    List<FitKey> keys =
        IntStream.range(0, all.size()).filter(k -> told[k]).mapToObj(all::get).toList();
    List<FitKey> untold =
        IntStream.range(0, all.size()).filter(k -> !told[k]).mapToObj(all::get).toList();
    if (keys.stream().noneMatch(k -> k.role() instanceof Role.OfScenario)) {
      throw new FitException(
          "the log tells nothing of any key that may move; give keys a spread, as in"
              + " 'conductance: 700 W/K +/- 20 %', or see whether the log fits the session at all");
    }
    FitModel model = new FitModel(plan.cases(), keys, plan.threads());
    steps.begin(1, STEPS, "fitting all pulls");
    Fitted fitted = Fitter.fit(model, new double[keys.size()], true);
    requireLikeness(fitted);
    steps.begin(2, STEPS, "fitting without the last pull");
    List<HeldOut> heldOut = HeldOut.of(model, plan.draws());
    double widening = HeldOut.widening(heldOut);
    return new Found(fitted.believedLess(widening), untold, heldOut, widening);
  }

  private List<FitKey> chosen(List<FitKey> all) throws FitException {
    for (String start : plan.profiled()) {
      requireKey(all, start);
    }
    if (plan.chosen().isEmpty()) {
      return all;
    }
    for (String start : plan.chosen()) {
      requireKey(all, start);
    }
    return all.stream()
        .filter(
            k ->
                !(k.role() instanceof Role.OfScenario)
                    || plan.chosen().stream().anyMatch(c -> begins(k, c)))
        .toList();
  }

  private static void requireKey(List<FitKey> all, String start) throws FitException {
    if (all.stream().noneMatch(k -> begins(k, start))) {
      throw new FitException(
          "`"
              + start
              + "` is no key with a spread; there are: "
              + String.join(", ", all.stream().map(FitKey::name).toList()));
    }
  }

  private static boolean begins(FitKey key, String start) {
    return key.name().equals(start)
        || key.name().startsWith(start + ".")
        || key.name().startsWith(start + " ");
  }

  /** Finds which keys the logs can inform, by what each does where things are believed to be. */
  private static boolean[] told(FitModel model) throws FitException {
    int keys = model.keys().size();
    double[] place = new double[keys];
    double[] foretold = model.at(place);
    if (IntStream.range(0, foretold.length).anyMatch(i -> Math.abs(foretold[i]) >= 1e4)) {
      throw new FitException("the scenario as it is cannot run, so nothing can be fitted");
    }
    FitProblem problem = new FitProblem(model, Evidence.usual(model.cases()));
    double[][] slopes = problem.slopes(model.slopes(place, foretold, false), keys);
    double[] news = new double[keys];
    for (int k = 0; k < keys; k++) {
      double sum = 0;
      for (int i = 0; i < foretold.length; i++) {
        sum += slopes[i][k] * slopes[i][k];
      }
      news[k] = Math.sqrt(sum);
    }
    double least =
        IntStream.range(0, keys)
            .mapToDouble(k -> news[k])
            .boxed()
            .sorted(Comparator.reverseOrder())
            .skip(MOST_KEYS)
            .findFirst()
            .orElse(0.0);
    boolean[] told = new boolean[keys];
    for (int k = 0; k < keys; k++) {
      told[k] = news[k] > Math.max(NEWS, least);
    }
    return told;
  }

  private FitResult read(Fitted fitted, List<FitKey> untold, List<HeldOut> heldOut, double widening)
      throws FitException {
    FitModel model = fitted.model();
    List<Integer> order =
        IntStream.range(0, model.keys().size())
            .boxed()
            .sorted(Comparator.comparingDouble(fitted::deviation))
            .toList();
    List<KeyNews> news =
        order.stream()
            .map(
                k ->
                    KeyNews.of(
                        model.keys().get(k), fitted.place().getEntry(k), fitted.deviation(k)))
            .toList();
    RealMatrix correlation = correlation(fitted, order);
    List<Outcome> before = outcomes(model, new double[model.keys().size()]);
    List<Outcome> after = outcomes(model, fitted.place().toArray());
    List<FitResult.SignalFit> signals = signals(fitted);
    steps.begin(3, STEPS, "foretelling the next pull");
    List<FitResult.Quantities> quantities = quantities(fitted);
    steps.begin(4, STEPS, "asking what else to measure");
    List<List<Advice>> advice =
        IntStream.range(0, model.cases().size())
            .mapToObj(i -> Adviser.of(fitted, i, plan.wanted()))
            .toList();
    steps.begin(5, STEPS, "following keys out");
    List<FitResult.Profiled> profiles = profiles(fitted, order, news, widening);
    FitResult.Effort effort =
        new FitResult.Effort(
            model.size(), fitted.effectiveKeys(), fitted.settled(), fitted.rivals().size());
    return new FitResult(
        plan,
        news,
        untold,
        correlation,
        signals,
        quantities,
        heldOut,
        before,
        after,
        pairs(news, correlation),
        widening,
        advice,
        profiles,
        effort,
        Cautions.of(news, signals, effort));
  }

  /** Finds intervals by profile; what the logs say is believed less by what widened the others. */
  private List<FitResult.Profiled> profiles(
      Fitted fitted, List<Integer> order, List<KeyNews> news, double widening) {
    List<FitResult.Profiled> all = new ArrayList<>();
    Map<Signal, CorrelatedError> errors = new EnumMap<>(Signal.class);
    fitted
        .errors()
        .forEach((s, e) -> errors.put(s, new CorrelatedError(e.deviation() / widening, e.time())));
    LeastSquares.Residuals problem =
        new BelievedLess(new FitProblem(fitted.model(), errors), fitted.model().size(), widening);
    Profile profile = new Profile(problem, fitted.place(), fitted.covariance());
    for (int i = 0; i < order.size(); i++) {
      FitKey key = news.get(i).key();
      if (plan.profiled().stream().anyMatch(p -> begins(key, p))) {
        double[] ends = profile.of(order.get(i));
        double one = key.value(ends[0]);
        double other = key.value(ends[1]);
        all.add(new FitResult.Profiled(news.get(i), Math.min(one, other), Math.max(one, other)));
      }
    }
    return all;
  }

  /** Turns down a log that nothing makes the scenario look like. */
  private void requireLikeness(Fitted fitted) throws FitException {
    for (FitResult.SignalFit signal : signals(fitted)) {
      if (signal.signal() == Signal.CHARGE_TEMPERATURE && signal.after() > HOPELESS) {
        throw new FitException(
            String.format(
                Locale.ROOT,
                "%s: no values of the keys within their spreads make the model show what the log"
                    + " does; the charge sensor stays typically %.0f K off. See whether the log's"
                    + " pulls are the session's (`log` shows them), whether log.starts-at fits, and"
                    + " whether the column's unit is what its name says.",
                signal.label(),
                signal.after()));
      }
    }
  }

  private static RealMatrix correlation(Fitted fitted, List<Integer> order) {
    int n = order.size();
    RealMatrix correlation = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double shared = fitted.covariance().getEntry(order.get(i), order.get(j));
        correlation.setEntry(
            i, j, shared / fitted.deviation(order.get(i)) / fitted.deviation(order.get(j)));
      }
    }
    return correlation;
  }

  private static List<FitResult.Pair> pairs(List<KeyNews> news, RealMatrix correlation) {
    List<FitResult.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < news.size(); i++) {
      for (int j = 0; j < i; j++) {
        double c = correlation.getEntry(i, j);
        if (Math.abs(c) > TIED) {
          double a = news.get(j).left();
          double b = news.get(i).left();
          double half = (a * a + b * b) / 2;
          double apart = Math.hypot((a * a - b * b) / 2, c * a * b);
          double known = Math.sqrt(Math.max(0, half - apart));
          pairs.add(
              new FitResult.Pair(news.get(j).key().name(), news.get(i).key().name(), c, known));
        }
      }
    }
    return pairs;
  }

  private static List<Outcome> outcomes(FitModel model, double[] place) throws FitException {
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < model.cases().size(); i++) {
      try {
        outcomes.add(Run.of(model.scenario(i, place)));
      } catch (ScenarioException | SimulationException e) {
        throw new FitException(
            model.cases().get(i).label() + ": the fitted car cannot run: " + e.getMessage());
      }
    }
    return outcomes;
  }

  private List<FitResult.SignalFit> signals(Fitted fitted) {
    FitModel model = fitted.model();
    double[] before = model.at(new double[model.keys().size()]);
    List<FitResult.SignalFit> signals = new ArrayList<>();
    int from = 0;
    for (FitCase one : model.cases()) {
      for (SignalData data : one.data()) {
        List<FitResult.Beside> course = new ArrayList<>();
        for (int i = 0; i < data.size(); i++) {
          course.add(
              new FitResult.Beside(
                  data.time(i),
                  data.value(i),
                  before[from + i],
                  fitted.foretold().getEntry(from + i)));
        }
        CorrelatedError error = fitted.errors().getOrDefault(data.signal(), Evidence.USUAL);
        signals.add(
            new FitResult.SignalFit(
                one.label(), data.signal(), course, error.deviation(), error.time()));
        from += data.size();
      }
    }
    return signals;
  }

  private List<FitResult.Quantities> quantities(Fitted fitted) {
    FitModel model = fitted.model();
    Prediction before = Prediction.before(model, plan.draws());
    Prediction after = Prediction.after(fitted, plan.draws());
    List<FitResult.Quantities> all = new ArrayList<>();
    for (int i = 0; i < model.cases().size(); i++) {
      Map<Quantity, Band> known = after.nextPull(i);
      all.add(new FitResult.Quantities(model.cases().get(i).label(), before.nextPull(i), known));
    }
    return all;
  }
}
