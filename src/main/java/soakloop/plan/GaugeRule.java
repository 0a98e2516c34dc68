package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Going by the gauge instead of the clock: what the gauge of the coolant into the core must read as
 * the pull starts.
 *
 * <p>The true car is not known, so the reading must be safe over all of them: a car goes at any
 * time up to the horizon when its own gauge, with its own error, reads no more than so much; its
 * worst peak over those times counts. The threshold is the warmest reading at which, and below
 * which everywhere, the asked share of the cars that get there keeps the limit. Between the waits
 * that were run reading and peak go straight.
 */
public final class GaugeRule {
  /** A reading that fewer cars than this share ever get to is none to wait for. */
  private static final double ENOUGH = 0.3;

  /** Steps of the search, K. */
  private static final double STEP = 0.1;

  private final double limit;
  private final List<double[]> readings = new ArrayList<>();
  private final List<double[]> peaks = new ArrayList<>();
  private final double[] waits;
  private final int failed;

  /**
   * What comes of going at a reading or below.
   *
   * @param reading K
   * @param share of the cars whose gauge gets there within the horizon
   * @param keeps share of those that keep the limit, however long they wait on
   * @param peak that the asked share of those keeps under, K
   * @param seconds after which half of those read it first
   */
  public record At(double reading, double share, double keeps, double peak, double seconds) {}

  /**
   * Takes what all cars gave. A car that failed after any wait counts as one that gets there and
   * does not keep the limit.
   *
   * @param limit K
   * @param curve all waits that were run, rising
   */
  GaugeRule(double limit, List<AfterWait> curve) {
    this.limit = limit;
    this.waits = curve.stream().mapToDouble(AfterWait::seconds).toArray();
    int cars = curve.get(0).goes().size();
    for (int i = 0; i < cars; i++) {
      int car = i;
      List<Go> goes = curve.stream().map(a -> a.goes().get(car)).toList();
      if (goes.stream().allMatch(g -> Double.isFinite(g.charge()))) {
        readings.add(goes.stream().mapToDouble(Go::reading).toArray());
        peaks.add(goes.stream().mapToDouble(Go::charge).toArray());
      }
    }
    this.failed = cars - readings.size();
  }

  /**
   * Returns what comes of going at a reading or below.
   *
   * @param reading K
   * @param confidence share of the peak that is told
   * @return empty if hardly any car gets there
   */
  public Optional<At> at(double reading, double confidence) {
    List<Double> worst = new ArrayList<>();
    List<Double> first = new ArrayList<>();
    for (int car = 0; car < readings.size(); car++) {
      double[] found = below(readings.get(car), peaks.get(car), reading);
      if (!Double.isNaN(found[0])) {
        first.add(found[0]);
        worst.add(found[1]);
      }
    }
    if (worst.size() < ENOUGH * readings.size() || worst.isEmpty()) {
      return Optional.empty();
    }
    double share = (double) worst.size() / readings.size();
    for (int i = 0; i < failed; i++) {
      worst.add(Double.POSITIVE_INFINITY);
    }
    double[] all = worst.stream().mapToDouble(w -> w).toArray();
    long kept = Arrays.stream(all).filter(p -> p <= limit).count();
    return Optional.of(
        new At(
            reading,
            share,
            (double) kept / all.length,
            Shares.quantile(all, confidence),
            Shares.quantile(first.stream().mapToDouble(f -> f).toArray(), 0.5)));
  }

  /** Returns when a car first reads a value or less, and its worst peak of all times it does. */
  private double[] below(double[] reading, double[] peak, double value) {
    double first = Double.NaN;
    double worst = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < waits.length; i++) {
      boolean in = reading[i] <= value;
      if (i > 0 && in != reading[i - 1] <= value) {
        double share = (value - reading[i - 1]) / (reading[i] - reading[i - 1]);
        worst = Math.max(worst, peak[i - 1] + share * (peak[i] - peak[i - 1]));
        double when = waits[i - 1] + share * (waits[i] - waits[i - 1]);
        first = Double.isNaN(first) ? when : first;
      }
      if (in) {
        worst = Math.max(worst, peak[i]);
        first = Double.isNaN(first) ? waits[i] : first;
      }
    }
    return new double[] {first, worst};
  }

  /**
   * Returns the warmest reading to go at, K; empty if there is none.
   *
   * @param confidence share of the cars that must keep the limit
   */
  public OptionalDouble threshold(double confidence) {
    double low = extreme(false);
    double high = extreme(true);
    OptionalDouble found = OptionalDouble.empty();
    for (double t = low; t <= high + STEP; t += STEP) {
      Optional<At> at = at(t, confidence);
      if (at.isPresent()) {
        if (at.get().peak() > limit) {
          return found;
        }
        found = OptionalDouble.of(t);
      }
    }
    return found;
  }

  /**
   * Returns whether no gauge of any car reads more than a threshold, so that none tells anything.
   *
   * @param threshold K
   */
  public boolean isAlwaysUnder(double threshold) {
    return extreme(true) <= threshold + STEP;
  }

  /** Returns the coolest or warmest reading of any car, K. */
  private double extreme(boolean warmest) {
    return readings.stream()
        .flatMapToDouble(Arrays::stream)
        .reduce(warmest ? Math::max : Math::min)
        .orElse(Double.NaN);
  }
}
