package soakloop.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How what some cars give is read for all of them.
 *
 * @param share of these cars that stand for the asked share of all
 * @param above by how much all cars' peaks are found to be above so read ones, by round, K
 */
record Sample(double share, List<Double> above) {
  Sample {
    above = List.copyOf(above);
  }

  /** Reads cars as they are. */
  static Sample plain(double share, int rounds) {
    return new Sample(share, Collections.nCopies(rounds, 0.0));
  }

  /**
   * Asked of every round once a promise was broken (our own judgement), K: plans with few actions
   * are found near the limit, where these cars flatter most.
   */
  private static final double CAUTION = 0.3;

  /** Returns the same after a plan that these cars foretold was run with all. */
  Sample corrected(Prefix foretold, Prefix all) {
    List<Double> more = new ArrayList<>();
    for (int i = 0; i < above.size(); i++) {
      double difference = all.rounds().get(i).peak() - foretold.rounds().get(i).peak();
      more.add(
          above.get(i) + CAUTION + (Double.isFinite(difference) ? Math.max(0, difference) : 0));
    }
    return new Sample(share, more);
  }
}
