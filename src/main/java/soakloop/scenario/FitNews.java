package soakloop.scenario;

import java.util.List;
import java.util.Map;
import soakloop.log.Signal;
import soakloop.quantity.Correlation;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/**
 * What a fit found for one scenario, to be written into it.
 *
 * @param log file name of the log as the scenario is to have it, relative to where it will lie
 * @param sha256 of the log's file, 64 hexadecimal digits
 * @param date of the fit
 * @param version of the program
 * @param values what was found, most certain first or in any other order
 * @param correlation of the values, in their order
 * @param errors the model's own error of each signal
 */
public record FitNews(
    String log,
    String sha256,
    String date,
    String version,
    List<FittedValue> values,
    Correlation correlation,
    Map<Signal, FitRecord.ModelError> errors) {
  /**
   * A key with what was found of it.
   *
   * @param key as {@link FitRecord.Key#name} has it
   * @param dimension what it measures
   * @param parts its one value, or those of a curve's points; of a sensor's bias or lag one without
   *     a path
   */
  public record FittedValue(String key, Dimension dimension, List<Part> parts) {
    /** Copies the list. */
    public FittedValue {
      parts = List.copyOf(parts);
    }
  }

  /**
   * One value.
   *
   * @param path at which the scenario takes it; empty for a sensor's
   * @param estimate value and 90 % half width, SI; the spread above 0
   */
  public record Part(String path, Estimate estimate) {}

  /** Copies lists and maps. */
  public FitNews {
    values = List.copyOf(values);
    errors = Map.copyOf(errors);
    if (correlation.size() != values.size()) {
      throw new IllegalArgumentException(
          correlation.size() + " rows of correlation for " + values.size() + " values");
    }
  }
}
