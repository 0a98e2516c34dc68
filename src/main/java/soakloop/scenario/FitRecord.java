package soakloop.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.quantity.Correlation;
import soakloop.quantity.Estimate;

/**
 * What a fit left in a scenario: which log it rests on, and how the values that it found hang
 * together.
 *
 * @param log the log's file name
 * @param sha256 of the log's file, hexadecimal
 * @param date of the fit, as written
 * @param version of the program that fitted
 * @param keys what was fitted
 * @param correlation of the keys, in their order
 * @param errors the model's own error of each signal
 */
public record FitRecord(
    String log,
    String sha256,
    String date,
    String version,
    List<Key> keys,
    Correlation correlation,
    Map<Signal, ModelError> errors) {
  /** Start of the name of what a sensor reads too high, before the signal. */
  public static final String BIAS = "bias.";

  /** Start of the name of a sensor's lag, before the signal. */
  public static final String LAG = "lag.";

  /**
   * Something that was fitted.
   *
   * @param name key of the scenario, of a curve without the numbers of its points; or {@code bias.}
   *     or {@code lag.} and a signal
   * @param values what was found, SI: one, or those of a curve's points
   * @param holds whether the scenario still has these values: if not it was edited since, and what
   *     was found to go together with it no longer does
   */
  public record Key(String name, List<Estimate> values, boolean holds) {
    /** Copies the list. */
    public Key {
      values = List.copyOf(values);
    }
  }

  /**
   * By how much the model is wrong although its keys are right.
   *
   * @param deviation standard deviation, K, above 0
   * @param time in which it fades to 1/e, s, above 0
   */
  public record ModelError(double deviation, double time) {}

  /** Copies lists and maps. */
  public FitRecord {
    keys = List.copyOf(keys);
    errors = Map.copyOf(errors);
    if (correlation.size() != keys.size()) {
      throw new IllegalArgumentException(
          correlation.size() + " rows of correlation for " + keys.size() + " keys");
    }
  }

  /**
   * Returns what was found of a sensor's bias, K.
   *
   * @param signal whose sensor
   */
  public Optional<Estimate> bias(Signal signal) {
    return keys.stream()
        .filter(k -> k.name().equals(BIAS + signal.key()))
        .map(k -> k.values().get(0))
        .findFirst();
  }

  /** Returns the names of the keys that were edited since the fit. */
  public List<String> edited() {
    return keys.stream().filter(k -> !k.holds()).map(Key::name).toList();
  }
}
