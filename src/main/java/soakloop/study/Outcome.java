package soakloop.study;

import java.util.List;
import java.util.Optional;
import soakloop.scenario.Scenario;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/**
 * The answer of one run.
 *
 * @param scenario what was run
 * @param trace what happened
 * @param pulls in order
 * @param comparison the log beside it, where there is one
 * @param flowFromHeat the loop's flow as the log's heat balance gives it, where it does
 * @param hydraulics where pump and loop meet, where the pump is known by more than its flow
 * @param warnings what a reader should know
 */
public record Outcome(
    Scenario scenario,
    Trace trace,
    List<PullResult> pulls,
    Optional<Comparison> comparison,
    Optional<FlowFromHeat> flowFromHeat,
    Optional<LoopHydraulics> hydraulics,
    List<Warning> warnings) {
  /** Copies the lists. */
  public Outcome {
    pulls = List.copyOf(pulls);
    warnings = List.copyOf(warnings);
  }
}
