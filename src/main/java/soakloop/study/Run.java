package soakloop.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** The smallest study: one run, and the log beside it. */
public final class Run {
  private Run() {}

  /**
   * Runs a scenario and lays its log over it.
   *
   * @param scenario what to run
   * @return what it gave
   * @throws SimulationException if the start cannot be, or the run breaks off
   */
  public static Outcome of(Scenario scenario) throws SimulationException {
    return of(scenario, Options.DEFAULT);
  }

  /**
   * Runs a scenario in a way that is not the usual one.
   *
   * @param scenario what to run
   * @param options how
   * @return what it gave
   * @throws SimulationException if the start cannot be, or the run breaks off
   */
  public static Outcome of(Scenario scenario, Options options) throws SimulationException {
    Trace trace = Simulation.run(scenario.setup(), options);
    List<PullResult> pulls =
        PullResults.of(trace, scenario.limits().chargeTemperature(), scenario.logged());
    Optional<Comparison> comparison =
        scenario
            .logged()
            .map(
                logged ->
                    Comparisons.of(
                        trace, logged, replayed(scenario), scenario.limits().chargeTemperature()));
    Optional<LoopHydraulics> hydraulics = LoopHydraulics.of(scenario, trace);
    return new Outcome(
        scenario,
        trace,
        pulls,
        comparison,
        FlowFromHeat.of(scenario, trace),
        hydraulics,
        Warnings.of(scenario, trace, hydraulics));
  }

  /**
   * Returns the signals that the log gave to the model, so that comparing them means nothing.
   *
   * @param scenario which may replay its log
   */
  public static Set<Signal> replayed(Scenario scenario) {
    Set<Signal> inputs = EnumSet.noneOf(Signal.class);
    for (Phase phase : scenario.session().phases()) {
      if (phase.drive() instanceof Drive.Replay replay) {
        inputs.add(Signal.ENGINE_SPEED);
        replay.boost().ifPresent(c -> inputs.add(Signal.BOOST));
        replay.roadSpeed().ifPresent(c -> inputs.add(Signal.ROAD_SPEED));
        replay.inletTemperature().ifPresent(c -> inputs.add(Signal.INLET_AIR));
        replay.engineCoolant().ifPresent(c -> inputs.add(Signal.ENGINE_COOLANT));
      }
    }
    return inputs;
  }
}
