package soakloop.reading;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One sweep of engine speed under full load.
 *
 * @param number counted from 1
 * @param start s
 * @param end s
 * @param within how far start and end may be off, s: 0.3 s, and more where engine speed and
 *     throttle are updated less often than each 0.12 s
 * @param sweep what engine speed does; empty if the log has none
 * @param gearing turns of the engine per metre of road, rev/m; empty without a steady road speed
 * @param peakBoost highest gauge pressure, Pa; empty if the log has none
 * @param aborted whether it was lifted well before the speed that the log's other pulls reach
 * @param afterShift whether it follows the pull before at once, in another gear
 * @param sureness LIKELY if the log tells nothing of load but engine speed, else SURE
 */
public record Pull(
    int number,
    double start,
    double end,
    double within,
    Optional<Sweep> sweep,
    OptionalDouble gearing,
    OptionalDouble peakBoost,
    boolean aborted,
    boolean afterShift,
    Sureness sureness) {
  /**
   * What engine speed does in a pull.
   *
   * @param from at its start, rev/s
   * @param to at its end, rev/s
   * @param rate rev/s per s
   */
  public record Sweep(double from, double to, double rate) {}

  /** Returns its length, s. */
  public double duration() {
    return end - start;
  }
}
