package soakloop.fit;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.RealMatrix;
import soakloop.log.Signal;
import soakloop.study.Outcome;

/**
 * What a fit gave.
 *
 * @param plan what was asked
 * @param keys what the logs say of each key that they could inform, most news first
 * @param untold keys that the logs cannot inform: their answer is what was assumed
 * @param correlation of the keys' places, in the order of {@code keys} [-]
 * @param signals how far the model is from each signal of each case, before and after
 * @param quantities of each case, in their order: what is known of its next pull
 * @param heldOut last pulls foretold from those before
 * @param before each case's run with what was believed
 * @param after each case's run with the likeliest keys
 * @param pairs keys that cannot be told apart
 * @param widening how many times wider intervals were made because held-out pulls were missed [-]
 * @param advice of each case, in their order: what else to measure, the most telling first
 * @param profiles intervals of the keys that were asked for, without taking the model for a
 *     straight line
 * @param effort what it took
 * @param cautions what a reader should know before leaning on it
 */
public record FitResult(
    FitPlan plan,
    List<KeyNews> keys,
    List<FitKey> untold,
    RealMatrix correlation,
    List<SignalFit> signals,
    List<Quantities> quantities,
    List<HeldOut> heldOut,
    List<Outcome> before,
    List<Outcome> after,
    List<Pair> pairs,
    double widening,
    List<List<Advice>> advice,
    List<Profiled> profiles,
    Effort effort,
    List<String> cautions) {
  /**
   * What is known of one case's next pull.
   *
   * @param label of the case
   * @param before what was believed
   * @param after what is known; of the same quantities
   */
  public record Quantities(String label, Map<Quantity, Band> before, Map<Quantity, Band> after) {}

  /**
   * How far the model is from a logged signal.
   *
   * @param label of the case
   * @param signal which
   * @param course point by point
   * @param error the model's own error: its standard deviation, K
   * @param errorTime how long it lasts, s
   */
  public record SignalFit(
      String label, Signal signal, List<Beside> course, double error, double errorTime) {
    /** Copies the list. */
    public SignalFit {
      course = List.copyOf(course);
    }

    /** Returns how many points it is held against. */
    public int points() {
      return course.size();
    }

    /** Returns the root mean square with what was believed, K. */
    public double before() {
      return rms(Beside::offBefore);
    }

    /** Returns the root mean square with the likeliest keys, sensor's bias and lag counted, K. */
    public double after() {
      return rms(Beside::offAfter);
    }

    private double rms(ToDoubleFunction<Beside> off) {
      return Math.sqrt(
          course.stream().mapToDouble(off).map(x -> x * x).average().orElse(Double.NaN));
    }
  }

  /**
   * A point of a log, readings close together drawn together, and what the model has the sensor
   * show there.
   *
   * @param time of the session, s
   * @param logged K
   * @param before with what was believed, K
   * @param after with the likeliest keys, K
   */
  public record Beside(double time, double logged, double before, double after) {
    /** Returns modelled less logged with what was believed, K. */
    public double offBefore() {
      return before - logged;
    }

    /** Returns modelled less logged with the likeliest keys, K. */
    public double offAfter() {
      return after - logged;
    }
  }

  /**
   * Two keys of which the logs know only what they do together.
   *
   * @param one a key's name
   * @param other another's
   * @param correlation [-]
   * @param known what is left of their best known combination's standard deviation [-]
   */
  public record Pair(String one, String other, double correlation, double known) {}

  /**
   * A key's interval found by profile.
   *
   * @param news the key, with its interval that takes the model for a straight line
   * @param low lower end by profile, SI
   * @param high upper end, SI
   */
  public record Profiled(KeyNews news, double low, double high) {}

  /**
   * What the fit took.
   *
   * @param points held against
   * @param effectiveKeys number of keys that the logs decide, each as far as they do [-]
   * @param settled whether the search ended because nothing got better
   * @param rivals other answers that are nearly as likely
   */
  public record Effort(int points, double effectiveKeys, boolean settled, int rivals) {}

  /** Copies the lists. */
  public FitResult {
    keys = List.copyOf(keys);
    untold = List.copyOf(untold);
    signals = List.copyOf(signals);
    quantities = List.copyOf(quantities);
    heldOut = List.copyOf(heldOut);
    before = List.copyOf(before);
    after = List.copyOf(after);
    pairs = List.copyOf(pairs);
    advice = advice.stream().map(List::copyOf).toList();
    profiles = List.copyOf(profiles);
    cautions = List.copyOf(cautions);
  }

  /**
   * Returns how two keys hang together: near 1, if one is really higher, so is the other; near -1,
   * the other is lower.
   *
   * @param i index of a key
   * @param j of another
   */
  public double together(int i, int j) {
    return correlation.getEntry(i, j);
  }

  /**
   * Returns by how much a case's sensor is found to read high throughout, K; 0 if nothing is said
   * of it.
   *
   * @param inCase index of the case
   * @param signal the sensor's
   */
  public double bias(int inCase, Signal signal) {
    return keys.stream()
        .filter(k -> k.key().moves(inCase, new Role.Bias(signal)))
        .mapToDouble(k -> k.after().middle())
        .findFirst()
        .orElse(0);
  }
}
