package soakloop.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;

/** What a log says of the engine's load: throttle, boost, air per turn, power at the wheels. */
final class Load {
  /** A throttle this far open is wide open, of the widest in the log, and at the least [-]. */
  private static final double WIDE = 0.8;

  private static final double WIDE_AT_LEAST = 0.6;

  /**
   * Boost, of the highest in the log, that part load does not reach [-], and at the least, Pa. A
   * bypassed blower makes a few kPa on the road.
   */
  private static final double BOOSTED = 0.4;

  private static final double BOOSTED_AT_LEAST = 15e3;

  /** The same for air per turn and for power [-]: both fall off towards low speeds. */
  private static final double FULL = 0.55;

  private static final double POWERED = 0.25;
  private static final double STANDARD_ATMOSPHERE = 101_325;

  private final List<Evidence> evidence = new ArrayList<>();
  private OptionalDouble promptSpacing = OptionalDouble.empty();

  /**
   * One channel that tells load.
   *
   * @param updates its values
   * @param threshold full load lies above
   * @param prompt whether it follows the pedal at once
   */
  record Evidence(Updates updates, double threshold, boolean prompt) {
    double share(double from, double to) {
      Updates inside = updates.between(from, to);
      if (inside.size() < 2) {
        return updates.near((from + to) / 2, to - from) >= threshold ? 1 : 0;
      }
      return Arrays.stream(inside.values()).filter(v -> v >= threshold).count()
          / (double) inside.size();
    }
  }

  private Load() {}

  static Load of(Channels channels, Updates speed) {
    Load load = new Load();
    Updates throttle = channels.updates(Signal.THROTTLE);
    if (!throttle.isEmpty()) {
      load.add(throttle, Math.max(WIDE_AT_LEAST, WIDE * top(throttle)), true);
      load.promptSpacing =
          throttle.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(throttle.spacing());
    }
    boost(channels)
        .filter(boost -> top(boost) > BOOSTED_AT_LEAST)
        .ifPresent(
            boost -> load.add(boost, Math.max(BOOSTED_AT_LEAST, BOOSTED * top(boost)), false));
    Updates perTurn = perTurn(channels.updates(Signal.AIR_MASS_FLOW), speed);
    if (!perTurn.isEmpty()) {
      load.add(perTurn, FULL * top(perTurn), false);
    }
    Updates power = channels.updates(Signal.WHEEL_POWER);
    if (!power.isEmpty() && load.evidence.isEmpty()) {
      load.add(power, POWERED * top(power), false);
    }
    return load;
  }

  /** Gauge pressure after the core, else before it; absolute ones less the barometer. */
  static Optional<Updates> boost(Channels channels) {
    Updates barometer = channels.updates(Signal.BAROMETER);
    double outside = barometer.isEmpty() ? STANDARD_ATMOSPHERE : barometer.mean();
    List<Updates> inOrder =
        List.of(
            channels.updates(Signal.BOOST),
            channels.updates(Signal.MANIFOLD_PRESSURE).scaled(1, -outside),
            channels.updates(Signal.BOOST_BEFORE_CORE),
            channels.updates(Signal.PRESSURE_BEFORE_CORE).scaled(1, -outside));
    return inOrder.stream().filter(u -> !u.isEmpty()).findFirst();
  }

  private static Updates perTurn(Updates flow, Updates speed) {
    double slow = 1500.0 / 60;
    Updates turning = flow.where(i -> speed.near(flow.time(i), 1) > slow);
    double[] value = new double[turning.size()];
    for (int i = 0; i < value.length; i++) {
      value[i] = turning.value(i) / speed.near(turning.time(i), 1);
    }
    return Updates.of(turning.times(), value);
  }

  private void add(Updates updates, double threshold, boolean prompt) {
    evidence.add(new Evidence(updates, threshold, prompt));
  }

  /** The highest value that is not a single one. */
  private static double top(Updates updates) {
    return Updates.of(updates.times(), Numbers.middleOfThree(updates.values())).highest();
  }

  /** Whether the log tells load at all. */
  boolean known() {
    return !evidence.isEmpty();
  }

  /**
   * Whether a span is under full load, as every channel says that tells. Throttle must be open for
   * half of it at the least; boost and power may come late.
   */
  boolean full(double from, double to) {
    return evidence.stream().allMatch(e -> e.share(from, to) >= (e.prompt ? 0.5 : 0.3));
  }

  /** The spans under full load by the channel that tells it most promptly. */
  List<Loaded> spans() {
    if (evidence.isEmpty()) {
      return List.of();
    }
    Evidence first = evidence.get(0);
    Updates updates = first.updates;
    List<Loaded> spans = new ArrayList<>();
    double on = Double.NaN;
    for (int i = 0; i < updates.size(); i++) {
      boolean loaded = updates.value(i) >= first.threshold;
      if (loaded && Double.isNaN(on)) {
        on = crossing(first, i);
      } else if (!loaded && !Double.isNaN(on)) {
        spans.add(new Loaded(on, crossing(first, i)));
        on = Double.NaN;
      }
    }
    if (!Double.isNaN(on)) {
      spans.add(new Loaded(on, updates.time(updates.size() - 1)));
    }
    return spans;
  }

  /** A span under full load, s. */
  record Loaded(double from, double to) {}

  /** Between two updates a pedal may move at any moment: the middle is the least wrong. */
  private static double crossing(Evidence evidence, int i) {
    Updates u = evidence.updates;
    return i == 0 ? u.time(0) : (u.time(i - 1) + u.time(i)) / 2;
  }

  /** Time between updates of a channel that follows the pedal at once, s; empty without one. */
  OptionalDouble promptSpacing() {
    return promptSpacing;
  }
}
