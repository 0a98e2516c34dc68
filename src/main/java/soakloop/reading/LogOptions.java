package soakloop.reading;

import java.util.OptionalDouble;
import soakloop.quantity.Estimate;
import soakloop.quantity.Require;

/**
 * What is asked of a log, and what is known of its sensors.
 *
 * @param countedSpeed engine speed at which pulls are read, rev/s; empty for the highest round one
 *     that every whole pull passes
 * @param limit charge temperature over which time is counted, K; empty for none
 * @param airLag time in which an air sensor shows 63 % of a step at a pull's air flow, s
 * @param coolantLag the same of a coolant sensor, s
 * @param sensorBias by how much a sensor may be off throughout, nine times in ten, K
 */
public record LogOptions(
    OptionalDouble countedSpeed,
    OptionalDouble limit,
    Estimate airLag,
    Estimate coolantLag,
    double sensorBias) {
  /**
   * Nothing asked and nothing known: sensors as the scenario's defaults have them (bare bead about
   * 2 s in fast air, boxed ones 10 s and more), a coolant sensor alike, and 2 K, within which two
   * sensors of one kind and their plugs agree (common practice, no source).
   */
  public static final LogOptions DEFAULTS =
      new LogOptions(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          new Estimate(3, 1.8),
          new Estimate(3, 1.8),
          2);

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if a speed or limit is not above zero, a lag or bias negative
   */
  public LogOptions {
    countedSpeed.ifPresent(s -> Require.positive("the counted engine speed", s));
    limit.ifPresent(t -> Require.positive("the limit", t));
    Require.notNegative("an air sensor's lag", airLag.value());
    Require.notNegative("a coolant sensor's lag", coolantLag.value());
    Require.notNegative("a sensor's bias", sensorBias);
  }

  /**
   * Returns the same with pulls read at an engine speed.
   *
   * @param speed rev/s
   */
  public LogOptions countedTo(double speed) {
    return new LogOptions(OptionalDouble.of(speed), limit, airLag, coolantLag, sensorBias);
  }

  /**
   * Returns the same with time counted over a charge temperature.
   *
   * @param temperature K
   */
  public LogOptions withLimit(double temperature) {
    return new LogOptions(
        countedSpeed, OptionalDouble.of(temperature), airLag, coolantLag, sensorBias);
  }

  /**
   * Returns the same with other sensors.
   *
   * @param air lag of air sensors, s
   * @param coolant lag of coolant sensors, s
   * @param bias K
   */
  public LogOptions withSensors(Estimate air, Estimate coolant, double bias) {
    return new LogOptions(countedSpeed, limit, air, coolant, bias);
  }
}
