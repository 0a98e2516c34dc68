package soakloop.reading;

import java.util.Optional;
import soakloop.fluid.Air;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.Estimate;

/**
 * Heat of the charge air from its flow and its temperatures before and after the core.
 *
 * <p>Equation: the integral of m cp (Tin - Tout), each temperature T = Ts + tau dTs/dt of a sensor
 * of first order. Noise averages out over a pull and is left out; what stays is a sensor's bias,
 * what is not known of its lag, and the flow meter's scale.
 *
 * @param flow kg/s
 * @param in air before the core
 * @param out air after it
 */
public record AirSide(Flow flow, Course in, Course out) implements AirHeat {
  /** How far an air flow meter's scale is off, nine times in ten (common practice, no source). */
  private static final double METER = 0.05;

  /**
   * What plenum and runners do to the air between the core and its sensor, K: between an idling
   * engine's metal and a charge of 0.3 kg/s and more (common practice, no source).
   */
  private static final double PLENUM = 2;

  /** Step of the sums, s. */
  private static final double STEP = 0.1;

  /**
   * Air mass flow.
   *
   * @param course kg/s over log time, s
   * @param share half width of the 90 % interval of its scale [-]
   */
  public record Flow(Curve course, double share) {}

  /**
   * A temperature over time.
   *
   * @param shown K over log time, s
   * @param lag time constant of the sensor, s
   * @param bias by how much it may be off throughout, nine times in ten, K
   */
  public record Course(Curve shown, Estimate lag, double bias) {
    /**
     * A temperature that is known.
     *
     * @param course K over log time, s
     */
    public static Course exactly(Curve course) {
      return new Course(course, Estimate.exactly(0), 0);
    }
  }

  /** What a log alone tells; empty if it lacks a channel. */
  static Optional<AirSide> of(Channels channels, LogOptions options) {
    Updates flow = channels.updates(Signal.AIR_MASS_FLOW);
    Updates in = channels.updates(Signal.CORE_AIR_IN);
    Updates out = channels.updates(Signal.CHARGE_TEMPERATURE);
    return flow.isEmpty() || in.isEmpty() || out.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new AirSide(
                metered(flow),
                sensed(in, options.airLag(), options.sensorBias()),
                charge(out, options.airLag(), options.sensorBias())));
  }

  /**
   * A logged air mass flow.
   *
   * @param flow kg/s, at least one
   */
  public static Flow metered(Updates flow) {
    return new Flow(curve(flow), METER);
  }

  /**
   * A logged temperature.
   *
   * @param shown K, at least one
   * @param lag of its sensor, s
   * @param bias of its sensor, K
   */
  public static Course sensed(Updates shown, Estimate lag, double bias) {
    return new Course(curve(shown), lag, bias);
  }

  /**
   * A logged charge temperature, behind the plenum.
   *
   * @param charge K, at least one
   * @param lag of its sensor, s
   * @param bias of its sensor, K
   */
  public static Course charge(Updates charge, Estimate lag, double bias) {
    return new Course(curve(charge), lag, Math.hypot(bias, PLENUM));
  }

  private static Curve curve(Updates updates) {
    return Curve.of(updates.times(), updates.values());
  }

  @Override
  public Estimate over(double from, double to) {
    int steps = (int) Math.max(1, Math.ceil((to - from) / STEP));
    double dt = (to - from) / steps;
    double heat = 0;
    double rate = 0;
    double inLag = 0;
    double outLag = 0;
    for (int i = 0; i < steps; i++) {
      double low = from + i * dt;
      double high = low + dt;
      double middle = low + 0.5 * dt;
      double entering = in.shown.at(middle);
      double leaving = out.shown.at(middle);
      double capacity = flow.course.at(middle) * heatCapacity(0.5 * (entering + leaving));
      heat += capacity * (entering - leaving) * dt;
      rate += capacity * dt;
      inLag += capacity * (in.shown.at(high) - in.shown.at(low));
      outLag += capacity * (out.shown.at(high) - out.shown.at(low));
    }
    double value = heat + in.lag.value() * inLag - out.lag.value() * outLag;
    double bias = rate * Math.hypot(in.bias, out.bias);
    double lag = Math.hypot(in.lag.spread() * inLag, out.lag.spread() * outLag);
    return new Estimate(value, Math.hypot(flow.share * value, Math.hypot(bias, lag)));
  }

  private static double heatCapacity(double t) {
    return Air.heatCapacity(Math.max(Air.MIN_TEMPERATURE, Math.min(Air.MAX_TEMPERATURE, t)));
  }
}
