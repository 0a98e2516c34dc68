package soakloop.fit;

import java.util.Optional;
import soakloop.study.Outcome;

/**
 * A run with what is known of its numbers.
 *
 * @param outcome the run as the scenario has it
 * @param bands where its numbers lie; empty if nothing of the scenario has a spread, or nobody
 *     asked
 */
public record BandedRun(Outcome outcome, Optional<RunBands> bands) {
  /**
   * A run without bands.
   *
   * @param outcome what it gave
   */
  public static BandedRun plain(Outcome outcome) {
    return new BandedRun(outcome, Optional.empty());
  }

  /**
   * Finds the bands of a run.
   *
   * @param outcome what it gave
   * @param draws equally likely cars; 0 for no bands
   * @param threads runs at a time, at least one
   */
  public static BandedRun of(Outcome outcome, int draws, int threads) {
    return draws == 0
        ? plain(outcome)
        : new BandedRun(outcome, RunBands.of(outcome, draws, threads));
  }
}
