package soakloop.fit;

import java.util.List;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * A number that a fitted car is asked for, read off a run with one more pull ({@link NextPull}).
 */
public enum Quantity {
  /** Highest reading of the charge sensor from the next pull's start on; K. */
  NEXT_PEAK(
      "next-peak", "highest charge sensor reading of the next pull", Dimension.TEMPERATURE, true) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      double peak = Double.NEGATIVE_INFINITY;
      for (int i = trace.firstFrom(pull.start()); i < trace.size(); i++) {
        peak = Math.max(peak, trace.value(Channel.SENSOR, i));
      }
      return peak;
    }
  },
  /** Reading of the charge sensor where the next pull is counted; K. */
  NEXT_END(
      "next-end", "charge sensor at the next pull's counted end", Dimension.TEMPERATURE, true) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      return trace.at(Channel.SENSOR, pull.countedAt());
    }
  },
  /** Coolant entering the core as the next pull starts; K. */
  NEXT_COOLANT(
      "next-coolant",
      "coolant into the core as the next pull starts",
      Dimension.TEMPERATURE,
      false) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      return trace.at(Channel.CORE_COOLANT_IN, pull.start());
    }
  },
  /** Heat that the core takes at the counted end, were the air 100 K above the coolant; W. */
  CORE_DUTY(
      "core-duty",
      "what the core takes at a pull's counted end from air 100 K above the coolant into it",
      Dimension.POWER,
      false) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      double at = pull.countedAt();
      double difference = trace.at(Channel.CORE_AIR_IN, at) - trace.at(Channel.CORE_COOLANT_IN, at);
      return STATED_DIFFERENCE * trace.at(Channel.HEAT_CORE, at) / difference;
    }
  },
  /**
   * What the core takes at the counted end of what there is to take, were the air to leave it as
   * cold as the coolant enters; a share [-].
   */
  CORE_SHARE(
      "core-share",
      "what the core takes at a pull's counted end of all that its coolant could take",
      Dimension.FRACTION,
      false) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      double at = pull.countedAt();
      double hot = trace.at(Channel.CORE_AIR_IN, at);
      return (hot - trace.at(Channel.CORE_AIR_OUT, at))
          / (hot - trace.at(Channel.CORE_COOLANT_IN, at));
    }
  },
  /** Coolant flow at the next pull's counted end; m3/s. */
  LOOP_FLOW("loop-flow", "coolant flow with the pump on", Dimension.VOLUME_FLOW, false) {
    @Override
    double of(Trace trace, Trace.Span pull) {
      return trace.at(Channel.COOLANT_FLOW, pull.countedAt());
    }
  };

  /** The air above the coolant that {@link #CORE_DUTY} is stated for, K. */
  public static final double STATED_DIFFERENCE = 100;

  private final String key;
  private final String label;
  private final Dimension dimension;
  private final boolean ofSensor;

  Quantity(String key, String label, Dimension dimension, boolean ofSensor) {
    this.key = key;
    this.label = label;
    this.dimension = dimension;
    this.ofSensor = ofSensor;
  }

  /** Returns the word by which it is asked for. */
  public String key() {
    return key;
  }

  /** Returns all words, such as "next-peak, core-duty". */
  public static String keys() {
    return String.join(", ", java.util.Arrays.stream(values()).map(Quantity::key).toList());
  }

  /**
   * Finds one by its word.
   *
   * @param key such as {@code next-peak}
   */
  public static java.util.Optional<Quantity> named(String key) {
    return java.util.Arrays.stream(values()).filter(q -> q.key.equals(key.strip())).findFirst();
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns whether it is a reading of the charge sensor, with all that may be wrong with it. */
  boolean isOfSensor() {
    return ofSensor;
  }

  /** Returns its value from a run's last pull, SI. */
  double of(Trace trace) {
    List<Trace.Span> pulls = trace.pulls();
    return of(trace, pulls.get(pulls.size() - 1));
  }

  abstract double of(Trace trace, Trace.Span pull);
}
