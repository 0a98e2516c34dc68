package soakloop.reading;

import java.util.Optional;
import soakloop.quantity.Estimate;

/**
 * What the coolant gains in the core around one pull: its rise from in to out, summed over time,
 * above what the two sensors differ by when next to no heat is moved.
 *
 * <p>Sums do not ask for steadiness: the lag of a sensor only counts by how its reading differs at
 * the two ends, and what the core itself has stored by how its temperature does. The stretch goes
 * on after the pull until the core has been flushed.
 *
 * @param from s
 * @param to s
 * @param rise summed rise, K s
 * @param steady half width of its 90 % interval that is alike in all pulls, K s
 * @param noise half width of the rest, K s
 * @param warming by how much the core is warmer at the end, K
 * @param idle stretch before the pull in which the two sensors were held together; empty if there
 *     was none, so that their biases count in full
 */
record CoreRise(
    double from, double to, double rise, double steady, double noise, double warming, Idle idle) {
  private static final double NINETY = 1.645;

  /** What is looked at before the pull's start and after its end, s. */
  private static final double BEFORE = 1;

  private static final double AFTER = 14;
  private static final double LEAST_AFTER = 8;

  /** The quiet stretch before a pull: it ends before the engine is brought up, s. */
  private static final double QUIET_TO = 4;

  private static final double QUIET_FROM = 16;
  private static final double LEAST_QUIET = 4;

  /** How even the difference must be in the quiet stretch, K beyond what rounding does. */
  private static final double EVEN = 1;

  /** What the two sensors differ by beyond a constant, K (own judgement). */
  private static final double DRIFT = 0.2;

  /** Longest time between updates with which a pull can be summed, s. */
  private static final double SPARSE = 2.5;

  /**
   * The quiet stretch.
   *
   * @param from s
   * @param to s; {@code from} if there was none
   * @param warming by how much the core gets warmer in it, K
   */
  record Idle(double from, double to, double warming) {
    boolean exists() {
      return to > from;
    }
  }

  /**
   * Reads it.
   *
   * @param in coolant into the core
   * @param out coolant out of it
   * @param pull the pull
   * @param free when the car was last busy before it, s
   * @param next when it is busy again, s
   * @return empty if updates are too sparse or the next pull follows too soon
   */
  static Optional<CoreRise> of(
      Channel in, Channel out, Pull pull, double free, double next, LogOptions options) {
    double from = pull.start() - BEFORE;
    double to = Math.min(pull.end() + AFTER, next);
    double spacing = Math.max(in.updates().spacing(), out.updates().spacing());
    if (!(to >= pull.end() + LEAST_AFTER)
        || !(spacing <= SPARSE)
        || !covers(in, from, to)
        || !covers(out, from, to)) {
      return Optional.empty();
    }
    double length = to - from;
    Optional<Idle> idle = quiet(in, out, pull, free);
    double zero = Math.sqrt(2) * options.sensorBias();
    double offset = 0;
    double scatter = 0;
    Idle quiet = new Idle(from, from, 0);
    if (idle.isPresent()) {
      quiet = idle.get();
      double span = quiet.to - quiet.from;
      offset = (sum(out, quiet.from, quiet.to) - sum(in, quiet.from, quiet.to)) / span;
      zero = Math.hypot(DRIFT, 0.45 * Math.hypot(in.quantum(), out.quantum()));
      scatter = NINETY * deviation(in, out) * Math.sqrt(spacing / span) * length;
    }
    double endIn = in.updates().at(to) - in.updates().at(from);
    double endOut = out.updates().at(to) - out.updates().at(from);
    Estimate lag = options.coolantLag();
    double rise =
        sum(out, from, to) - sum(in, from, to) + lag.value() * (endOut - endIn) - offset * length;
    return Optional.of(
        new CoreRise(
            from,
            to,
            rise,
            Math.hypot(zero * length, lag.spread() * Math.hypot(endIn, endOut)),
            Math.hypot(scatter, NINETY * deviation(in, out) * Math.sqrt(spacing * length)),
            0.5 * (endIn + endOut),
            quiet));
  }

  private static double deviation(Channel in, Channel out) {
    return Math.hypot(in.deviation(), out.deviation());
  }

  private static boolean covers(Channel channel, double from, double to) {
    Updates updates = channel.updates();
    return updates.time(0) <= from && updates.time(updates.size() - 1) >= to;
  }

  /** Integral of a channel, straight between its updates, K s. */
  private static double sum(Channel channel, double from, double to) {
    Updates inside = channel.updates().between(from, to);
    double time = from;
    double value = channel.updates().at(from);
    double sum = 0;
    for (int i = 0; i < inside.size(); i++) {
      sum += 0.5 * (value + inside.value(i)) * (inside.time(i) - time);
      time = inside.time(i);
      value = inside.value(i);
    }
    return sum + 0.5 * (value + channel.updates().at(to)) * (to - time);
  }

  private static Optional<Idle> quiet(Channel in, Channel out, Pull pull, double free) {
    double to = pull.start() - QUIET_TO;
    double from = Math.max(free, pull.start() - QUIET_FROM);
    if (!(to - from >= LEAST_QUIET) || !covers(in, from, to) || !covers(out, from, to)) {
      return Optional.empty();
    }
    double middle = 0.5 * (from + to);
    double half = middle - from;
    double first = (sum(out, from, middle) - sum(in, from, middle)) / half;
    double second = (sum(out, middle, to) - sum(in, middle, to)) / half;
    if (Math.abs(second - first) > EVEN + Math.hypot(in.quantum(), out.quantum())) {
      return Optional.empty();
    }
    double warmer =
        (sum(out, middle, to)
                + sum(in, middle, to)
                - sum(out, from, middle)
                - sum(in, from, middle))
            / half;
    return Optional.of(new Idle(from, to, warmer));
  }
}
