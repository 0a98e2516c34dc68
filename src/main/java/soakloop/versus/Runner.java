package soakloop.versus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import soakloop.fit.Place;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Options;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.study.Workers;

/**
 * Runs mixes.
 *
 * @param mixer makes their scenarios
 * @param threads runs at a time
 */
record Runner(Mixer mixer, int threads) {
  private static final Options OPTIONS = Options.STUDY.withMostWork(1e9);

  /**
   * A run that is asked for.
   *
   * @param mix whose parts
   * @param place of the keys
   * @param setting what is changed of the conditions
   */
  record Asked(Mix mix, Place place, Setting setting) {}

  /** Runs; empty if it cannot be. */
  Optional<Figures> run(Asked asked) {
    try {
      Scenario scenario = mixer.of(asked.mix(), asked.place());
      Setup setup = asked.setting().change().apply(scenario.setup().withoutLimit());
      return Optional.of(Figures.of(scenario, Simulation.run(setup, OPTIONS)));
    } catch (ScenarioException | SimulationException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Runs all, in their order. */
  List<Optional<Figures>> run(List<Asked> all) {
    List<Callable<Optional<Figures>>> tasks = new ArrayList<>();
    all.forEach(asked -> tasks.add(() -> run(asked)));
    List<Optional<Figures>> ran = new ArrayList<>();
    try {
      Workers.run(threads, tasks, ran::add);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    return ran;
  }
}
