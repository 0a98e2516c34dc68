package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Finds the unit of a column that says none, by where its values lie. A unit is told only if it is
 * the one unit that makes sense of them; the bounds are common practice, no source. Temperatures
 * are for {@link TemperatureUnits}: single ones rarely tell.
 */
final class UnitGuess {
  private record Candidate(Unit unit, double lowest, double highest, String like) {}

  private UnitGuess() {}

  /** Finds the unit of a signal's values; the reason goes with it. */
  static Optional<Reading> of(int index, Signal signal, Stats stats) {
    if (stats.count() == 0) {
      return Optional.empty();
    }
    boolean pressure =
        signal.dimension() == Dimension.GAUGE_PRESSURE
            || signal.dimension() == Dimension.ABSOLUTE_PRESSURE;
    double high = pressure ? stats.top() : stats.high();
    List<Candidate> fit =
        candidates(signal).stream()
            .filter(c -> c.unit().toSi(high) >= c.lowest())
            .filter(c -> c.unit().toSi(high) <= c.highest())
            .toList();
    if (fit.size() != 1) {
      return Optional.empty();
    }
    Candidate c = fit.get(0);
    String reason =
        c.like().isEmpty()
            ? ""
            : String.format(Locale.ROOT, "no unit said: up to %s, so %s", shown(high), c.like());
    Confidence confidence = c.like().isEmpty() ? Confidence.SURE : Confidence.LIKELY;
    return Optional.of(new Reading(index, signal, c.unit(), confidence, reason));
  }

  /** For each unit, the highest values (SI) that a log of some load can have in it. */
  private static List<Candidate> candidates(Signal signal) {
    Dimension d = signal.dimension();
    List<Candidate> all = new ArrayList<>();
    switch (signal) {
      case ENGINE_SPEED -> all.add(of(d, "rpm", 0, 500, "rpm"));
      case MANIFOLD_PRESSURE, PRESSURE_BEFORE_CORE -> {
        all.add(of(d, "kPa", 92e3, 450e3, "kPa"));
        all.add(of(d, "bar", 92e3, 450e3, "bar"));
        all.add(of(d, "psi", 92e3, 450e3, "psi"));
        all.add(of(d, "hPa", 92e3, 450e3, "hPa"));
      }
      case BOOST, BOOST_BEFORE_CORE -> {
        all.add(of(d, "kPa", 28e3, 300e3, "kPa"));
        all.add(of(d, "bar", 20e3, 300e3, "bar"));
        all.add(of(d, "psi", 28e3, 190e3, "psi"));
      }
      case BAROMETER -> {
        for (String symbol : List.of("kPa", "hPa", "bar", "psi", "inHg")) {
          all.add(of(d, symbol, 60e3, 110e3, symbol));
        }
      }
      case THROTTLE, PUMP, FAN -> {
        all.add(of(d, "%", 0.0200001, 1.3, "%"));
        all.add(new Candidate(d.si(), 0, 1.0001, "a share of 1"));
        if (signal != Signal.THROTTLE) {
          all.set(0, of(d, "%", 0.0100001, 1.3, "%"));
          all.set(1, new Candidate(d.si(), 0, 1.0001, "off and on"));
        }
      }
      case LAMBDA -> {
        all.add(new Candidate(d.si(), 0.5, 3, ""));
        all.add(
            new Candidate(
                LogUnits.AIR_FUEL_RATIO, 0.5, 2.5, "an air-fuel ratio of petrol, 14.7 to 1"));
      }
      case GEAR -> all.add(new Candidate(d.si(), -1, 12, ""));
      case SPARK, KNOCK -> all.add(of(d, "deg", -1.5, 1.5, "degrees of crank"));
      default -> {}
    }
    return all;
  }

  private static String shown(double value) {
    return java.math.BigDecimal.valueOf(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Candidate of(Dimension d, String symbol, double low, double high, String like) {
    return new Candidate(d.require(symbol), low, high, like);
  }
}
