package soakloop.versus;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import soakloop.fit.Advice;
import soakloop.fit.FitCase;
import soakloop.fit.Foresight;
import soakloop.fit.Place;
import soakloop.fit.Posterior;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Setup;

/**
 * Everything beside the difference of two itself: where it comes from, holds, and how to settle.
 */
final class Inquiry {
  private static final double STEP = 0.05;

  /** Most pulls of a further session that are tried. */
  private static final int MOST_PULLS = 8;

  private static final double[] AMBIENTS = {-15, -7.5, 0, 7.5, 15};
  private static final double[] BOOSTS = {0.8, 1, 1.15, 1.3};

  private final VersusPlan plan;
  private final Posterior known;
  private final Runner runner;
  private final List<String> labels;
  private final List<Integer> first;
  private final List<Mix> mixes;
  private final int last;

  /**
   * Sets out.
   *
   * @param plan what is asked
   * @param known of all keys
   * @param runner who runs
   * @param labels of the contenders
   * @param first index of each contender's first case
   * @param mixes of the contenders under the common conditions
   * @param last index of the pull that decides
   */
  Inquiry(
      VersusPlan plan,
      Posterior known,
      Runner runner,
      List<String> labels,
      List<Integer> first,
      List<Mix> mixes,
      int last) {
    this.plan = plan;
    this.known = known;
    this.runner = runner;
    this.labels = labels;
    this.first = first;
    this.mixes = mixes;
    this.last = last;
  }

  /** Returns what the logs show; worked out in the order inside and turned if need be. */
  List<VersusResult.Raw> logged(int one, int other, int draws) {
    if (one > other) {
      return logged(other, one, draws).stream().map(VersusResult.Raw::turned).toList();
    }
    if (!known.cases().get(first.get(one)).isLogged()
        || !known.cases().get(first.get(other)).isLogged()) {
      return List.of();
    }
    return new Breakdown(runner, known.likeliest(), known.draws(draws, 0))
        .of(first.get(one), first.get(other));
  }

  private Optional<Double> deciding(Mix mix, Place place, Setting setting) {
    return runner
        .run(new Runner.Asked(mix, place, setting))
        .filter(f -> f.pulls().size() > last)
        .map(f -> f.of(last, plan.by()));
  }

  /** Returns what a condition is worth in the deciding figure, averaged over two contenders. */
  private double worth(ConditionKind kind, int one, int other) {
    double sum = 0;
    for (int contender : new int[] {Math.min(one, other), Math.max(one, other)}) {
      Optional<Double> up =
          deciding(mixes.get(contender), known.likeliest(), kind.moved(kind.step()));
      Optional<Double> down =
          deciding(mixes.get(contender), known.likeliest(), kind.moved(-kind.step()));
      if (up.isEmpty() || down.isEmpty()) {
        return Double.NaN;
      }
      sum += (up.get() - down.get()) / (2 * kind.step());
    }
    return sum / 2;
  }

  /** Returns the conditions that ought to be alike, with what each is worth. */
  List<VersusResult.Condition> conditions(int one, int other) {
    List<VersusResult.Condition> all = new ArrayList<>();
    Optional<Circumstances> first = circumstances(one);
    Optional<Circumstances> second = circumstances(other);
    if (first.isEmpty() || second.isEmpty()) {
      return all;
    }
    for (ConditionKind kind : ConditionKind.values()) {
      double worth = worth(kind, one, other);
      double a = first.get().of(kind);
      double b = second.get().of(kind);
      // A share is of the middle of the two, so that it turns its sign with them.
      boolean share = kind == ConditionKind.BOOST || kind == ConditionKind.WAITS;
      double middle = share ? (a + b) / 2 : 1;
      double window = VersusResult.Condition.TOLERATED / Math.max(1e-9, Math.abs(worth));
      if (Double.isFinite(worth) && Double.isFinite(a) && Double.isFinite(b) && middle > 0) {
        all.add(
            new VersusResult.Condition(
                kind, a, b, worth * (b - a) / middle, share ? window * middle : window));
      }
    }
    return all;
  }

  private Optional<Circumstances> circumstances(int contender) {
    return Circumstances.of(runner.mixer(), Mix.all(first.get(contender)), known.likeliest());
  }

  /** Returns the deciding figure's difference under some other conditions. */
  List<VersusResult.Elsewhere> elsewhere(int one, int other, int draws) {
    List<Setting> settings =
        List.of(
            Setting.same(),
            Setting.warmer("a day 15 K (27 degF) hotter, the loop too", 15),
            Setting.warmer("a day 15 K (27 degF) colder, the loop too", -15),
            Setting.boost("20 % more boost", 1.2),
            Setting.road("on the road, 100 mph (161 km/h)", 44.704),
            Setting.waits("waits half as long", 0.5),
            Setting.warmerStart("a loop iced down by 20 K (36 degF)", -20));
    List<Place> places = known.draws(draws, mixes.size());
    List<VersusResult.Elsewhere> all = new ArrayList<>();
    for (Setting setting : settings) {
      if (all.isEmpty() || changesAnything(setting)) {
        elsewhere(one, other, setting, places).ifPresent(all::add);
      }
    }
    return all;
  }

  private boolean changesAnything(Setting setting) {
    try {
      Setup setup = runner.mixer().of(mixes.get(0), known.likeliest()).setup();
      return !setting.change().apply(setup).equals(setup);
    } catch (ScenarioException e) {
      return false;
    }
  }

  /** Returns the same over ambient and boost. */
  List<VersusResult.Elsewhere> grid(int one, int other, int draws) {
    List<Place> places = known.draws(draws, mixes.size());
    List<VersusResult.Elsewhere> all = new ArrayList<>();
    for (double ambient : AMBIENTS) {
      for (double boost : BOOSTS) {
        Setting setting = Setting.warmer("", ambient).and(Setting.boost("", boost));
        elsewhere(one, other, setting, places).ifPresent(all::add);
      }
    }
    return all;
  }

  private Optional<VersusResult.Elsewhere> elsewhere(
      int one, int other, Setting setting, List<Place> places) {
    // All contenders are run, so that a car counts for the same pairs whoever is asked for.
    return Field.of(runner, mixes, setting, places, known.modelError())
        .filter(f -> f.size() >= places.size() / 2 && f.pulls() > last)
        .map(
            f -> {
              Circumstances there =
                  Circumstances.of(runner.mixer(), mixes.get(0), known.likeliest(), setting)
                      .orElse(Circumstances.UNKNOWN);
              return new VersusResult.Elsewhere(
                  setting.name(),
                  there.of(ConditionKind.DAY),
                  there.of(ConditionKind.BOOST),
                  f.difference(one, other, last, plan.by(), plan.atLeast()));
            });
  }

  /** Returns what the difference changes by for each key. */
  RealVector gradient(int one, int other) {
    List<Runner.Asked> asked = new ArrayList<>();
    int[] both = {Math.min(one, other), Math.max(one, other)};
    for (int k = 0; k < known.keys(); k++) {
      for (double step : new double[] {STEP, -STEP}) {
        for (int contender : both) {
          asked.add(new Runner.Asked(mixes.get(contender), known.moved(k, step), Setting.same()));
        }
      }
    }
    List<Optional<Figures>> ran = runner.run(asked);
    RealVector gradient = new ArrayRealVector(known.keys());
    for (int k = 0; k < known.keys(); k++) {
      double[] of = new double[4];
      int row = 4 * k;
      Arrays.setAll(
          of,
          i ->
              ran.get(row + i)
                  .filter(f -> f.pulls().size() > last)
                  .map(f -> f.of(last, plan.by()))
                  .orElse(Double.NaN));
      double slope = (of[1] - of[0] - (of[3] - of[2])) / (2 * STEP);
      gradient.setEntry(k, Double.isFinite(slope) ? slope : 0);
    }
    return gradient;
  }

  /** Returns what would settle the difference of two. */
  VersusResult.Settling settling(int one, int other) {
    RealVector gradient = gradient(one, other);
    double floor = known.modelError() * plan.by().errors() * Math.sqrt(2);
    List<Advice> advice = new ArrayList<>();
    for (int contender : new int[] {one, other}) {
      String whose = labels.get(contender);
      known.advice(first.get(contender), gradient).stream()
          .map(a -> new Advice(a.what() + ", " + whose, a.isTest(), a.now(), a.then()))
          .forEach(advice::add);
    }
    advice.sort(Comparator.comparingDouble(Advice::then));
    List<Double> sessions = new ArrayList<>();
    // Without logs that is what the test sheet is for.
    Optional<Foresight> ahead =
        known.cases().stream().anyMatch(FitCase::isLogged)
            ? Foresight.of(known, MOST_PULLS, plan.threads())
            : Optional.empty();
    ahead.ifPresent(
        f -> {
          for (int pulls = 1; pulls <= MOST_PULLS; pulls++) {
            sessions.add(f.deviation(gradient, pulls));
          }
        });
    return new VersusResult.Settling(
        known.deviation(gradient), floor, advice, sessions, enough(one, other, floor, sessions));
  }

  private Optional<Integer> enough(int one, int other, double floor, List<Double> sessions) {
    Optional<Double> a = deciding(mixes.get(one), known.likeliest(), Setting.same());
    Optional<Double> b = deciding(mixes.get(other), known.likeliest(), Setting.same());
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    double apart = Math.abs(b.get() - a.get()) - plan.atLeast();
    for (int i = 0; i < sessions.size(); i++) {
      if (apart >= TestSheet.quantile(plan.confidence()) * Math.hypot(sessions.get(i), floor)) {
        return Optional.of(i + 1);
      }
    }
    return Optional.empty();
  }
}
