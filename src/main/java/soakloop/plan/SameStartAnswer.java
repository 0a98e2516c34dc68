package soakloop.plan;

import java.util.List;
import java.util.Optional;

/**
 * How far apart pulls on a dyno must be to start alike.
 *
 * @param plan the question
 * @param ways one answer for each way, in the plan's order
 * @param draws cars that could do it
 */
public record SameStartAnswer(SameStartPlan plan, List<OfWay> ways, int draws) {
  /** Copies the list. */
  public SameStartAnswer {
    ways = List.copyOf(ways);
  }

  /**
   * What pulls are apart by after waits of a length. The confidence's share of cars is within.
   *
   * @param seconds from one pull's end to the next one's start
   * @param coolant coolant into the core as they start, highest less lowest, K
   * @param sensor charge sensor as they start, K
   * @param end true charge at the counted end, K
   * @param power power at the crank at the counted end, highest over lowest less 1 [-]; NaN if the
   *     scenario asks for no power
   */
  public record Apart(double seconds, double coolant, double sensor, double end, double power) {
    /** Returns how far apart the starts are, K. */
    public double start() {
      return Math.max(coolant, sensor);
    }
  }

  /**
   * One way of waiting.
   *
   * @param way which
   * @param curve by rising interval
   * @param windows intervals at which pulls start alike
   * @param first at the shortest such interval; empty if there is none
   */
  public record OfWay(Way way, List<Apart> curve, List<Window> windows, Optional<Apart> first) {
    /** Copies the lists. */
    public OfWay {
      curve = List.copyOf(curve);
      windows = List.copyOf(windows);
    }

    /** Returns where the starts are least apart. */
    public Apart least() {
      return curve.stream().min(java.util.Comparator.comparingDouble(Apart::start)).orElseThrow();
    }
  }

  /** Returns the way whose pulls can follow one another soonest; empty if none start alike. */
  public Optional<OfWay> best() {
    return ways.stream()
        .filter(w -> w.first().isPresent())
        .min(
            java.util.Comparator.comparingDouble(
                w -> w.first().map(Apart::seconds).orElse(Double.POSITIVE_INFINITY)));
  }
}
