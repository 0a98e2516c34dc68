package soakloop.simulate;

import java.util.List;

/**
 * A stretch of a session, run on from a state.
 *
 * @param trace what happened in it; its books are those of the whole session so far
 * @param kept states at the times that were asked for, in their order
 * @param end state at its end
 */
public record Stretch(Trace trace, List<CarState> kept, CarState end) {
  /** Copies the list. */
  public Stretch {
    kept = List.copyOf(kept);
  }
}
