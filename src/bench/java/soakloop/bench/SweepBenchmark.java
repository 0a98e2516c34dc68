package soakloop.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;
import soakloop.study.VaryRunner;

/** A thousand points of a sweep over two keys of a ten-minute session, on one thread or two. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SweepBenchmark {
  /** Threads that share the points. */
  @Param({"1", "2"})
  public int threads;

  private VaryPlan plan;

  /** Reads the shipped scenario, cuts its session to 600 s and asks the question. */
  @Setup
  public void ask() throws Exception {
    Scenario scenario =
        ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"))
            .with("session.1.idle.for", "20 s")
            .with("session.2.wait.for", "106 s");
    plan =
        VaryPlan.of(
            scenario,
            new VaryPlan.Asked(
                List.of("reservoir.volume=2 L..20 L/40", "airflow.shop-fan=0.5 m/s..6 m/s/25"),
                List.of(),
                List.of()));
  }

  /** Runs all points. */
  @Benchmark
  public List<VaryPoint> thousandPoints() throws InterruptedException {
    return new VaryRunner(plan, threads, (done, all) -> {}).points(0, plan.size());
  }
}
