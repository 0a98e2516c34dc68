package soakloop.simulate;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a simulation gave: every channel over time, the phases it went through, what happened, and
 * the energy ledger.
 */
public final class Trace {
  private final double[] time;
  private final Map<Channel, double[]> values;
  private final List<Span> spans;
  private final List<Event> events;
  private final EnergyLedger energy;
  private final Effort effort;

  /**
   * A phase as it ran.
   *
   * @param phase the phase
   * @param start s
   * @param end s
   */
  public record Span(soakloop.session.Phase phase, double start, double end) {
    /** Returns the time at which a pull or pass is counted: its end if nothing else is said. */
    public double countedAt() {
      return start + phase.countedAt().orElse(end - start);
    }
  }

  /**
   * Something that happened at a located instant.
   *
   * @param time s
   * @param kind what
   */
  public record Event(double time, Kind kind) {
    /** What can happen. */
    public enum Kind {
      /** The sensor's reading rose through the limit, or was above it where the engine started. */
      LIMIT_EXCEEDED,
      /** The sensor's reading fell through the charge temperature limit, engine running. */
      LIMIT_REGAINED,
      /** The thermostat switched the car fan on. */
      FAN_ON,
      /** The thermostat switched the car fan off. */
      FAN_OFF,
      /** The last of the ice in the tank has melted. */
      ICE_GONE
    }
  }

  /**
   * What the run took.
   *
   * @param states length of the state vector
   * @param steps accepted integration steps
   * @param evaluations derivative evaluations
   */
  public record Effort(int states, long steps, long evaluations) {}

  /**
   * Makes a trace.
   *
   * @param time sample times, s, never falling
   * @param values for each channel as many values, SI
   * @param spans phases as they ran, in order
   * @param events in order
   * @param energy the ledger of the counted time
   * @param effort what the run took
   */
  public Trace(
      double[] time,
      Map<Channel, double[]> values,
      List<Span> spans,
      List<Event> events,
      EnergyLedger energy,
      Effort effort) {
    this.time = time.clone();
    this.values = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      double[] column = values.get(channel);
      if (column == null || column.length != time.length) {
        throw new IllegalArgumentException("no full column for " + channel);
      }
      this.values.put(channel, column.clone());
    }
    this.spans = List.copyOf(spans);
    this.events = List.copyOf(events);
    this.energy = energy;
    this.effort = effort;
  }

  /** Returns the number of samples. */
  public int size() {
    return time.length;
  }

  /**
   * Returns the time of a sample, s.
   *
   * @param i index of the sample
   */
  public double time(int i) {
    return time[i];
  }

  /**
   * Returns a channel's value in a sample, SI.
   *
   * @param channel which
   * @param i index of the sample
   */
  public double value(Channel channel, int i) {
    return column(channel)[i];
  }

  /**
   * Returns a channel at any time, straight between samples, SI.
   *
   * @param channel which
   * @param at s
   */
  public double at(Channel channel, double at) {
    double[] column = column(channel);
    int found = Arrays.binarySearch(time, at);
    if (found >= 0) {
      return column[found];
    }
    int after = -found - 1;
    if (after == 0) {
      return column[0];
    }
    if (after == time.length) {
      return column[after - 1];
    }
    double share = (at - time[after - 1]) / (time[after] - time[after - 1]);
    return column[after - 1] + share * (column[after] - column[after - 1]);
  }

  /** Returns all sample times, s. */
  public double[] times() {
    return time.clone();
  }

  /**
   * Returns all values of a channel, SI.
   *
   * @param channel which
   */
  public double[] values(Channel channel) {
    return column(channel).clone();
  }

  /**
   * Returns the index of the first sample at or after a time; {@link #size()} if there is none.
   *
   * @param at s
   */
  public int firstFrom(double at) {
    int found = Arrays.binarySearch(time, at);
    if (found < 0) {
      return -found - 1;
    }
    while (found > 0 && time[found - 1] == at) {
      found--;
    }
    return found;
  }

  /** Returns the phases as they ran. */
  public List<Span> spans() {
    return spans;
  }

  /** Returns the pulls and passes as they ran. */
  public List<Span> pulls() {
    return spans.stream().filter(s -> s.phase().kind().isCounted()).toList();
  }

  /** Returns what happened. */
  public List<Event> events() {
    return events;
  }

  /** Returns the energy ledger. */
  public EnergyLedger energy() {
    return energy;
  }

  /** Returns what the run took. */
  public Effort effort() {
    return effort;
  }

  private double[] column(Channel channel) {
    double[] column = values.get(channel);
    if (column == null) {
      throw new IllegalStateException("no column for " + channel);
    }
    return column;
  }
}
