package soakloop.log;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The barometer that a log's gauge and absolute pressures are reckoned by.
 *
 * @param pascal absolute pressure of the air outside, Pa
 * @param from where it is known from, in words
 * @param confidence how sure
 */
record Barometer(double pascal, String from, Confidence confidence) {
  /** Engine speed under which the manifold shows the barometer, rev/s. */
  private static final double STANDING = 1;

  /**
   * Most that the difference of two manifold pressures may vary if it is the barometer, Pa: common
   * practice, no source.
   */
  private static final double STEADY = 3e3;

  /** Difference from a stated barometer over which one of the two is wrong, Pa; no source. */
  private static final double AGREES = 2e3;

  /** The barometer that a scenario states for the day. */
  static Barometer stated(double pascal) {
    return new Barometer(pascal, "the stated barometer", Confidence.SURE);
  }

  /** Finds a log's own: logged, the manifold with the engine off, or what two scales differ by. */
  static Optional<Barometer> of(Map<Signal, Series> values) {
    Series logged = values.get(Signal.BAROMETER);
    if (logged != null && Stats.of(logged).count() > 0) {
      return Optional.of(
          new Barometer(Stats.of(logged).middle(), "the barometer's usual value", Confidence.SURE));
    }
    return standing(values).or(() -> difference(values));
  }

  private static Optional<Barometer> standing(Map<Signal, Series> values) {
    Series speed = values.get(Signal.ENGINE_SPEED);
    Series manifold = values.get(Signal.MANIFOLD_PRESSURE);
    if (speed == null || manifold == null || speed.lowest() >= STANDING) {
      return Optional.empty();
    }
    Stats standing = Stats.of(manifold, i -> speed.at(i) < STANDING);
    return standing.count() > 0 && isPlausible(standing.middle())
        ? Optional.of(
            new Barometer(standing.middle(), "the manifold with the engine off", Confidence.LIKELY))
        : Optional.empty();
  }

  private static Optional<Barometer> difference(Map<Signal, Series> values) {
    Series absolute = values.get(Signal.MANIFOLD_PRESSURE);
    Series gauge = values.get(Signal.BOOST);
    if (absolute == null || gauge == null) {
      return Optional.empty();
    }
    Stats apart = Stats.of(new Shifted(absolute, gauge));
    return apart.count() > 0 && apart.high() - apart.low() < STEADY && isPlausible(apart.middle())
        ? Optional.of(
            new Barometer(
                apart.middle(), "what manifold-pressure and boost differ by", Confidence.LIKELY))
        : Optional.empty();
  }

  private record Shifted(Series series, Series less) implements Series {
    @Override
    public int size() {
      return series.size();
    }

    @Override
    public double at(int row) {
      return series.at(row) - less.at(row);
    }
  }

  /** Returns whether a pressure can be the atmosphere's, Pa. */
  static boolean isPlausible(double pascal) {
    return PlausibleRange.of(Signal.BAROMETER).contains(pascal);
  }

  /** Says that a stated barometer is not this one, if the two cannot both be right. */
  Optional<Remark> against(double stated) {
    if (Math.abs(stated - pascal) <= AGREES) {
      return Optional.empty();
    }
    return Optional.of(
        new Remark(
            Remark.Kind.BAROMETER,
            0,
            0,
            String.format(
                Locale.ROOT,
                "the stated barometer, %.1f kPa, is %.1f kPa %s the log's own, %.1f kPa (%s); one of"
                    + " the two is wrong; pressures of the log are reckoned by its own",
                stated / 1e3,
                Math.abs(stated - pascal) / 1e3,
                stated > pascal ? "above" : "below",
                pascal / 1e3,
                from)));
  }
}
