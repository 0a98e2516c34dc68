package soakloop.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** One ten-minute session of pulls and waits, and the cost of making a changed scenario. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SessionBenchmark {
  private Scenario scenario;
  private int turn;

  /** Counts derivative evaluations and states of the last run. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Effort {
    /** Derivative evaluations of a run. */
    public long evaluations;

    /** Length of the state vector. */
    public long states;

    /** Forgets the warm-up. */
    @Setup(Level.Iteration)
    public void clear() {
      evaluations = 0;
      states = 0;
    }
  }

  /** Reads the shipped scenario and cuts its session to 600 s. */
  @Setup
  public void read() throws ScenarioException {
    scenario = ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"));
    scenario = scenario.with("session.1.idle.for", "20 s").with("session.2.wait.for", "106 s");
  }

  /** Simulates it. */
  @Benchmark
  public Trace tenMinutes(Effort effort) throws SimulationException {
    Trace trace = Simulation.run(scenario.setup());
    effort.evaluations = trace.effort().evaluations();
    effort.states = trace.effort().states();
    return trace;
  }

  /** Makes a scenario with one key changed. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MICROSECONDS)
  public Scenario changeOneKey() throws ScenarioException {
    turn = (turn + 1) % 1000;
    return scenario.with("reservoir.volume", (4 + turn * 0.001) + " L");
  }
}
