package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.study.StudyException;

/** Answers when a car can go again. */
public final class WaitRunner {
  /** Steps of the scan from the shortest wait that counts to the horizon, even as ratios. */
  private static final int SCAN = 8;

  /** Where the scan's ratios begin, s. */
  private static final double FIRST = 45;

  private final WaitPlan plan;
  private final int threads;

  /**
   * Sets out.
   *
   * @param plan the question, checked
   * @param threads cars at a time, at least one
   */
  public WaitRunner(WaitPlan plan, int threads) {
    this.plan = plan;
    this.threads = threads;
  }

  /**
   * Runs all cars.
   *
   * @return the answer
   * @throws StudyException if hardly any of the cars can do the session
   * @throws InterruptedException if it is broken off
   */
  public WaitAnswer answer() throws StudyException, InterruptedException {
    List<double[]> scans = plan.ways().stream().map(this::scan).toList();
    Fleet fleet = Fleet.of(plan, scans, threads);
    if (fleet.size() < plan.draws() / 2) {
      throw new StudyException(
          "only "
              + fleet.size()
              + " of "
              + plan.draws()
              + " equally likely cars can do the session; run it first and narrow the spreads");
    }
    List<WayAnswer> answers = new ArrayList<>();
    for (int w = 0; w < plan.ways().size(); w++) {
      int way = w;
      double[] scan = scans.get(w);
      List<AfterWait> scanned =
          IntStream.range(0, scan.length)
              .mapToObj(i -> new AfterWait(scan[i], fleet.scanned(way, i)))
              .toList();
      answers.add(answer(plan.ways().get(w), scanned, fleet));
    }
    WaitAnswer answer =
        new WaitAnswer(plan, answers, Optional.empty(), fleet.size(), fleet.lost(), fleet.keys());
    WayAnswer best = answer.best();
    return best.windows().isEmpty() && Double.isFinite(best.never().orElseThrow().lowest())
        ? answer.with(new NeedsFinder(plan, best).needs())
        : answer;
  }

  private WayAnswer answer(Way way, List<AfterWait> scanned, Fleet fleet)
      throws InterruptedException {
    WaySearch search = new WaySearch(plan, scanned, wait -> fleet.go(way, wait));
    List<Window> windows = search.windows();
    List<AfterWait> curve = search.curve();
    GaugeRule gauge = new GaugeRule(plan.limit(), curve);
    double[] iced = fleet.icedAt(way);
    return new WayAnswer(
        way,
        curve,
        windows,
        gauge,
        gauge.threshold(plan.confidence()),
        windows.isEmpty() ? Optional.of(never(curve)) : Optional.empty(),
        2 * iced.length > fleet.size()
            ? OptionalDouble.of(Shares.quantile(iced, 0.5))
            : OptionalDouble.empty());
  }

  private WayAnswer.Never never(List<AfterWait> curve) {
    AfterWait lowest = curve.get(0);
    for (AfterWait after : curve) {
      if (after.charge(plan.confidence()) < lowest.charge(plan.confidence())) {
        lowest = after;
      }
    }
    double reading = lowest.quantile(Go::reading, 0.5);
    return new WayAnswer.Never(
        lowest.charge(plan.confidence()), lowest.seconds(), reading, lowest.charge(0.5) - reading);
  }

  /** Returns the waits of the first look: the shortest, then even ratios to the horizon. */
  private double[] scan(Way way) {
    double shortest = way.shortest();
    double first = Math.max(FIRST, 1.5 * shortest);
    double[] scan = new double[SCAN + 1];
    Arrays.setAll(
        scan,
        i -> i == 0 ? shortest : first * Math.pow(plan.horizon() / first, (i - 1.0) / (SCAN - 1)));
    scan[SCAN] = plan.horizon();
    return scan;
  }
}
