package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.DoubleUnaryOperator;
import soakloop.fit.Cars;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.simulate.Options;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.PullPower;
import soakloop.study.PullResult;
import soakloop.study.PullResults;
import soakloop.study.StudyException;
import soakloop.study.Workers;

/** Answers how far apart pulls must be to start alike. */
public final class SameStartRunner {
  /** Intervals of the first look, even as ratios from the shortest to the horizon. */
  private static final int SCAN = 9;

  private static final double SHORTEST = 30;

  /** How close the ends of windows are found, s. */
  private static final double CLOSE = 2;

  private final SameStartPlan plan;
  private final int threads;
  private final Cars cars;

  /**
   * Sets out.
   *
   * @param plan the question, checked
   * @param threads cars at a time, at least one
   */
  public SameStartRunner(SameStartPlan plan, int threads) {
    this.plan = plan;
    this.threads = threads;
    this.cars = Cars.of(plan.scenario(), plan.draws());
  }

  /**
   * Runs all cars.
   *
   * @return the answer
   * @throws StudyException if hardly any of the cars can do it
   * @throws InterruptedException if it is broken off
   */
  public SameStartAnswer answer() throws StudyException, InterruptedException {
    List<SameStartAnswer.OfWay> ways = new ArrayList<>();
    for (Way way : plan.ways()) {
      ways.add(answer(way));
    }
    return new SameStartAnswer(plan, ways, plan.draws());
  }

  private SameStartAnswer.OfWay answer(Way way) throws StudyException, InterruptedException {
    double[] scan = new double[SCAN];
    Arrays.setAll(scan, i -> SHORTEST * Math.pow(plan.horizon() / SHORTEST, i / (SCAN - 1.0)));
    List<SameStartAnswer.Apart> curve = new ArrayList<>();
    for (double seconds : scan) {
      curve.add(apart(way, seconds));
    }
    List<Window> windows = new ArrayList<>();
    double from = isAlike(curve.get(0)) ? curve.get(0).seconds() : Double.NaN;
    int size = curve.size();
    for (int i = 1; i < size; i++) {
      SameStartAnswer.Apart before = curve.get(i - 1);
      SameStartAnswer.Apart here = curve.get(i);
      if (isAlike(before) != isAlike(here)) {
        SameStartAnswer.Apart end = end(way, before, here);
        curve.add(end);
        if (isAlike(here)) {
          from = end.seconds();
        } else {
          windows.add(new Window(from, end.seconds(), false));
          from = Double.NaN;
        }
      }
    }
    if (Double.isFinite(from)) {
      windows.add(new Window(from, plan.horizon(), true));
    }
    curve.sort(java.util.Comparator.comparingDouble(SameStartAnswer.Apart::seconds));
    double first = windows.isEmpty() ? Double.NaN : windows.get(0).from();
    return new SameStartAnswer.OfWay(
        way, curve, windows, curve.stream().filter(a -> a.seconds() == first).findFirst());
  }

  private boolean isAlike(SameStartAnswer.Apart apart) {
    return apart.start() <= plan.within();
  }

  /** Halves between an interval at which pulls start alike and one at which they do not. */
  private SameStartAnswer.Apart end(Way way, SameStartAnswer.Apart low, SameStartAnswer.Apart high)
      throws StudyException, InterruptedException {
    boolean rises = isAlike(high);
    SameStartAnswer.Apart below = low;
    SameStartAnswer.Apart above = high;
    while (above.seconds() - below.seconds() > CLOSE) {
      SameStartAnswer.Apart middle = apart(way, 0.5 * (below.seconds() + above.seconds()));
      if (isAlike(middle) == rises) {
        above = middle;
      } else {
        below = middle;
      }
    }
    // The end that is inside.
    return rises ? above : below;
  }

  /**
   * Does all pulls with every car.
   *
   * @param seconds from one pull's end to the next one's start
   */
  SameStartAnswer.Apart apart(Way way, double seconds) throws StudyException, InterruptedException {
    List<Callable<Optional<double[]>>> tasks = new ArrayList<>();
    for (int i = 0; i < cars.size(); i++) {
      int draw = i;
      tasks.add(() -> apart(way, seconds, draw));
    }
    List<double[]> all = new ArrayList<>();
    Workers.run(threads, tasks, one -> one.ifPresent(all::add));
    if (all.size() < plan.draws() / 2) {
      throw new StudyException(
          "only "
              + all.size()
              + " of "
              + plan.draws()
              + " equally likely cars can do these pulls; run the session first and narrow the"
              + " spreads");
    }
    DoubleUnaryOperator share =
        column ->
            Shares.quantile(
                all.stream().mapToDouble(row -> row[(int) column]).toArray(), plan.confidence());
    return new SameStartAnswer.Apart(
        seconds,
        share.applyAsDouble(0),
        share.applyAsDouble(1),
        share.applyAsDouble(2),
        share.applyAsDouble(3));
  }

  private Optional<double[]> apart(Way way, double seconds, int draw) {
    try {
      Scenario scenario = cars.scenario(draw);
      Setup setup = scenario.setup().withoutLimit();
      Setup day =
          new Setup(
              setup.day(),
              setup.rig(),
              setup.start(),
              session(setup, way, seconds),
              setup.chargeLimit());
      Trace trace = Simulation.run(day, Options.STUDY);
      List<PullResult> pulls = PullResults.of(trace, OptionalDouble.empty(), Optional.empty());
      List<PullResult> counted = pulls.subList(plan.warmUps(), pulls.size());
      List<PullPower> power =
          PullPower.of(
              new Outcome(
                  scenario,
                  trace,
                  counted,
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  List.of()));
      double[] crank =
          power.stream()
              .flatMapToDouble(p -> p.crank().stream().mapToDouble(PullPower.Crank::crank))
              .toArray();
      return Optional.of(
          new double[] {
            apart(counted.stream().mapToDouble(p -> p.coolant().coreInletStart()).toArray()),
            apart(counted.stream().mapToDouble(p -> p.sensor().start()).toArray()),
            apart(counted.stream().mapToDouble(p -> p.charge().end()).toArray()),
            crank.length == 0 ? Double.NaN : apart(crank) / Arrays.stream(crank).min().orElseThrow()
          });
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty(); // a car that could not do it says nothing
    }
  }

  private static double apart(double[] values) {
    return Arrays.stream(values).max().orElseThrow() - Arrays.stream(values).min().orElseThrow();
  }

  /** Returns what leads to the first pull and it, then waits and the same pull again. */
  private Session session(Setup setup, Way way, double seconds) {
    List<Phase> phases = setup.session().phases();
    int first = SameStartPlan.firstPull(phases);
    Phase pull = phases.get(first);
    List<Phase> day = new ArrayList<>(phases.subList(0, first + 1));
    for (int i = 1; i < plan.pulls() + plan.warmUps(); i++) {
      day.add(
          new Phase(
              "wait " + i,
              Phase.Kind.WAIT,
              seconds - way.startUp(),
              way.drive(setup.rig()),
              way.cooling(),
              OptionalDouble.empty()));
      if (way.startUp() > 0) {
        day.add(
            new Phase(
                "start-up",
                Phase.Kind.IDLE,
                way.startUp(),
                new Drive.Idle(setup.rig().engine().idleSpeed()),
                Cooling.ALL,
                OptionalDouble.empty()));
      }
      day.add(
          new Phase(
              "pull " + (i + 1),
              pull.kind(),
              pull.duration(),
              pull.drive(),
              pull.cooling(),
              pull.countedAt()));
    }
    return new Session(day);
  }
}
