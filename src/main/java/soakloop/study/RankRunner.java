package soakloop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * Ranks keys. Results are taken in the order of the tasks, so the answer does not depend on how
 * many threads there are.
 *
 * <p>First every key is moved to both ends of its 90 % interval, one at a time. Then the first keys
 * are moved together, each level over its interval, by {@link SobolDesign} and {@link Jansen}: what
 * a key does only beside another does not show while it moves by itself.
 */
public final class RankRunner {
  private final RankPlan plan;
  private final int threads;
  private final VaryRunner.Progress progress;

  /**
   * Makes a runner.
   *
   * @param plan what to rank
   * @param threads how many, at least one
   * @param progress is told from the calling thread
   */
  public RankRunner(RankPlan plan, int threads, VaryRunner.Progress progress) {
    if (!(threads >= 1)) {
      throw new IllegalArgumentException("threads must be one or more, not " + threads);
    }
    this.plan = plan;
    this.threads = threads;
    this.progress = progress;
  }

  /**
   * Does all runs.
   *
   * @return the answer
   * @throws SimulationException if the scenario as it is cannot run
   * @throws InterruptedException if it is broken off
   */
  public Ranking ranking() throws SimulationException, InterruptedException {
    double own = result(plan.scenario());
    List<UncertainKey> keys = plan.keys();
    int likely = Math.min(plan.top(), keys.size());
    int all = 2 * keys.size() + (likely > 0 ? RankPlan.POINTS * (likely + 2) : 0);
    List<Moved.End> ends = new ArrayList<>();
    List<Callable<Moved.End>> tasks = new ArrayList<>();
    for (UncertainKey key : keys) {
      tasks.add(() -> end(List.of(key), new double[] {0}, own));
      tasks.add(() -> end(List.of(key), new double[] {1}, own));
    }
    Workers.run(
        threads,
        tasks,
        end -> {
          ends.add(end);
          progress.at(ends.size(), all);
        });
    List<Moved> ranked =
        IntStream.range(0, keys.size())
            .mapToObj(i -> Moved.of(keys.get(i), ends.get(2 * i), ends.get(2 * i + 1)))
            .sorted(Comparator.comparingDouble(Moved::swing).reversed())
            .toList();
    return together(own, ranked);
  }

  private Ranking together(double own, List<Moved> ranked) throws InterruptedException {
    List<Moved> first = ranked.stream().filter(m -> m.swing() > 0).limit(plan.top()).toList();
    if (first.isEmpty()) {
      return new Ranking(plan, own, ranked, Ranking.Design.NONE);
    }
    List<UncertainKey> keys = first.stream().map(Moved::key).toList();
    SobolDesign design = new SobolDesign(keys.size(), RankPlan.POINTS);
    List<Callable<List<Moved.End>>> tasks = new ArrayList<>();
    for (int j = 0; j < design.points(); j++) {
      int point = j;
      tasks.add(() -> design.places(point).stream().map(p -> end(keys, p, own)).toList());
    }
    int before = 2 * ranked.size();
    int all = before + design.points() * design.width();
    List<List<Moved.End>> points = new ArrayList<>();
    Workers.run(
        threads,
        tasks,
        point -> {
          points.add(point);
          progress.at(before + points.size() * design.width(), all);
        });
    List<Moved> told = new ArrayList<>(ranked);
    List<Jansen.Indices> indices = Jansen.of(points.stream().map(RankRunner::changes).toList());
    for (int i = 0; i < indices.size(); i++) {
      Jansen.Indices one = indices.get(i);
      told.set(i, first.get(i).with(new Moved.Together(one.alone(), one.total())));
    }
    return new Ranking(plan, own, told, design(points));
  }

  private static double[] changes(List<Moved.End> point) {
    return point.stream().mapToDouble(e -> e.change().orElse(Double.NaN)).toArray();
  }

  private static Ranking.Design design(List<List<Moved.End>> points) {
    List<Moved.End> all = points.stream().flatMap(List::stream).toList();
    List<String> reasons = new ArrayList<>();
    for (Moved.End end : all) {
      if (end instanceof Moved.Failed failed) {
        reasons.add(failed.reason());
      }
    }
    long whole =
        points.stream().filter(p -> p.stream().allMatch(e -> e instanceof Moved.Ran)).count();
    return new Ranking.Design(
        all.size(), reasons.size(), reasons.isEmpty() ? "" : reasons.get(0), (int) whole);
  }

  /**
   * Runs the scenario with some keys moved.
   *
   * @param keys which
   * @param shares how far each is from its lower end, 0, to its upper, 1
   * @param own the result of the scenario as it is, SI
   */
  private Moved.End end(List<UncertainKey> keys, double[] shares, double own) {
    Map<String, String> changes = new LinkedHashMap<>();
    for (int i = 0; i < shares.length; i++) {
      changes.putAll(keys.get(i).written(shares[i]));
    }
    try {
      return new Moved.Ran(result(plan.scenario().with(changes)), own);
    } catch (ScenarioException e) {
      return new Moved.Failed(e.problems().get(0).key() + ": " + e.problems().get(0).message());
    } catch (SimulationException e) {
      return new Moved.Failed(String.valueOf(e.getMessage()));
    }
  }

  private double result(Scenario scenario) throws SimulationException {
    Trace trace = Simulation.run(scenario.setup().withoutLimit(), Options.STUDY);
    return plan.measure()
        .of(
            new Measured(
                scenario,
                trace,
                PullResults.of(trace, scenario.limits().chargeTemperature(), Optional.empty())));
  }
}
