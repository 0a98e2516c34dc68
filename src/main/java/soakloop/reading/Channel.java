package soakloop.reading;

import soakloop.log.Signal;

/**
 * A signal of a log, as far as it can be trusted.
 *
 * @param signal which
 * @param refresh how often it was really measured
 * @param quantum smallest step between its values, SI; 0 if it never changes
 * @param noise standard deviation of its noise, the steps included, SI
 * @param updates its measurements without impossible ones
 */
public record Channel(
    Signal signal, Refresh refresh, double quantum, double noise, Updates updates) {
  /** Standard deviation of one measurement: noise, or rounding where that is more, SI. */
  double deviation() {
    return Math.max(noise, quantum / Math.sqrt(12));
  }
}
