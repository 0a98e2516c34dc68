package soakloop.versus;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.fit.Calibration;
import soakloop.fit.FitCase;
import soakloop.fit.FitException;
import soakloop.fit.FitPlan;
import soakloop.fit.Place;
import soakloop.fit.Posterior;
import soakloop.fit.Quantity;
import soakloop.scenario.ScenarioException;
import soakloop.session.Start;
import soakloop.simulate.Setup;
import soakloop.study.FingerPrint;
import soakloop.study.StudyException;

/**
 * Compares contenders: a joint fit in which car and loop are one and what was swapped is each one's
 * own, then runs of all under the same conditions.
 *
 * <p>Inside, contenders stand in an order of what their files say, so that no number depends on the
 * order in which they are named.
 */
public final class Versus {
  /** Cars that the parts of a logged difference are spread over, and other conditions. */
  private static final int FEW = 48;

  private final VersusPlan plan;
  private final List<Integer> order;
  private final List<FitCase> cases = new ArrayList<>();
  private final List<Integer> first = new ArrayList<>();
  private final List<Integer> groups = new ArrayList<>();

  private Versus(VersusPlan plan) {
    this.plan = plan;
    List<Contender> all = plan.contenders();
    List<String> prints = all.stream().map(Versus::print).toList();
    this.order =
        IntStream.range(0, all.size()).boxed().sorted(Comparator.comparing(prints::get)).toList();
    for (int inside = 0; inside < order.size(); inside++) {
      first.add(cases.size());
      for (FitCase one : all.get(order.get(inside)).logs()) {
        cases.add(one);
        groups.add(inside);
      }
    }
  }

  private static String print(Contender contender) {
    StringBuilder all = new StringBuilder();
    for (FitCase one : contender.logs()) {
      all.append(one.scenario().written()).append(FingerPrint.ofLog(one.scenario()));
    }
    return FingerPrint.of(all.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  /**
   * Compares.
   *
   * @param plan what is asked
   * @throws FitException if the logs tell nothing; says why
   * @throws StudyException if the contenders cannot be run under the same conditions; says why
   */
  public static VersusResult of(VersusPlan plan) throws FitException, StudyException {
    return new Versus(plan).result();
  }

  /** Returns the place inside of a contender of the plan. */
  private int inside(int contender) {
    return order.indexOf(contender);
  }

  private FitPlan fitPlan() {
    return new FitPlan(
        cases,
        List.of(),
        plan.swapped(),
        groups,
        List.of(),
        Quantity.NEXT_END,
        plan.draws(),
        plan.threads());
  }

  /**
   * All contenders under the common conditions, before anything is made of it.
   *
   * @param known of all keys
   * @param runner who runs
   * @param reference index of the case whose conditions they are
   * @param mixes of the contenders, in the order inside
   * @param field their runs
   */
  private record Ground(
      Posterior known, Runner runner, int reference, List<Mix> mixes, Field field) {}

  /**
   * Returns the difference that decides for each further contender, without all else.
   *
   * @param plan what is asked
   */
  static List<Judgement> judged(VersusPlan plan) throws FitException, StudyException {
    Versus versus = new Versus(plan);
    Ground ground = versus.ground();
    return IntStream.range(1, plan.contenders().size())
        .mapToObj(c -> versus.judgement(ground.field(), c))
        .toList();
  }

  /** What decides between the first contender and another. */
  record Judgement(Difference difference, double worse, VersusResult.Verdict verdict) {}

  private Ground ground() throws FitException, StudyException {
    boolean isLogged = cases.stream().anyMatch(FitCase::isLogged);
    Posterior known = isLogged ? Calibration.posterior(fitPlan()) : Posterior.believed(fitPlan());
    List<FitCase> all = new ArrayList<>(cases);
    plan.like().ifPresent(s -> all.add(FitCase.unlogged("conditions", s)));
    Runner runner = new Runner(new Mixer(all, plan.swapped()), plan.threads());
    int reference = plan.like().isPresent() ? all.size() - 1 : hottest(runner, known.likeliest());
    requireMixes(runner, reference, known.likeliest());
    List<Mix> mixes = first.stream().map(c -> mix(c, reference)).toList();
    List<Place> cars = known.draws(plan.draws(), first.size());
    Field field =
        Field.of(runner, mixes, Setting.same(), cars, known.modelError())
            .filter(f -> f.size() >= plan.draws() / 2)
            .orElseThrow(
                () ->
                    new StudyException(
                        "hardly any car within the spreads can be run under the common conditions;"
                            + " state the scenarios more closely"));
    if (field.pulls() == 0) {
      throw new StudyException("the session has no pull, so there is nothing to compare");
    }
    return new Ground(known, runner, reference, mixes, field);
  }

  private VersusResult result() throws FitException, StudyException {
    Ground ground = ground();
    Field field = ground.field();
    List<VersusResult.Ran> ran = new ArrayList<>();
    for (int c = 0; c < plan.contenders().size(); c++) {
      ran.add(ran(field, c));
    }
    List<String> labels = order.stream().map(c -> plan.contenders().get(c).label()).toList();
    Inquiry inquiry =
        new Inquiry(
            plan,
            ground.known(),
            ground.runner(),
            labels,
            first,
            ground.mixes(),
            field.pulls() - 1);
    List<VersusResult.Pairing> pairings = new ArrayList<>();
    for (int c = 1; c < plan.contenders().size(); c++) {
      pairings.add(pairing(field, inquiry, c));
    }
    String conditions =
        plan.like().map(s -> s.title()).orElseGet(() -> labels.get(groups.get(ground.reference())));
    boolean isLogged = cases.stream().anyMatch(FitCase::isLogged);
    Optional<TestSheet> sheet = isLogged ? Optional.empty() : sheet(field, pairings.get(0));
    return new VersusResult(
        plan,
        conditions,
        field.size(),
        ground.known().modelError(),
        ground.known().heldOut(),
        ran,
        pairings,
        sheet);
  }

  private Optional<TestSheet> sheet(Field field, VersusResult.Pairing pairing) {
    return new SheetMaker(
            plan,
            cases.get(first.get(0)).scenario(),
            cases.get(first.get(1)).scenario(),
            field.pulls() - 1)
        .sheet(pairing.conditions());
  }

  /** Everything of the conditions' case but what was swapped; a car of the plan's under others'. */
  private Mix mix(int inCase, int reference) {
    Mix mix = Mix.all(reference).with(Origin.SWAPPED, inCase);
    return plan.like().isPresent() ? mix.with(Origin.CAR, first.get(0)) : mix;
  }

  private VersusResult.Ran ran(Field field, int contender) {
    List<String> pulls = new ArrayList<>();
    List<Map<PullFigure, soakloop.fit.Band>> figures = new ArrayList<>();
    for (int p = 0; p < field.pulls(); p++) {
      pulls.add(field.pull(p));
      figures.add(field.bands(inside(contender), p));
    }
    return new VersusResult.Ran(
        plan.contenders().get(contender).label(), pulls, figures, field.course(inside(contender)));
  }

  private VersusResult.Pairing pairing(Field field, Inquiry inquiry, int contender) {
    int one = inside(0);
    int other = inside(contender);
    List<Map<PullFigure, Difference>> pulls = new ArrayList<>();
    for (int p = 0; p < field.pulls(); p++) {
      Map<PullFigure, Difference> differences = new EnumMap<>(PullFigure.class);
      for (PullFigure figure : PullFigure.values()) {
        double atLeast = VersusPlan.DECIDING.contains(figure) ? plan.atLeast() : 0;
        Difference difference = field.difference(one, other, p, figure, atLeast);
        if (difference.isKnown()) {
          differences.put(figure, difference);
        }
      }
      pulls.add(differences);
    }
    Judgement judgement = judgement(field, contender);
    return new VersusResult.Pairing(
        0,
        contender,
        judgement.verdict(),
        judgement.worse(),
        pulls,
        inquiry.logged(one, other, FEW),
        inquiry.conditions(one, other),
        inquiry.elsewhere(one, other, FEW),
        inquiry.grid(one, other, FEW / 2),
        inquiry.settling(one, other));
  }

  private Judgement judgement(Field field, int contender) {
    int last = field.pulls() - 1;
    int one = inside(0);
    int other = inside(contender);
    Difference difference = field.difference(one, other, last, plan.by(), plan.atLeast());
    double worse = field.difference(other, one, last, plan.by(), plan.atLeast()).better();
    return new Judgement(
        difference, worse, Verdicts.of(difference.better(), worse, plan.confidence()));
  }

  /**
   * Returns the case that starts hottest, then the one of the hotter day, then of the first file.
   */
  private int hottest(Runner runner, Place likeliest) throws StudyException {
    int hottest = first.get(0);
    double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int inCase : first) {
      try {
        Setup setup = runner.mixer().of(Mix.all(inCase), likeliest).setup();
        double start = start(setup.start());
        double day = setup.day().temperature();
        if (start > most[0] || (start == most[0] && day > most[1])) {
          hottest = inCase;
          most[0] = start;
          most[1] = day;
        }
      } catch (ScenarioException e) {
        throw new StudyException(cases.get(inCase).label() + ": " + e.getMessage());
      }
    }
    return hottest;
  }

  private static double start(Start start) {
    OptionalDouble known = start.loopCoolant().isPresent() ? start.loopCoolant() : start.charge();
    return known.orElse(Double.NEGATIVE_INFINITY);
  }

  private void requireMixes(Runner runner, int reference, Place likeliest) throws StudyException {
    for (int inCase : first) {
      String label = cases.get(inCase).label();
      try {
        runner.mixer().of(mix(inCase, reference), likeliest);
      } catch (ScenarioException e) {
        throw new StudyException(
            label + " cannot be run under the common conditions: " + e.getMessage());
      }
      Optional<Figures> ran =
          runner.run(new Runner.Asked(mix(inCase, reference), likeliest, Setting.same()));
      if (ran.isEmpty()) {
        throw new StudyException(
            label + " breaks off under the common conditions; `run` says where it does by itself");
      }
    }
  }
}
