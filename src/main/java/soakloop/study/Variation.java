package soakloop.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer of a plan.
 *
 * @param plan what was asked
 * @param points one for each index of the plan, in order
 * @param own the scenario as it is, beside its log; empty if it cannot run
 * @param lines where measures stand to their limits
 */
public record Variation(
    VaryPlan plan, List<VaryPoint> points, Optional<Outcome> own, List<LimitLine> lines) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if the points are not those of the plan
   */
  public Variation {
    points = List.copyOf(points);
    lines = List.copyOf(lines);
    if (points.size() != plan.size()) {
      throw new IllegalArgumentException(points.size() + " points for " + plan.size());
    }
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).index() != i) {
        throw new IllegalArgumentException("point " + points.get(i).index() + " stands at " + i);
      }
    }
  }

  /**
   * Returns a measure's value at a point, SI; NaN if it did not run.
   *
   * @param index of the point
   * @param measure one of the plan's
   */
  public double value(int index, Measure measure) {
    return points.get(index) instanceof VaryPoint.Ran ran
        ? ran.values().get(plan.measures().indexOf(measure))
        : Double.NaN;
  }

  /** Returns the points that could not be run. */
  public List<VaryPoint.Hole> holes() {
    return points.stream()
        .filter(p -> p instanceof VaryPoint.Hole)
        .map(p -> (VaryPoint.Hole) p)
        .toList();
  }

  /**
   * Returns a measure of the scenario as it is, SI.
   *
   * @param measure which
   */
  public OptionalDouble own(Measure measure) {
    return own.isPresent() ? OptionalDouble.of(measure.of(own.get())) : OptionalDouble.empty();
  }

  /**
   * Returns a measure of the logged run, SI.
   *
   * @param measure which
   */
  public OptionalDouble logged(Measure measure) {
    return own.map(measure::logged).orElse(OptionalDouble.empty());
  }
}
