package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import soakloop.log.Signal;

/**
 * Finds where the charge sensor does not show charge air: soaked by metal with the engine off, and
 * for a moment after the throttle shuts.
 */
final class AirCheck {
  /** Under this speed no engine runs, rev/s. */
  private static final double RUNNING = 300.0 / 60;

  /** The shortest stop that is told, s, and how long a sensor takes to show air again. */
  private static final double SHORTEST = 5;

  static final double RECOVERY = 10;

  /** How long after a lift a reading may be a dip, s. */
  static final double LIFT = 15;

  /** How soon a dip is over, s; metal that warms idling air takes longer. */
  private static final double RETURN = 8;

  /** How far a dip lies under everything that could cool the air, or under what follows, K. */
  private static final double DIP = 1.5;

  private final Channels channels;
  private final Updates charge;
  private final double margin;

  private AirCheck(Channels channels) {
    this.channels = channels;
    this.charge = channels.updates(Signal.CHARGE_TEMPERATURE);
    double quantum = channels.find(Signal.CHARGE_TEMPERATURE).map(Channel::quantum).orElse(0.0);
    this.margin = DIP + quantum;
  }

  static List<Finding> check(Channels channels, List<Pull> pulls) {
    AirCheck check = new AirCheck(channels);
    List<Finding> findings = new ArrayList<>();
    if (check.charge.isEmpty()) {
      return findings;
    }
    for (Load.Loaded stop : stops(channels)) {
      check.soak(stop, findings);
    }
    for (int i = 0; i < pulls.size(); i++) {
      double next = i + 1 < pulls.size() ? pulls.get(i + 1).start() : Double.POSITIVE_INFINITY;
      check.dip(pulls.get(i), Math.min(next, nextStop(channels, pulls.get(i).end())), findings);
    }
    return findings;
  }

  /** Spans in which the engine is seen to be off. */
  static List<Load.Loaded> stops(Channels channels) {
    Updates speed = channels.updates(Signal.ENGINE_SPEED);
    List<Load.Loaded> stops = new ArrayList<>();
    int first = -1;
    for (int i = 0; i <= speed.size(); i++) {
      boolean off = i < speed.size() && speed.value(i) < RUNNING;
      if (off && first < 0) {
        first = i;
      } else if (!off && first >= 0) {
        double to = i < speed.size() ? speed.time(i) : speed.time(i - 1);
        if (to - speed.time(first) >= SHORTEST) {
          stops.add(new Load.Loaded(speed.time(first), to));
        }
        first = -1;
      }
    }
    return stops;
  }

  private void soak(Load.Loaded stop, List<Finding> findings) {
    Updates inside = charge.between(stop.from(), stop.to());
    if (inside.size() < 2) {
      return;
    }
    double drift = inside.value(inside.size() - 1) - inside.value(0);
    boolean drifts = drift > margin;
    findings.add(
        Finding.of(
            Finding.Kind.SENSOR_SOAK,
            Signal.CHARGE_TEMPERATURE,
            Span.of(channels.log(), stop.from(), stop.to()),
            drifts ? Sureness.SURE : Sureness.POSSIBLE,
            "The engine is off for "
                + ChannelWords.number(stop.to() - stop.from())
                + " s from "
                + ChannelWords.number(stop.from())
                + " s: no air passes the charge sensor, it shows the metal around it"
                + (drifts ? ", which warms it." : "."),
            "These readings and the first "
                + ChannelWords.number(RECOVERY)
                + " s after are not taken as charge temperature."));
  }

  private static double nextStop(Channels channels, double after) {
    return stops(channels).stream()
        .mapToDouble(Load.Loaded::from)
        .filter(from -> from > after)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private void dip(Pull pull, double horizon, List<Finding> findings) {
    Updates after = charge.between(pull.end(), Math.min(horizon, pull.end() + LIFT));
    if (after.size() < 3) {
      return;
    }
    double lowest = after.lowest();
    int at =
        IntStream.range(0, after.size())
            .filter(i -> after.value(i) == lowest)
            .findFirst()
            .orElse(0);
    double when = after.time(at);
    OptionalDouble floor =
        DoubleStream.of(
                channels.updates(Signal.CORE_COOLANT_IN).near(when, LIFT),
                channels.updates(Signal.INLET_AIR).near(when, LIFT))
            .filter(Double::isFinite)
            .min();
    boolean below = floor.isPresent() && lowest < floor.getAsDouble() - margin;
    double later = charge.between(when, Math.min(horizon, when + RETURN)).highest();
    boolean returns = at > 0 && later - lowest > 2 * margin;
    if (below || returns) {
      findings.add(
          Finding.of(
              Finding.Kind.LIFT_DIP,
              Signal.CHARGE_TEMPERATURE,
              Span.of(channels.log(), pull.end(), when + RETURN),
              below ? Sureness.SURE : Sureness.LIKELY,
              below
                  ? "As the throttle shuts after pull "
                      + pull.number()
                      + " the charge reads below everything that could have cooled it."
                  : "As the throttle shuts after pull "
                      + pull.number()
                      + " the charge dips and comes back.",
              "A minimum there is air expanding, not cooling, and is not counted as recovery."));
    }
  }
}
