package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;

/** Finds where measures cross their limits, by halving between the points of a grid. */
final class LimitLines {
  /** About how many values of a second key are looked at. */
  static final int BESIDE = 5;

  private final VaryPlan plan;
  private final List<VaryPoint> points;

  LimitLines(VaryPlan plan, List<VaryPoint> points) {
    this.plan = plan;
    this.points = points;
  }

  /** Returns one search for each measure with a limit and, with two keys, for a few values. */
  List<Callable<Optional<LimitLine>>> searches() {
    List<Callable<Optional<LimitLine>>> searches = new ArrayList<>();
    for (Measure measure : plan.measures()) {
      if (plan.limit(measure).isEmpty()) {
        continue;
      }
      double limit = plan.limit(measure).getAsDouble();
      if (plan.keys().size() == 1) {
        searches.add(() -> line(measure, limit, OptionalInt.empty()));
      } else {
        for (int beside : Evenly.pick(plan.keys().get(1).size(), BESIDE)) {
          searches.add(() -> line(measure, limit, OptionalInt.of(beside)));
        }
      }
    }
    return searches;
  }

  /** Returns the line; empty if no point of it ran. */
  private Optional<LimitLine> line(Measure measure, double limit, OptionalInt beside) {
    int columns = plan.keys().size() == 1 ? 1 : plan.keys().get(1).size();
    int at = plan.measures().indexOf(measure);
    List<Double> places = new ArrayList<>();
    List<Boolean> over = new ArrayList<>();
    for (int i : IntStream.range(0, plan.keys().get(0).size()).toArray()) {
      VaryPoint point = points.get(i * columns + beside.orElse(0));
      if (point instanceof VaryPoint.Ran ran) {
        places.add(plan.keys().get(0).values().get(i));
        over.add(ran.values().get(at) > limit);
      }
    }
    if (places.isEmpty()) {
      return Optional.empty();
    }
    List<LimitLine.Crossing> crossings = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      if (!over.get(i).equals(over.get(i - 1))) {
        LimitLine.Crossing coarse =
            over.get(i)
                ? new LimitLine.Crossing(places.get(i - 1), places.get(i))
                : new LimitLine.Crossing(places.get(i), places.get(i - 1));
        crossings.add(halved(coarse, at, limit, beside));
      }
    }
    return Optional.of(new LimitLine(measure, limit, beside, over.get(0), crossings));
  }

  /** Halves until the crossing is found, or nothing lies between, or a run fails. */
  private LimitLine.Crossing halved(
      LimitLine.Crossing coarse, int at, double limit, OptionalInt beside) {
    LimitLine.Crossing crossing = coarse;
    boolean whole = plan.keys().get(0).whole();
    while (!crossing.found()) {
      double middle = (crossing.under() + crossing.over()) / 2;
      double place = whole ? Math.floor(middle) : middle;
      double low = Math.min(crossing.under(), crossing.over());
      double high = Math.max(crossing.under(), crossing.over());
      if (!(place > low && place < high)) {
        break;
      }
      List<Double> values =
          beside.isPresent()
              ? List.of(place, plan.keys().get(1).values().get(beside.getAsInt()))
              : List.of(place);
      if (!(VaryRunner.point(plan, -1, values) instanceof VaryPoint.Ran ran)) {
        break;
      }
      crossing =
          ran.values().get(at) > limit
              ? new LimitLine.Crossing(crossing.under(), place)
              : new LimitLine.Crossing(place, crossing.over());
    }
    return crossing;
  }
}
