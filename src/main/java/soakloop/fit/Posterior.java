package soakloop.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;
import soakloop.scenario.FitRecord;

/**
 * What is known of all keys of several cases together: what logs tell of those that they inform,
 * what was believed of the rest.
 */
public final class Posterior {
  private final List<FitCase> cases;
  private final List<FitKey> keys;
  private final RealVector place;
  private final RealMatrix covariance;
  private final CorrelatedError charge;
  private final Optional<Fitted> fitted;
  private final List<HeldOut> heldOut;

  private Posterior(
      List<FitCase> cases,
      List<FitKey> keys,
      RealVector place,
      RealMatrix covariance,
      CorrelatedError charge,
      Optional<Fitted> fitted,
      List<HeldOut> heldOut) {
    this.cases = List.copyOf(cases);
    this.keys = List.copyOf(keys);
    this.place = place;
    this.covariance = covariance;
    this.charge = charge;
    this.fitted = fitted;
    this.heldOut = List.copyOf(heldOut);
  }

  /**
   * Returns what is believed without any log: what the scenarios state, and what earlier fits left
   * in them.
   *
   * @param plan cases, which may be without data, and what each has to itself
   */
  public static Posterior believed(FitPlan plan) {
    List<FitKey> keys = new FitKeys(plan.cases(), plan.own(), plan.groups()).all();
    RealMatrix covariance = MatrixUtils.createRealIdentityMatrix(keys.size());
    for (int i = 0; i < plan.cases().size(); i++) {
      int inCase = i;
      plan.cases()
          .get(i)
          .scenario()
          .fitted()
          .ifPresent(f -> correlate(covariance, f, keys, inCase));
    }
    return new Posterior(
        plan.cases(),
        keys,
        new ArrayRealVector(keys.size()),
        covariance,
        Evidence.USUAL,
        Optional.empty(),
        List.of());
  }

  /** Sets how keys hang together that are a case's alone, or first of all that case's. */
  private static void correlate(
      RealMatrix covariance, FitRecord record, List<FitKey> keys, int inCase) {
    Map<String, Integer> rows = new LinkedHashMap<>();
    for (int k = 0; k < keys.size(); k++) {
      FitKey.Part first = keys.get(k).parts().get(0);
      if (first.inCase() == inCase && keys.get(k).role() instanceof Role.OfScenario) {
        rows.put(FoundValues.name(keys.get(k), first.path()), k);
      }
    }
    for (int i = 0; i < record.keys().size(); i++) {
      for (int j = 0; j < i; j++) {
        Integer row = rows.get(record.keys().get(i).name());
        Integer column = rows.get(record.keys().get(j).name());
        if (row != null
            && column != null
            && record.keys().get(i).holds()
            && record.keys().get(j).holds()) {
          covariance.setEntry(row, column, record.correlation().at(i, j));
          covariance.setEntry(column, row, record.correlation().at(i, j));
        }
      }
    }
  }

  static Posterior known(Fitted fitted, List<FitKey> untold, List<HeldOut> heldOut) {
    List<FitKey> keys = new ArrayList<>(fitted.model().keys());
    int told = keys.size();
    keys.addAll(untold);
    RealMatrix covariance = MatrixUtils.createRealIdentityMatrix(keys.size());
    covariance.setSubMatrix(fitted.covariance().getData(), 0, 0);
    RealVector place = new ArrayRealVector(keys.size());
    for (int k = 0; k < told; k++) {
      place.setEntry(k, fitted.place().getEntry(k));
    }
    return new Posterior(
        fitted.model().cases(),
        keys,
        place,
        covariance,
        fitted.errors().getOrDefault(Signal.CHARGE_TEMPERATURE, Evidence.USUAL),
        Optional.of(fitted),
        heldOut);
  }

  List<FitKey> keyList() {
    return keys;
  }

  RealMatrix covariance() {
    return covariance;
  }

  /** Returns the model's own error of a signal. */
  CorrelatedError error(Signal signal) {
    return fitted.map(f -> f.errors().get(signal)).orElse(Evidence.USUAL);
  }

  /** Returns what was fitted, or only believed. */
  public List<FitCase> cases() {
    return cases;
  }

  /** Returns how many keys move. */
  public int keys() {
    return keys.size();
  }

  /** Returns the last pulls, foretold from those before; none without logs. */
  public List<HeldOut> heldOut() {
    return heldOut;
  }

  /** Returns the standard deviation of the model's own error of the charge temperature, K. */
  public double modelError() {
    return charge.deviation();
  }

  /** Returns how long the model's own error of the charge temperature lasts, s. */
  public double modelErrorTime() {
    return charge.time();
  }

  /** Returns the likeliest place. */
  public Place likeliest() {
    return new Place(keys, place);
  }

  /**
   * Returns the likeliest place with one key moved.
   *
   * @param key index
   * @param step in standard deviations of what was believed of it
   */
  public Place moved(int key, double step) {
    RealVector there = place.copy();
    there.addToEntry(key, step);
    return new Place(keys, there);
  }

  /**
   * Returns equally likely places, the same on every call.
   *
   * @param count how many
   * @param more further independent standard normal numbers beside each
   */
  public List<Place> draws(int count, int more) {
    Draws draws = Draws.of(place, covariance, count, more);
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                new Place(
                    keys,
                    new ArrayRealVector(draws.place(i), false),
                    IntStream.range(0, more).mapToDouble(m -> draws.other(i, m)).toArray()))
        .toList();
  }

  /**
   * Returns the standard deviation of a number that changes in proportion to the keys.
   *
   * @param gradient what it changes by for each key
   */
  public double deviation(RealVector gradient) {
    return Math.sqrt(gradient.dotProduct(covariance.operate(gradient)));
  }

  /**
   * Ranks sensors and tests by how far they would narrow a number; nothing without logs.
   *
   * @param inCase index of the case whose session is gone on with
   * @param gradient what the number changes by for each key
   */
  public List<Advice> advice(int inCase, RealVector gradient) {
    if (fitted.isEmpty()) {
      return List.of();
    }
    int told = fitted.get().model().keys().size();
    RealVector rest = gradient.getSubVector(told, keys.size() - told);
    return Adviser.of(fitted.get(), inCase, gradient.getSubVector(0, told), rest.dotProduct(rest));
  }
}
