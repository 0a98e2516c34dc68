package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds all windows of one way of waiting: the confidence's quantile of the peak over a scan, a
 * closer look where it turns near the limit, then each crossing by root finding with the same cars.
 * Not by halving alone: with the engine off soak makes the quantile fall and rise again.
 */
final class WaySearch {
  /** How closely a crossing is found, s. */
  private static final double CLOSE = 0.5;

  /** What a pull that failed counts as above the limit, K: finite, for the root finder. */
  private static final double FAILED = 500;

  /** How long slugs of warm coolant can be told, s. */
  private static final double EARLY = 100;

  /** A part of the time in which a loop turns over, s. */
  private static final double TURN = 8;

  /** By how much such slugs move a peak at the most (our own judgement), K. */
  private static final double NEAR = 3;

  /** Turning points that a closer look is taken at, at the most. */
  private static final int MOST_LOOKS = 6;

  private static final int MOST_EVALUATIONS = 60;
  private static final int ORDER = 3;

  private final WaitPlan plan;
  private final Pulls pulls;
  private final TreeMap<Double, AfterWait> known = new TreeMap<>();

  /** Lets all cars go after a wait. */
  interface Pulls {
    List<Go> after(double wait) throws InterruptedException;
  }

  /**
   * Sets out.
   *
   * @param scan waits and what came of them, at least two
   * @param pulls for waits between them
   */
  WaySearch(WaitPlan plan, List<AfterWait> scan, Pulls pulls) {
    this.plan = plan;
    this.pulls = pulls;
    scan.forEach(after -> known.put(after.seconds(), after));
  }

  /** Finds the windows. */
  List<Window> windows() {
    lookEarly();
    lookAtTurns();
    List<Double> waits = new ArrayList<>(known.keySet());
    List<Window> windows = new ArrayList<>();
    double from = over(waits.get(0)) <= 0 ? waits.get(0) : Double.NaN;
    for (int i = 1; i < waits.size(); i++) {
      double low = waits.get(i - 1);
      double high = waits.get(i);
      boolean keptBefore = over(low) <= 0;
      boolean keeps = over(high) <= 0;
      if (!keptBefore && keeps) {
        from = crossing(low, high);
      } else if (keptBefore && !keeps) {
        windows.add(new Window(from, crossing(low, high), false));
        from = Double.NaN;
      }
    }
    if (!Double.isNaN(from)) {
      windows.add(new Window(from, waits.get(waits.size() - 1), true));
    }
    return windows;
  }

  /** Returns all waits that were looked at, rising. */
  List<AfterWait> curve() {
    return List.copyOf(known.values());
  }

  /** Returns by how much the quantile is over the limit, K. */
  private double over(double wait) {
    AfterWait after = known.get(wait);
    if (after == null) {
      after = new AfterWait(wait, after(wait));
      known.put(wait, after);
    }
    return Math.min(after.charge(plan.confidence()) - plan.limit(), FAILED);
  }

  private List<Go> after(double wait) {
    try {
      return pulls.after(wait);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private double crossing(double low, double high) {
    if (over(low) == 0 || over(high) == 0) {
      return over(low) == 0 ? low : high;
    }
    return new BracketingNthOrderBrentSolver(0, CLOSE, 0, ORDER)
        .solve(MOST_EVALUATIONS, this::over, low, high, AllowedSolution.BELOW_SIDE);
  }

  /**
   * Looks closely at the first minutes if the quantile is near the limit there or crosses it: the
   * slug of coolant that the pull warmed passes the core again with each turn of the loop.
   */
  private void lookEarly() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double wait : List.copyOf(known.headMap(2 * EARLY, true).keySet())) {
      low = Math.min(low, over(wait));
      high = Math.max(high, over(wait));
    }
    if (low < NEAR && high > -NEAR) {
      for (double wait = known.firstKey() + TURN; wait < EARLY; wait += TURN) {
        over(wait);
      }
    }
  }

  /**
   * Looks between points of the scan where the quantile may turn on the other side of the limit.
   */
  private void lookAtTurns() {
    for (int look = 0; look < MOST_LOOKS; look++) {
      double best = Double.NaN;
      List<Double> waits = new ArrayList<>(known.keySet());
      for (int i = 1; i + 1 < waits.size() && Double.isNaN(best); i++) {
        best = turn(waits.get(i - 1), waits.get(i), waits.get(i + 1));
      }
      if (Double.isNaN(best)) {
        return;
      }
      over(best);
    }
  }

  /** Returns where a parabola through three points crosses to the limit's other side; or NaN. */
  private double turn(double a, double b, double c) {
    double fa = over(a);
    double fb = over(b);
    double fc = over(c);
    boolean turns = (fb < fa && fb < fc && fb > 0) || (fb > fa && fb > fc && fb <= 0);
    if (!turns || c - a < 4 * CLOSE) {
      return Double.NaN;
    }
    double left = (fb - fa) / (b - a);
    double bend = ((fc - fb) / (c - b) - left) / (c - a);
    double at = 0.5 * (a + b) - left / (2 * bend);
    double there = fa + left * (at - a) + bend * (at - a) * (at - b);
    // Twice what the parabola falls below the middle, for what it may miss.
    boolean mayCross = (fb + 2 * (there - fb)) * fb <= 0 || Math.abs(there - fb) > Math.abs(fb) / 4;
    boolean isNew = Math.abs(at - b) > 0.02 * (c - a) && at > a + CLOSE && at < c - CLOSE;
    return mayCross && isNew ? at : Double.NaN;
  }
}
