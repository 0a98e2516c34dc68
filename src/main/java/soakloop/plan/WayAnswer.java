package soakloop.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * When the car can go again in one way of waiting.
 *
 * @param way which
 * @param curve what comes of all waits that were run, rising
 * @param windows in which it can go, in order
 * @param gauge going by the coolant gauge instead of the clock
 * @param threshold warmest reading of that gauge to go at, K; empty if there is none
 * @param never why there is no window; empty if there is one
 * @param icedAt when the middle car's ice went in, s; empty if it never did, or has none
 */
public record WayAnswer(
    Way way,
    List<AfterWait> curve,
    List<Window> windows,
    GaugeRule gauge,
    OptionalDouble threshold,
    Optional<Never> never,
    OptionalDouble icedAt) {
  /** Copies the lists. */
  public WayAnswer {
    curve = List.copyOf(curve);
    windows = List.copyOf(windows);
  }

  /**
   * Returns a smooth line of what a share of the cars keeps under, for a chart.
   *
   * @param of which value
   * @param share 0 to 1
   * @param count places along it, at least two
   * @return waits in s, then values
   */
  public double[][] course(ToDoubleFunction<Go> of, double share, int count) {
    return Course.through(
        curve.stream().mapToDouble(AfterWait::seconds).toArray(),
        curve.stream().mapToDouble(a -> a.quantile(of, share)).toArray(),
        count);
  }

  /**
   * Why no wait will do.
   *
   * @param lowest the confidence's quantile of the peak where it is lowest, K; infinite if all fail
   * @param seconds after which that is
   * @param reading what the middle car's coolant gauge then reads, K
   * @param rise by how much the middle car's peak is above that, K
   */
  public record Never(double lowest, double seconds, double reading, double rise) {}
}
