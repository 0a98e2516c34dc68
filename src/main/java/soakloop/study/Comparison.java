package soakloop.study;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.reading.LogReading;

/**
 * A logged run laid over a simulated one.
 *
 * @param reading the log and what it shows
 * @param offset log time at the session's time zero, s
 * @param charge the charge sensor over all that the log covers, if it is logged
 * @param whole for each compared signal, the misfit over the whole run
 * @param residuals for each compared signal, modelled less logged at each true update
 */
public record Comparison(
    LogReading reading,
    double offset,
    Optional<WholeRun> charge,
    Map<Signal, Misfit> whole,
    Map<Signal, List<Residual>> residuals) {
  /**
   * One compared reading.
   *
   * @param time session time, s
   * @param logged SI
   * @param modelled SI
   */
  public record Residual(double time, double logged, double modelled) {
    /** Returns modelled less logged. */
    public double value() {
      return modelled - logged;
    }
  }

  /** Copies the collections; both maps then go in the order of {@link Signal}. */
  public Comparison {
    whole = ordered(whole);
    Map<Signal, List<Residual>> copies = new EnumMap<>(Signal.class);
    residuals.forEach((signal, list) -> copies.put(signal, List.copyOf(list)));
    residuals = Collections.unmodifiableMap(copies);
  }

  private static <T> Map<Signal, T> ordered(Map<Signal, T> map) {
    Map<Signal, T> copy = new EnumMap<>(Signal.class);
    copy.putAll(map);
    return Collections.unmodifiableMap(copy);
  }

  /**
   * Returns the misfit of a signal over the whole run.
   *
   * @param signal which
   */
  public Optional<Misfit> misfit(Signal signal) {
    return Optional.ofNullable(whole.get(signal));
  }
}
