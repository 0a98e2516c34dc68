package soakloop.reading;

import java.util.List;
import java.util.Optional;
import soakloop.quantity.Estimate;

/**
 * How the clock of one log lies on that of another, by their engine speeds.
 *
 * @param offset what is added to the second log's time, s, with its 90 % interval: from how well
 *     the speeds agree, and from not knowing at which end of a row it was measured
 * @param scale engine speed of the first log over that of the second [-]
 * @param misfit root mean square of what is left between the speeds, rev/s
 * @param rivals other offsets that fit nearly as well, best first: alike pulls are alike
 * @param drift by how much the first clock runs quicker, s/s; empty if the second log has one climb
 *     only, by which it cannot be told
 * @param driftApplied whether the drift is more than its interval and was taken out
 */
public record RpmMatch(
    Estimate offset,
    Estimate scale,
    double misfit,
    List<Rival> rivals,
    Optional<Estimate> drift,
    boolean driftApplied) {
  /** Keeps the list as it is. */
  public RpmMatch {
    rivals = List.copyOf(rivals);
  }

  /**
   * Another offset.
   *
   * @param offset s
   * @param misfit rev/s
   */
  public record Rival(double offset, double misfit) {}

  /** Returns whether no other offset fits nearly as well. */
  public boolean unique() {
    return rivals.isEmpty();
  }

  /** Where a time of the second log lies in the first, s. */
  double toFirst(double time) {
    double rate = driftApplied ? drift.map(Estimate::value).orElse(0.0) : 0;
    return time * (1 + rate) + offset.value();
  }
}
