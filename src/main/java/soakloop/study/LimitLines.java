package soakloop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;

/** Says along which lines of a grid to look for crossings of limits. */
final class LimitLines {
  /** About how many values of a second key are looked at. */
  static final int BESIDE = 5;

  private final VaryPlan plan;
  private final List<VaryPoint> points;

  LimitLines(VaryPlan plan, List<VaryPoint> points) {
    this.plan = plan;
    this.points = points;
  }

  /**
   * Returns one search for each measure with a limit and, with two keys, for each key beside a few
   * values of the other.
   */
  List<Callable<Optional<LimitLine>>> searches() {
    List<Callable<Optional<LimitLine>>> searches = new ArrayList<>();
    for (Measure measure : plan.measures()) {
      if (plan.limit(measure).isEmpty()) {
        continue;
      }
      double limit = plan.limit(measure).getAsDouble();
      if (plan.keys().size() == 1) {
        searches.add(
            () -> new LimitSearch(plan, measure, limit, 0, OptionalInt.empty()).line(points));
        continue;
      }
      for (int along = 0; along < 2; along++) {
        int key = along;
        for (int beside : besides(plan.keys().get(1 - along))) {
          OptionalInt other = OptionalInt.of(beside);
          searches.add(() -> new LimitSearch(plan, measure, limit, key, other).line(points));
        }
      }
    }
    return searches;
  }

  /** Returns indices of a few values, the one nearest to the scenario's own among them. */
  private static Set<Integer> besides(KeyRange range) {
    Set<Integer> picked = new TreeSet<>(Evenly.pick(range.size(), BESIDE));
    if (range.coversOwn()) {
      double own = range.own().getAsDouble();
      IntStream.range(0, range.size())
          .boxed()
          .min(Comparator.comparingDouble(i -> Math.abs(range.values().get(i) - own)))
          .ifPresent(picked::add);
    }
    return picked;
  }
}
