package soakloop.invented;

import java.util.List;

/**
 * Pulls on a chassis dyno with waits of their own between them, after 20 s at idle.
 *
 * @param day the air
 * @param sweep what is done about each pull
 * @param waits after each pull but the last [s]
 */
record PlannedDay(Day day, Sweep sweep, List<Double> waits) implements Duty {
  static final double FIRST = 20;

  /** How long the engine idles on after the last pull [s]. */
  static final double AFTER = 30;

  PlannedDay {
    waits = List.copyOf(waits);
  }

  /** Start of a pull, counted from 0 [s]. */
  double pullStart(int pull) {
    double start = FIRST;
    for (double wait : waits.subList(0, pull)) {
      start += sweep.lasts() + wait;
    }
    return start;
  }

  @Override
  public double duration() {
    return pullStart(waits.size()) + sweep.lasts() + AFTER;
  }

  @Override
  public Moment at(double time) {
    double since = Double.NaN;
    double toNext = FIRST - time;
    for (int pull = 0; pull <= waits.size() && pullStart(pull) <= time; pull++) {
      since = time - pullStart(pull);
      toNext = pull < waits.size() ? pullStart(pull + 1) - time : Double.NaN;
    }
    return sweep.at(day, time, since, toNext);
  }
}
