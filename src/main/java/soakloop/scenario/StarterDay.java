package soakloop.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/** What a log tells of the day, of the idling engine and of the temperatures at the start; SI. */
final class StarterDay {
  /** The longest lead before the first pull that is kept, and what else is, s. */
  private static final double LEAD = 60;

  private static final double SHORT_LEAD = 20;

  /** How long the start is averaged over, s. */
  private static final double START = 3;

  /** Day where nothing tells it, K. */
  private static final double USUAL = 293.15;

  /** The shortest time between pulls that tells of idling, s. */
  private static final double IDLES = 10;

  private final LogReading reading;

  StarterDay(LogReading reading) {
    this.reading = reading;
  }

  /** Log time at the session's time zero, s. */
  double zero() {
    double first = reading.log().time(0);
    if (reading.pulls().isEmpty() || StarterReplay.suits(reading)) {
      return first;
    }
    double pull = reading.pulls().get(0).start();
    double zero = pull - first > LEAD ? pull - SHORT_LEAD : first;
    return pull - zero < 0.1 ? pull : zero;
  }

  /** Mean inlet air in the pulls, K; without pulls its mean; empty if not logged. */
  OptionalDouble inletInPulls() {
    Updates inlet = reading.usable(Signal.INLET_AIR);
    double[] means =
        reading.pulls().stream()
            .mapToDouble(p -> inlet.between(p.start(), p.end()).mean())
            .filter(Double::isFinite)
            .toArray();
    return finite(means.length > 0 ? StarterBoost.median(means) : inlet.mean());
  }

  /** What a blower's inlet is usually above the day, K. */
  static Estimate pickUp() {
    return KeyTable.get().require("blower.inlet-pick-up").defaultEstimate().orElseThrow();
  }

  /** The day's temperature: inlet air less what a hood warms it by, K. */
  double temperature() {
    OptionalDouble inlet = inletInPulls();
    double lowest =
        DoubleStream.of(
                reading.usable(Signal.CHARGE_TEMPERATURE).lowest(),
                reading.usable(Signal.CORE_COOLANT_IN).lowest(),
                reading.usable(Signal.ENGINE_COOLANT).lowest())
            .filter(Double::isFinite)
            .min()
            .orElse(USUAL);
    double day =
        inlet.isPresent() ? inlet.getAsDouble() - pickUp().value() : Math.min(USUAL, lowest);
    return StarterFigures.within("day.temperature", day);
  }

  /** Barometer, Pa; empty if not logged or not one that can be. */
  OptionalDouble barometer() {
    OptionalDouble logged = finite(StarterBoost.median(reading.usable(Signal.BAROMETER).values()));
    return logged.isPresent() && StarterFigures.allows("day.pressure", logged.getAsDouble())
        ? logged
        : OptionalDouble.empty();
  }

  /** Barometer as logged, else as usual, Pa. */
  double pressure() {
    return barometer()
        .orElse(KeyTable.get().require("day.pressure").defaultEstimate().orElseThrow().value());
  }

  /** What a signal shows at the session's time zero; empty if nothing near. */
  OptionalDouble atStart(Signal signal) {
    Updates values = reading.usable(signal);
    double zero = zero();
    double until =
        reading.pulls().stream()
            .mapToDouble(Pull::start)
            .filter(t -> t > zero)
            .min()
            .orElse(zero + START);
    double near =
        StarterBoost.median(values.between(zero - 0.1, Math.min(until, zero + START)).values());
    return finite(Double.isNaN(near) ? values.at(zero) : near);
  }

  /** What a signal usually shows while the car stands and idles; empty if it never does. */
  OptionalDouble idling(Signal signal) {
    Updates values = reading.usable(signal);
    Updates speed = reading.updates(Signal.ENGINE_SPEED);
    List<double[]> spans =
        reading.waits().stream()
            .filter(w -> w.duration() >= IDLES && w.moving() < 1)
            .map(w -> new double[] {w.from() + w.duration() / 4, w.to() - w.duration() / 4})
            .toList();
    double[] idle =
        spans.stream()
            .map(s -> values.between(s[0], s[1]))
            .flatMapToDouble(
                u ->
                    java.util.stream.IntStream.range(0, u.size())
                        .filter(i -> speed.at(u.time(i)) > 300.0 / 60)
                        .mapToDouble(u::value))
            .toArray();
    return finite(StarterBoost.median(Arrays.copyOf(idle, idle.length)));
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
