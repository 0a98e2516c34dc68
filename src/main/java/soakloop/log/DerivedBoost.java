package soakloop.log;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Boost made from an absolute pressure and the barometer, where a log has no boost of its own.
 *
 * @param signal boost after or before the core
 * @param values Pa, gauge
 * @param column how it is told among the columns
 */
record DerivedBoost(Signal signal, Series values, Log.Column column) {
  /** Engine speed under which the manifold shows the barometer, rev/s. */
  private static final double STANDING = 1;

  private record Difference(Series absolute, double barometer) implements Series {
    @Override
    public int size() {
      return absolute.size();
    }

    @Override
    public double at(int row) {
      return absolute.at(row) - barometer;
    }
  }

  private record Barometer(double value, String from, Confidence confidence) {}

  /**
   * Makes boost from an absolute pressure; empty if there is boost, no such pressure or no
   * barometer.
   */
  static Optional<DerivedBoost> of(Signal absolute, Signal boost, Map<Signal, Series> values) {
    Series pressure = values.get(absolute);
    if (pressure == null || values.containsKey(boost)) {
      return Optional.empty();
    }
    return barometer(values)
        .map(
            b ->
                new DerivedBoost(
                    boost,
                    new Difference(pressure, b.value()),
                    new Log.Column(
                        absolute.key() + " less barometer",
                        Optional.of(boost),
                        "Pa",
                        String.format(
                            Locale.ROOT,
                            "made from %s less %.1f kPa, %s",
                            absolute.key(),
                            b.value() / 1e3,
                            b.from()),
                        b.confidence())));
  }

  private static Optional<Barometer> barometer(Map<Signal, Series> values) {
    Series logged = values.get(Signal.BAROMETER);
    if (logged != null) {
      return Optional.of(
          new Barometer(Stats.of(logged).middle(), "the barometer's usual value", Confidence.SURE));
    }
    Series speed = values.get(Signal.ENGINE_SPEED);
    Series manifold = values.get(Signal.MANIFOLD_PRESSURE);
    if (speed == null || manifold == null) {
      return Optional.empty();
    }
    Stats standing = Stats.of(manifold, i -> speed.at(i) < STANDING);
    return standing.count() > 0 && PlausibleRange.of(Signal.BAROMETER).contains(standing.middle())
        ? Optional.of(
            new Barometer(standing.middle(), "the manifold with the engine off", Confidence.LIKELY))
        : Optional.empty();
  }
}
