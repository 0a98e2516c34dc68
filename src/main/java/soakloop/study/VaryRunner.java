package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * Runs a plan on a few threads. Every run stands by itself and is put in its place by index, so the
 * result does not depend on how many threads there are or which of them is quick.
 */
public final class VaryRunner {
  /** Runs that a thread takes at a time. */
  private static final int CHUNK = 8;

  private final VaryPlan plan;
  private final int threads;
  private final Progress progress;

  /** Is told how far the work has come. */
  public interface Progress {
    /**
     * Takes note.
     *
     * @param done runs done
     * @param all runs to do
     */
    void at(int done, int all);
  }

  /**
   * Makes a runner.
   *
   * @param plan what to run
   * @param threads how many, at least one
   * @param progress is told from the calling thread
   */
  public VaryRunner(VaryPlan plan, int threads, Progress progress) {
    if (!(threads >= 1)) {
      throw new IllegalArgumentException("threads must be one or more, not " + threads);
    }
    this.plan = plan;
    this.threads = threads;
    this.progress = progress;
  }

  /**
   * Runs some points of the grid.
   *
   * @param from first index
   * @param to index after the last
   * @return one for each, in order
   * @throws InterruptedException if it is broken off
   */
  public List<VaryPoint> points(int from, int to) throws InterruptedException {
    List<Callable<List<VaryPoint>>> chunks = new ArrayList<>();
    for (int i = from; i < to; i += CHUNK) {
      int first = i;
      int end = Math.min(to, i + CHUNK);
      chunks.add(
          () ->
              IntStream.range(first, end)
                  .mapToObj(index -> point(plan, index, plan.values(index)))
                  .toList());
    }
    List<VaryPoint> points = new ArrayList<>();
    Workers.run(
        threads,
        chunks,
        chunk -> {
          points.addAll(chunk);
          progress.at(points.size(), to - from);
        });
    return List.copyOf(points);
  }

  /**
   * Makes the answer of a whole grid: finds the crossings, and runs the scenario as it is.
   *
   * @param points one for each index of the plan, in order
   * @return the answer
   * @throws SimulationException if no point ran, with the first reason
   * @throws InterruptedException if it is broken off
   */
  public Variation variation(List<VaryPoint> points)
      throws SimulationException, InterruptedException {
    if (points.stream().noneMatch(p -> p instanceof VaryPoint.Ran)) {
      String reason = points.get(0) instanceof VaryPoint.Hole hole ? hole.reason() : "";
      throw SimulationException.unfinished("none of the runs could finish: " + reason);
    }
    List<LimitLine> lines = new ArrayList<>();
    Workers.run(
        threads, new LimitLines(plan, points).searches(), line -> line.ifPresent(lines::add));
    return new Variation(plan, points, own(), lines);
  }

  private Optional<Outcome> own() {
    try {
      return Optional.of(Run.of(plan.scenario()));
    } catch (SimulationException e) {
      return Optional.empty();
    }
  }

  /**
   * Runs one place.
   *
   * @param plan what is varied
   * @param index in the grid; below 0 for a place between its points
   * @param values of the keys, each in its unit
   */
  static VaryPoint point(VaryPlan plan, int index, List<Double> values) {
    try {
      Scenario scenario = plan.at(values);
      Trace trace = Simulation.run(scenario.setup().withoutLimit(), Options.STUDY);
      List<PullResult> pulls =
          PullResults.of(trace, scenario.limits().chargeTemperature(), Optional.empty());
      Measured run = new Measured(scenario, trace, pulls);
      List<Double> results = plan.measures().stream().map(m -> m.of(run)).toList();
      Optional<VaryPoint.Course> course =
          index >= 0 && plan.hasCourse(index)
              ? Optional.of(course(trace, pulls.get(pulls.size() - 1)))
              : Optional.empty();
      return new VaryPoint.Ran(index, results, course);
    } catch (ScenarioException e) {
      return new VaryPoint.Hole(
          index, e.problems().get(0).key() + ": " + e.problems().get(0).message());
    } catch (SimulationException e) {
      return new VaryPoint.Hole(index, String.valueOf(e.getMessage()));
    }
  }

  private static VaryPoint.Course course(Trace trace, PullResult pull) {
    Polyline line = Polyline.of(trace, Channel.SENSOR).between(pull.startTime(), pull.endTime());
    return new VaryPoint.Course(
        line.times().stream().map(t -> t - pull.startTime()).toList(), line.values());
  }
}
