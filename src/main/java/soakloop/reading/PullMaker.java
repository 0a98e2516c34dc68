package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.log.Signal;

/** Describes the pulls of a log from where they begin and end. */
final class PullMaker {
  /** A pull that ends under this share of what others reach was lifted early [-]. */
  private static final double ABORTED = 0.93;

  /** Pulls that reach this share of the highest top speak for what a pull reaches [-]. */
  private static final double ALIKE = 0.9;

  /** The longest gear change under full load, s. */
  private static final double SHIFT = 1.5;

  /** Time between updates to which ends are known best, s, and how well. */
  private static final double QUICK = 0.12;

  private static final double KNOWN_BEST = 0.3;

  /** Road speed above which its steps no longer spoil the gearing, m/s. */
  private static final double ROLLING = 3;

  /** Spread of rev/m, of its median, with which it is one gear without slip [-]. */
  private static final double ONE_GEAR = 0.12;

  private final Channels channels;
  private final Updates speed;
  private final boolean standIn;
  private final Load load;

  PullMaker(Channels channels, Updates speed, boolean standIn, Load load) {
    this.channels = channels;
    this.speed = speed;
    this.standIn = standIn;
    this.load = load;
  }

  List<Pull> pulls(List<SweepEdges.Edges> sweeps) {
    double top = top(sweeps);
    List<Pull> pulls = new ArrayList<>();
    double lastEnd = Double.NEGATIVE_INFINITY;
    for (SweepEdges.Edges sweep : sweeps) {
      pulls.add(pull(pulls.size() + 1, sweep, top, lastEnd));
      lastEnd = sweep.end();
    }
    return pulls;
  }

  /** The speed that the log's whole pulls reach: the median of those near the highest. */
  private static double top(List<SweepEdges.Edges> sweeps) {
    double highest = sweeps.stream().mapToDouble(SweepEdges.Edges::to).max().orElse(0);
    return Numbers.median(
        sweeps.stream()
            .mapToDouble(SweepEdges.Edges::to)
            .filter(to -> to >= ALIKE * highest)
            .toArray());
  }

  private Pull pull(int number, SweepEdges.Edges e, double top, double lastEnd) {
    OptionalDouble boost =
        Load.boost(channels).map(b -> peak(b.between(e.start(), e.end()))).orElse(empty());
    return new Pull(
        number,
        e.start(),
        e.end(),
        within(),
        standIn ? Optional.empty() : Optional.of(new Pull.Sweep(e.from(), e.to(), e.rate())),
        standIn ? empty() : gearing(e),
        boost,
        e.to() < ABORTED * top,
        e.start() - lastEnd < SHIFT,
        load.known() ? Sureness.SURE : Sureness.LIKELY);
  }

  /**
   * Rows to 0.12 s apart, of engine speed or of a throttle that places the ends, give 0.3 s. With
   * fewer a smooth run-up into a sweep cannot be told from it: two updates, and 0.3 s.
   */
  private double within() {
    double quickest = load.promptSpacing().orElse(Double.POSITIVE_INFINITY);
    double spacing = Math.min(quickest, speed.size() < 2 ? 0 : speed.spacing());
    return spacing <= QUICK ? KNOWN_BEST : KNOWN_BEST + 2 * spacing;
  }

  private static OptionalDouble empty() {
    return OptionalDouble.empty();
  }

  private static OptionalDouble peak(Updates updates) {
    double highest = Updates.of(updates.times(), Numbers.middleOfThree(updates.values())).highest();
    return Double.isNaN(highest) ? OptionalDouble.empty() : OptionalDouble.of(highest);
  }

  private OptionalDouble gearing(SweepEdges.Edges e) {
    Updates road = channels.updates(Signal.ROAD_SPEED).between(e.start(), e.end());
    double[] ratios =
        IntStream.range(0, road.size())
            .filter(i -> road.value(i) > ROLLING)
            .mapToDouble(i -> speed.near(road.time(i), 1) / road.value(i))
            .filter(Double::isFinite)
            .toArray();
    double median = Numbers.median(ratios);
    double spread = Numbers.quantile(0.9, ratios) - Numbers.quantile(0.1, ratios);
    return ratios.length >= 3 && spread < ONE_GEAR * median
        ? OptionalDouble.of(median)
        : OptionalDouble.empty();
  }
}
