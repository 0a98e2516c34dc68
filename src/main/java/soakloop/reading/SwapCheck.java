package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;

/**
 * Finds channels that have each other's values: under boost, air leaves the core cooler than it
 * enters it, and coolant leaves warmer.
 */
final class SwapCheck {
  /** How far charge air must lie the wrong way round in every pull, K: over two sensors' error. */
  private static final double AIR = 8;

  /** The same for coolant, which moves less, K. */
  private static final double COOLANT = 2.5;

  /** Pulls over which a difference of coolant is believed [-]. */
  private static final int COOLANT_PULLS = 2;

  private SwapCheck() {}

  /** Finds swapped channels and exchanges them. */
  static List<Finding> check(Channels channels, List<Pull> pulls) {
    List<Finding> findings = new ArrayList<>();
    Pair air =
        new Pair(
            Signal.CORE_AIR_IN,
            Signal.CHARGE_TEMPERATURE,
            AIR,
            1,
            "The charge after the core reads hotter than the air before it in every pull.");
    Pair coolant =
        new Pair(
            Signal.CORE_COOLANT_OUT,
            Signal.CORE_COOLANT_IN,
            COOLANT,
            COOLANT_PULLS,
            "Coolant leaves the core cooler than it enters it in every pull.");
    for (Pair pair : List.of(air, coolant)) {
      pair.check(channels, pulls).ifPresent(findings::add);
    }
    return findings;
  }

  /** Two channels of which one is the hotter under boost. */
  private record Pair(Signal hot, Signal cool, double margin, int least, String seen) {
    Optional<Finding> check(Channels channels, List<Pull> pulls) {
      double[] wrong =
          pulls.stream()
              .map(p -> excess(channels, p))
              .flatMapToDouble(OptionalDouble::stream)
              .toArray();
      if (wrong.length < least) {
        return Optional.empty();
      }
      for (double each : wrong) {
        if (each < margin) {
          return Optional.empty();
        }
      }
      channels.exchange(hot, cool);
      return Optional.of(
          Finding.of(
              Finding.Kind.SWAPPED,
              cool,
              Span.all(channels.log()),
              wrong.length > 1 ? Sureness.SURE : Sureness.LIKELY,
              seen,
              ChannelWords.name(hot)
                  + " and "
                  + cool.label()
                  + " are exchanged; name both columns in the scenario to settle it."));
    }

    /** By how much the cool one is the hotter one over the second half of a pull, K. */
    private OptionalDouble excess(Channels channels, Pull pull) {
      double middle = (pull.start() + pull.end()) / 2;
      double end = pull.end();
      double one = channels.updates(cool).between(middle, end).mean();
      double other = channels.updates(hot).between(middle, end).mean();
      double excess = one - other;
      return Double.isNaN(excess) ? OptionalDouble.empty() : OptionalDouble.of(excess);
    }
  }
}
