package soakloop.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import soakloop.fit.Calibration;
import soakloop.fit.FitCase;
import soakloop.fit.FitException;
import soakloop.fit.FitPlan;
import soakloop.fit.FitResult;
import soakloop.scenario.ScenarioReader;

/**
 * A whole fit on two threads: some six keys of the car to the morning's log; some ten to the
 * morning's and the denser core's together, the cores each with its own. What sensors do is fitted
 * beside these.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class FitBenchmark {
  private static final List<String> KEYS =
      List.of(
          "core.conductance.value",
          "plumbing.pressure-loss",
          "heat-exchanger.conductance.value",
          "plenum.conductance",
          "sensor.time-constant",
          "blower.adiabatic-efficiency");

  private FitPlan one;
  private FitPlan both;

  /** Reads the shipped scenarios with their logs. */
  @Setup
  public void read() throws Exception {
    FitCase morning = read("cool-morning");
    one = new FitPlan(List.of(morning), KEYS, List.of(), FitPlan.USUAL_DRAWS, 2);
    both =
        new FitPlan(
            List.of(morning, read("denser-core")),
            KEYS,
            List.of("core", "plenum", "sensor", "blower"),
            FitPlan.USUAL_DRAWS,
            2);
  }

  private static FitCase read(String name) throws Exception {
    return FitCase.of(name, ScenarioReader.read(Path.of("scenarios/" + name + ".yaml")));
  }

  /** Six keys of one car. */
  @Benchmark
  public FitResult oneLog() throws FitException {
    return Calibration.of(one);
  }

  /** Six keys of one car, four of them twice for another core. */
  @Benchmark
  public FitResult twoLogs() throws FitException {
    return Calibration.of(both);
  }
}
