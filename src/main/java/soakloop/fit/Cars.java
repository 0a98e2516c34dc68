package soakloop.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;
import soakloop.scenario.FitRecord;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;

/**
 * Equally likely cars of a scenario: all keys with a spread drawn together, hanging together as a
 * fit left them where it did and they were not edited since, else independently.
 */
public final class Cars {
  /**
   * Further numbers of a draw: the model's error as a pull starts and its news at the end, and what
   * a coolant gauge reads wrong.
   */
  private static final int ERRORS = 3;

  private final Scenario scenario;
  private final List<FitKey> keys;
  private final Estimate bias;
  private final Draws draws;
  private final CorrelatedError charge;
  private final CorrelatedError coolant;

  private Cars(Scenario scenario, List<FitKey> keys, Estimate bias, Draws draws) {
    this.scenario = scenario;
    this.keys = keys;
    this.bias = bias;
    this.draws = draws;
    this.charge = error(scenario, Signal.CHARGE_TEMPERATURE);
    this.coolant = error(scenario, Signal.CORE_COOLANT_IN);
  }

  private static CorrelatedError error(Scenario scenario, Signal signal) {
    return scenario
        .fitted()
        .flatMap(f -> Optional.ofNullable(f.errors().get(signal)))
        .map(e -> new CorrelatedError(e.deviation(), e.time()))
        .orElse(Evidence.USUAL);
  }

  /**
   * Draws cars, the same on every call.
   *
   * @param scenario whose keys with a spread move
   * @param count how many, above 0
   */
  public static Cars of(Scenario scenario, int count) {
    FitCase alone = new FitCase("car", scenario, List.of());
    List<FitKey> keys = new FitKeys(List.of(alone), List.of(), List.of(0)).all();
    Optional<FitRecord> fitted = scenario.fitted();
    // The sensor's bias is drawn as one more key, after those of the scenario.
    Estimate bias = fitted.flatMap(f -> f.bias(Signal.CHARGE_TEMPERATURE)).orElse(FitKeys.BIAS);
    RealMatrix covariance = MatrixUtils.createRealIdentityMatrix(keys.size() + 1);
    fitted.ifPresent(f -> correlate(covariance, f, keys));
    Draws draws = Draws.of(new ArrayRealVector(keys.size() + 1), covariance, count, ERRORS);
    return new Cars(scenario, keys, bias, draws);
  }

  private static void correlate(RealMatrix covariance, FitRecord fitted, List<FitKey> keys) {
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int k = 0; k < keys.size(); k++) {
      places.put(keys.get(k).name(), k);
    }
    places.put(FitRecord.BIAS + Signal.CHARGE_TEMPERATURE.key(), keys.size());
    for (int i = 0; i < fitted.keys().size(); i++) {
      for (int j = 0; j < i; j++) {
        FitRecord.Key one = fitted.keys().get(i);
        FitRecord.Key other = fitted.keys().get(j);
        Integer row = places.get(one.name());
        Integer column = places.get(other.name());
        if (one.holds() && other.holds() && row != null && column != null) {
          double shared = fitted.correlation().at(i, j);
          covariance.setEntry(row, column, shared);
          covariance.setEntry(column, row, shared);
        }
      }
    }
  }

  /** Returns how many keys move. */
  public int keys() {
    return keys.size();
  }

  /** Returns how many cars there are. */
  public int size() {
    return draws.size();
  }

  /**
   * Returns a car.
   *
   * @param draw from 0
   * @throws ScenarioException if the values drawn cannot be together
   */
  public Scenario scenario(int draw) throws ScenarioException {
    double[] place = draws.place(draw);
    Map<String, String> changes = new LinkedHashMap<>();
    for (int k = 0; k < keys.size(); k++) {
      keys.get(k).write(0, place[k], changes);
    }
    return scenario.with(changes);
  }

  /**
   * Returns by how much the charge sensor reads high in a draw, K.
   *
   * @param draw from 0
   */
  public double bias(int draw) {
    double place = draws.place(draw)[keys.size()];
    return bias.value() + bias.spread() / FitKey.NINETY * place;
  }

  /** Returns a standard normal number of a draw: 0 as a pull starts, 1 what is new at its end. */
  double error(int draw, int which) {
    return draws.other(draw, which);
  }

  /**
   * Returns by how much the true charge is above the modelled one late in a pull, K.
   *
   * @param draw from 0
   */
  public double chargeError(int draw) {
    return charge.deviation() * error(draw, 1);
  }

  /**
   * Returns by how much a coolant gauge reads above the modelled coolant as a pull starts, K: what
   * the model is off by, and the gauge.
   *
   * @param draw from 0
   */
  public double coolantReadingError(int draw) {
    double gauge = FitKeys.BIAS.spread() / FitKey.NINETY * error(draw, 2);
    return coolant.deviation() * error(draw, 0) + gauge;
  }

  /** Returns the model's own error of the charge. */
  CorrelatedError charge() {
    return charge;
  }

  /** Returns the model's own error of the coolant. */
  CorrelatedError coolant() {
    return coolant;
  }
}
