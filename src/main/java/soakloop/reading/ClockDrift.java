package soakloop.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import soakloop.quantity.Estimate;

/**
 * How much quicker one clock runs than another: the offsets of single climbs, by a weighted line
 * over time.
 *
 * @param rate s/s
 * @param atZero the line's offset at time zero of the second log, s
 */
record ClockDrift(Estimate rate, double atZero) {
  private static final double NINETY = 1.645;

  /** Finds the drift; empty for fewer than two climbs that can be laid over the course. */
  static Optional<ClockDrift> of(Updates course, List<Updates> climbs, Alignment all) {
    List<Placed> placed =
        climbs.stream()
            .flatMap(
                c ->
                    Alignment.of(course, c, all.offset())
                        .filter(a -> Math.abs(a.offset() - all.offset()) < 2)
                        .map(a -> new Placed((c.time(0) + c.time(c.size() - 1)) / 2, a))
                        .stream())
            .toList();
    if (placed.size() < 2) {
      return Optional.empty();
    }
    double weight = 0;
    double time = 0;
    double offset = 0;
    for (Placed p : placed) {
      weight += p.weight();
      time += p.weight() * p.time;
      offset += p.weight() * p.alignment.offset();
    }
    double meanTime = time / weight;
    double meanOffset = offset / weight;
    double spread = 0;
    double common = 0;
    for (Placed p : placed) {
      spread += p.weight() * (p.time - meanTime) * (p.time - meanTime);
      common += p.weight() * (p.time - meanTime) * (p.alignment.offset() - meanOffset);
    }
    double rate = common / spread;
    double atZero = meanOffset - rate * meanTime;
    double left =
        IntStream.range(0, placed.size())
            .mapToDouble(i -> placed.get(i).squareOff(rate, atZero))
            .sum();
    // More scatter than the climbs' own errors explain widens the interval, less does not narrow
    // it.
    double excess = placed.size() > 2 ? Math.max(1, left / (placed.size() - 2)) : 1;
    double error = NINETY * Math.sqrt(excess / spread);
    return Optional.of(new ClockDrift(new Estimate(rate, error), atZero));
  }

  private record Placed(double time, Alignment alignment) {
    /** No climb is placed better than to a millisecond. */
    double weight() {
      return 1 / (alignment.offsetError() * alignment.offsetError() + 1e-6);
    }

    double squareOff(double rate, double atZero) {
      double off = alignment.offset() - atZero - rate * time;
      return weight() * off * off;
    }
  }
}
