package soakloop.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soakloop.log.Signal;
import soakloop.reading.Updates;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** Lays logged runs over simulated ones. */
public final class Comparisons {
  /** Signals that the model predicts; the others of a log only drive it. */
  public static final Set<Signal> COMPARED =
      Collections.unmodifiableSet(
          EnumSet.of(
              Signal.CHARGE_TEMPERATURE,
              Signal.CORE_AIR_IN,
              Signal.CORE_COOLANT_IN,
              Signal.CORE_COOLANT_OUT,
              Signal.RESERVOIR,
              Signal.INLET_AIR));

  private Comparisons() {}

  /**
   * Lays a log over a trace. Each signal is compared where it was really measured, held rows left
   * out, from the session's time zero (what settles before it is not part of the run) to the
   * trace's end; the trace is taken straight between its samples. A signal without a value there,
   * logged or modelled, is left out.
   *
   * @param trace the simulated run
   * @param logged the log with its place in time
   * @param replayed signals that drove the run, which would only be compared with themselves
   * @param limit charge temperature that must not be passed, K
   */
  public static Comparison of(
      Trace trace, Scenario.Logged logged, Set<Signal> replayed, OptionalDouble limit) {
    Map<Signal, Misfit> whole = new EnumMap<>(Signal.class);
    Map<Signal, List<Comparison.Residual>> residuals = new EnumMap<>(Signal.class);
    for (Signal signal : COMPARED) {
      if (replayed.contains(signal)) {
        continue;
      }
      List<Comparison.Residual> found =
          residuals(trace, logged, signal, 0, trace.time(trace.size() - 1));
      if (!found.isEmpty()) {
        residuals.put(signal, found);
        whole.put(signal, Misfit.of(found));
      }
    }
    return new Comparison(
        logged.reading(), logged.startsAt(), WholeRun.of(trace, logged, limit), whole, residuals);
  }

  /** Residuals of one signal at its true updates from one session time to another, both counted. */
  static List<Comparison.Residual> residuals(
      Trace trace, Scenario.Logged logged, Signal signal, double from, double to) {
    Optional<Channel> channel = signal.channel();
    if (channel.isEmpty() || trace.size() == 0) {
      return List.of();
    }
    Updates measured = logged.reading().usable(signal);
    double first = Math.max(from, trace.time(0));
    double last = Math.min(to, trace.time(trace.size() - 1));
    List<Comparison.Residual> residuals = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      double time = measured.time(i) - logged.startsAt();
      if (!(time >= first && time <= last)) {
        continue;
      }
      double modelled = trace.at(channel.get(), time);
      if (!Double.isNaN(modelled)) {
        residuals.add(new Comparison.Residual(time, measured.value(i), modelled));
      }
    }
    return List.copyOf(residuals);
  }
}
