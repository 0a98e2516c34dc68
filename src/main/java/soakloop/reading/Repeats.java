package soakloop.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Tells pulls from drives by engine speed alone. */
final class Repeats {
  private static final double RPM = 1.0 / 60;

  /** Share of the highest speed of all that a whole pull reaches [-]. */
  private static final double NEAR_TOP = 0.85;

  /** A whole pull's least top and least climb, rev/s: street driving stays below both. */
  private static final double LEAST_TOP = 4_000 * RPM;

  private static final double LEAST_RISE = 1_500 * RPM;

  /** How well a shorter climb repeats: starting speed, rev/s, and rate [-]. */
  private static final double SAME_START = 250 * RPM;

  private static final double SAME_RATE = 0.15;

  /** Common climb that rates are compared over, rev/s. */
  private static final double COMMON = 300 * RPM;

  private final Updates speed;

  Repeats(Updates speed) {
    this.speed = speed;
  }

  /** Those of the climbs that are pulls. */
  List<SweepEdges.Edges> kept(List<SweepEdges.Edges> sweeps) {
    double top = sweeps.stream().mapToDouble(SweepEdges.Edges::to).max().orElse(0);
    List<SweepEdges.Edges> whole =
        sweeps.stream()
            .filter(s -> s.to() >= Math.max(LEAST_TOP, NEAR_TOP * top))
            .filter(s -> s.to() - s.from() >= LEAST_RISE)
            .toList();
    List<SweepEdges.Edges> kept = new ArrayList<>(whole);
    for (SweepEdges.Edges sweep : sweeps) {
      if (!whole.contains(sweep) && whole.stream().anyMatch(w -> repeats(sweep, w))) {
        kept.add(sweep);
      }
    }
    kept.sort(Comparator.comparingDouble(SweepEdges.Edges::start));
    return kept;
  }

  private boolean repeats(SweepEdges.Edges sweep, SweepEdges.Edges whole) {
    double low = Math.max(sweep.from(), whole.from()) + COMMON / 6;
    double high = Math.min(sweep.to(), whole.to()) - COMMON / 6;
    if (Math.abs(sweep.from() - whole.from()) > SAME_START || high - low < COMMON) {
      return false;
    }
    double ratio = rate(sweep, low, high) / rate(whole, low, high);
    return ratio > 1 - SAME_RATE && ratio < 1 + SAME_RATE;
  }

  /** Mean rate between two speeds by a line through the updates between them; NaN of too few. */
  private double rate(SweepEdges.Edges sweep, double low, double high) {
    Updates inside = speed.between(sweep.start(), sweep.end());
    Updates between = inside.where(i -> inside.value(i) >= low && inside.value(i) <= high);
    return LeastSquares.fit(between, LeastSquares.powers(sweep.start(), 1))
        .map(fit -> fit.factor(1))
        .orElse(Double.NaN);
  }
}
