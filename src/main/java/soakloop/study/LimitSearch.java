package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds where a measure crosses its limit along a line of a grid, by halving between its points.
 *
 * @param plan what was run
 * @param measure which
 * @param limit SI
 * @param along which key goes up, 0 or 1
 * @param beside index of the other key's value, where there are two keys
 */
record LimitSearch(VaryPlan plan, Measure measure, double limit, int along, OptionalInt beside) {
  /** Returns the line; empty if no point of it ran. */
  Optional<LimitLine> line(List<VaryPoint> points) {
    int at = plan.measures().indexOf(measure);
    List<Double> places = new ArrayList<>();
    List<Boolean> over = new ArrayList<>();
    for (int i = 0; i < key().size(); i++) {
      if (points.get(index(i)) instanceof VaryPoint.Ran ran) {
        places.add(key().values().get(i));
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
        crossings.add(halved(coarse, at));
      }
    }
    return Optional.of(new LimitLine(measure, limit, along, beside, over.get(0), crossings));
  }

  /** Halves until the crossing is found, or nothing lies between, or a run fails. */
  private LimitLine.Crossing halved(LimitLine.Crossing coarse, int at) {
    LimitLine.Crossing crossing = coarse;
    boolean whole = key().whole();
    while (!crossing.found()) {
      double middle = (crossing.under() + crossing.over()) / 2;
      double place = whole ? Math.floor(middle) : middle;
      double low = Math.min(crossing.under(), crossing.over());
      double high = Math.max(crossing.under(), crossing.over());
      if (!(place > low && place < high)) {
        break;
      }
      if (!(VaryRunner.point(plan, -1, values(place)) instanceof VaryPoint.Ran ran)) {
        break;
      }
      crossing =
          ran.values().get(at) > limit
              ? new LimitLine.Crossing(crossing.under(), place)
              : new LimitLine.Crossing(place, crossing.over());
    }
    return crossing;
  }

  private KeyRange key() {
    return plan.keys().get(along);
  }

  private int index(int i) {
    if (beside.isEmpty()) {
      return i;
    }
    int columns = plan.keys().get(1).size();
    return along == 0 ? i * columns + beside.getAsInt() : beside.getAsInt() * columns + i;
  }

  private List<Double> values(double place) {
    if (beside.isEmpty()) {
      return List.of(place);
    }
    double other = plan.keys().get(1 - along).values().get(beside.getAsInt());
    return along == 0 ? List.of(place, other) : List.of(other, place);
  }
}
