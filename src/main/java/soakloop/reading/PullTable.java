package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soakloop.log.Signal;

/** Reads the pulls of a log at the same engine speed. */
final class PullTable {
  private final Channels channels;
  private final List<Pull> pulls;
  private final List<Finding> findings;
  private final OptionalDouble counted;
  private final OptionalDouble limit;
  private final List<Load.Loaded> stops;

  PullTable(
      Channels channels,
      List<Pull> pulls,
      List<Finding> findings,
      OptionalDouble counted,
      OptionalDouble limit) {
    this.channels = channels;
    this.pulls = pulls;
    this.findings = findings;
    this.counted = counted;
    this.limit = limit;
    this.stops = AirCheck.stops(channels);
  }

  List<PullReading> read() {
    List<PullReading> readings = new ArrayList<>();
    for (int i = 0; i < pulls.size(); i++) {
      double next = i + 1 < pulls.size() ? pulls.get(i + 1).start() : channels.log().endTime();
      readings.add(read(pulls.get(i), next));
    }
    return readings;
  }

  private PullReading read(Pull pull, double next) {
    Updates charge = usable(Signal.CHARGE_TEMPERATURE, pull);
    Updates coolant = usable(Signal.CORE_COOLANT_IN, pull);
    OptionalDouble at = OptionalDouble.empty();
    if (counted.isPresent()) {
      at =
          CountedSpeed.passed(channels, pull, counted.getAsDouble())
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty());
    }
    OptionalDouble start = soaked(pull.start()) ? none() : value(charge, pull.start());
    OptionalDouble end = at.isPresent() ? value(charge, at.getAsDouble()) : none();
    List<Updates> flowing = flowing(charge, pull.start(), next);
    return new PullReading(
        pull,
        at,
        start,
        end,
        ofFinite(flowing.stream().mapToDouble(Updates::highest).filter(Double::isFinite).max()),
        start.isPresent() && end.isPresent()
            ? OptionalDouble.of(end.getAsDouble() - start.getAsDouble())
            : none(),
        value(coolant, pull.start()),
        at.isPresent() ? value(coolant, at.getAsDouble()) : none(),
        pull.peakBoost(),
        boostCut(pull),
        peak(usable(Signal.WHEEL_POWER, pull).between(pull.start(), pull.end())),
        overLimit(flowing, charge));
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private static OptionalDouble ofFinite(OptionalDouble value) {
    return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value : none();
  }

  /** A signal's updates; none in a pull in which it is stuck. */
  private Updates usable(Signal signal, Pull pull) {
    boolean stuck = found(Finding.Kind.STUCK, signal, pull);
    return stuck ? Updates.none() : channels.updates(signal);
  }

  private boolean found(Finding.Kind kind, Signal signal, Pull pull) {
    return findings.stream()
        .anyMatch(
            f ->
                f.kind() == kind
                    && f.signal().filter(s -> s == signal).isPresent()
                    && f.span().from() <= pull.end()
                    && f.span().to() >= pull.start());
  }

  private boolean surelyCut(Signal signal) {
    return findings.stream()
        .filter(f -> f.kind() == Finding.Kind.SATURATION && f.sureness() == Sureness.SURE)
        .anyMatch(f -> f.signal().filter(s -> s == signal).isPresent());
  }

  /** Whether a pressure that is cut off stands at its end of scale in a pull. */
  private boolean boostCut(Pull pull) {
    return Stream.of(Signal.BOOST, Signal.MANIFOLD_PRESSURE)
        .filter(this::surelyCut)
        .map(channels::updates)
        .anyMatch(u -> u.between(pull.start(), pull.end()).highest() == u.highest());
  }

  /** A value at a time, at most two updates or 1 s beyond the channel's ends. */
  private static OptionalDouble value(Updates updates, double when) {
    double spacing = updates.size() < 2 ? 0 : updates.spacing();
    return ofFinite(OptionalDouble.of(updates.near(when, Math.max(1, 2 * spacing))));
  }

  private static OptionalDouble peak(Updates updates) {
    double[] values = Numbers.middleOfThree(updates.values());
    return ofFinite(OptionalDouble.of(Updates.of(updates.times(), values).highest()));
  }

  /** Whether the charge sensor shows metal at a time: the engine is off, or was just now. */
  private boolean soaked(double when) {
    return stops.stream().anyMatch(s -> when >= s.from() && when < s.to() + AirCheck.RECOVERY);
  }

  /** The charge temperature in the parts of a span in which air passes its sensor. */
  private List<Updates> flowing(Updates charge, double from, double to) {
    List<Updates> parts = new ArrayList<>();
    double begin = from;
    for (Load.Loaded stop : stops) {
      if (stop.to() + AirCheck.RECOVERY > begin && stop.from() < to) {
        parts.add(charge.between(begin, Math.max(begin, stop.from())));
        begin = stop.to() + AirCheck.RECOVERY;
      }
    }
    if (begin < to) {
      parts.add(charge.between(begin, to));
    }
    return parts;
  }

  private OptionalDouble overLimit(List<Updates> flowing, Updates charge) {
    if (limit.isEmpty() || charge.isEmpty()) {
      return none();
    }
    double step = Math.max(2, 5 * charge.spacing());
    return OptionalDouble.of(
        flowing.stream().mapToDouble(u -> u.timeAbove(limit.getAsDouble(), step)).sum());
  }
}
