package soakloop.plan;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import soakloop.quantity.Dimension;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.Stated;
import soakloop.simulate.SimulationException;

/**
 * Looks for what would let the scenario's own car keep a limit that no wait keeps, with the band
 * above it as wide as it is.
 */
final class NeedsFinder {
  private static final double LEAST_BOOST = 0.3;
  private static final double MOST_COOLER = 40;
  private static final double LEAST_ICE = 0.5;
  private static final double MOST_ICE = 32;
  private static final double ICED_WAIT = 300;
  private static final int HALVINGS = 9;

  private final WaitPlan plan;
  private final Way way;
  private final double wait;
  private final double goal;

  /** A car that goes when there is so much of something. */
  private interface Change {
    Go with(double much) throws ScenarioException, SimulationException;
  }

  /**
   * Sets out.
   *
   * @param nearest the way that comes nearest
   */
  NeedsFinder(WaitPlan plan, WayAnswer nearest) {
    this.plan = plan;
    this.way = nearest.way();
    WayAnswer.Never never = nearest.never().orElseThrow();
    this.wait = never.seconds();
    double half = never.lowest() - never.reading() - never.rise();
    this.goal = plan.limit() - half;
  }

  /** Returns what each thing by itself would have to be. */
  Needs needs() {
    double day = plan.scenario().setup().day().temperature();
    Way icy = new Way(false, true, way.fans(), way.hood(), MOST_ICE);
    return new Needs(
        way,
        least(1, LEAST_BOOST, this::boosted),
        least(day, day - MOST_COOLER, this::cooler),
        enoughIce(kilograms -> iced(icy, kilograms)));
  }

  /** Looks for ice upwards: far more than a tank takes in need not run. */
  private OptionalDouble enoughIce(Change change) {
    for (double most = LEAST_ICE; most <= MOST_ICE; most *= 2) {
      if (keeps(most, change)) {
        return least(most == LEAST_ICE ? 0 : most / 2, most, change);
      }
    }
    return OptionalDouble.empty();
  }

  /** Returns the value nearest to the first end that keeps the goal, by halving. */
  private OptionalDouble least(double asIs, double most, Change change) {
    if (!keeps(most, change)) {
      return OptionalDouble.empty();
    }
    double over = asIs;
    double kept = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (over + kept);
      if (keeps(middle, change)) {
        kept = middle;
      } else {
        over = middle;
      }
    }
    return OptionalDouble.of(kept);
  }

  private boolean keeps(double much, Change change) {
    try {
      return change.with(much).charge() <= goal;
    } catch (ScenarioException | SimulationException e) {
      return false; // what cannot be is no help
    }
  }

  private Go boosted(double share) throws ScenarioException, SimulationException {
    Map<String, String> changes = new LinkedHashMap<>();
    for (Stated stated : plan.scenario().values()) {
      if (stated.key().matches("boost(\\.\\d+\\.2)?")) {
        changes.put(stated.key(), text(share * stated.estimate().value(), stated.dimension()));
      }
    }
    if (changes.isEmpty()) {
      return Go.FAILED; // the boost follows from pulleys
    }
    return go(plan.scenario().with(changes), way);
  }

  private Go cooler(double kelvin) throws ScenarioException, SimulationException {
    return go(plan.scenario().with("day.temperature", text(kelvin, Dimension.TEMPERATURE)), way);
  }

  private Go iced(Way icy, double kilograms) throws ScenarioException, SimulationException {
    Way less = new Way(icy.idles(), icy.pump(), icy.fans(), icy.hood(), kilograms);
    return go(IceRoom.made(plan.scenario(), kilograms), less);
  }

  private Go go(Scenario scenario, Way in) throws SimulationException {
    WaitingCar car =
        new WaitingCar(scenario.setup().withoutLimit(), WaitingCar.Errors.NONE, plan.iceBelow());
    // Ice helps soon after it went in; the rest, after the wait that came nearest.
    double last = in.ice() > 0 ? Math.min(plan.horizon(), ICED_WAIT) : wait;
    car.waitIn(in, new double[] {last});
    return car.go(in, last);
  }

  private static String text(double si, Dimension dimension) {
    return String.format(
        Locale.ROOT, "%.6f %s", dimension.si().fromSi(si), dimension.si().symbol());
  }
}
