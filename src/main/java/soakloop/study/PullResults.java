package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** Reads what each pull gave off a trace and, where there is one, off the log beside it. */
public final class PullResults {
  private final Trace trace;
  private final OptionalDouble limit;

  /** The times that a pull's readings are taken at, s. */
  private record Window(double start, double counted, double end, double next) {
    Window countedAt(double time) {
      return new Window(start, time, end, next);
    }

    Window upTo(double time) {
      return new Window(start, counted, end, time);
    }
  }

  private PullResults(Trace trace, OptionalDouble limit) {
    this.trace = trace;
    this.limit = limit;
  }

  /**
   * Reads all pulls. Values are straight between the trace's samples; so are the log's between its
   * true updates of the signal.
   *
   * <p>A logged pull has its own counted point, where the logged engine speed first rises to the
   * one that the simulated pull is counted at; if it does not, or is not logged, it is counted at
   * the same time. A log stands beside a pull only if it has charge temperatures from the pull's
   * start to its end, one update more or less, and at least two in between.
   *
   * @param trace the simulated run
   * @param limit charge temperature that must not be passed, K
   * @param logged the log with its place in time
   * @return one result for each pull, in order
   */
  public static List<PullResult> of(
      Trace trace, OptionalDouble limit, Optional<Scenario.Logged> logged) {
    PullResults results = new PullResults(trace, limit);
    List<Trace.Span> pulls = trace.pulls();
    List<PullResult> all = new ArrayList<>();
    for (int i = 0; i < pulls.size(); i++) {
      Trace.Span pull = pulls.get(i);
      double next = i + 1 < pulls.size() ? pulls.get(i + 1).start() : trace.time(trace.size() - 1);
      next = Math.min(next, engineStops(trace, pull.end()));
      all.add(
          results.read(
              pull,
              new Window(pull.start(), pull.countedAt(), pull.end(), Math.max(next, pull.end())),
              logged));
    }
    return List.copyOf(all);
  }

  /** Returns when the engine is next switched off: what a soaked sensor shows then is no charge. */
  private static double engineStops(Trace trace, double after) {
    return trace.spans().stream()
        .filter(span -> span.start() >= after && span.phase().drive() instanceof Drive.EngineOff)
        .mapToDouble(Trace.Span::start)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private PullResult read(Trace.Span pull, Window window, Optional<Scenario.Logged> logged) {
    Polyline coreInlet = after(Channel.CORE_COOLANT_IN, window);
    double countedTo = during(Channel.ENGINE_SPEED, window.start(), window.counted()).last();
    return new PullResult(
        pull.phase().name(),
        window.start(),
        window.end(),
        window.counted(),
        countedTo,
        readings(Polyline.of(trace, Channel.CHARGE), window),
        readings(Polyline.of(trace, Channel.SENSOR), window),
        new PullResult.CoolantReadings(
            coreInlet.first(),
            coreInlet.highest(),
            after(Channel.CORE_COOLANT_OUT, window).highest()),
        during(Channel.AIR_MASS_FLOW, window.start(), window.end()).highest(),
        during(Channel.HEAT_CORE, window.start(), window.end()).integral(),
        during(Channel.BOOST, window.start(), window.end()).highest(),
        chargeLoss(window),
        logged.flatMap(log -> beside(log, window, countedTo)));
  }

  private Optional<PullResult.ChargeLoss> chargeLoss(Window window) {
    double peak = 0;
    double before = Double.NEGATIVE_INFINITY;
    for (int i = trace.firstFrom(window.start());
        i < trace.size() && trace.time(i) <= window.end();
        i++) {
      double loss = trace.value(Channel.CORE_LOSS, i);
      if (!Double.isFinite(loss)) {
        return Optional.empty();
      }
      peak = Math.max(peak, loss);
      before = Math.max(before, trace.value(Channel.BOOST, i) + loss);
    }
    return before > Double.NEGATIVE_INFINITY
        ? Optional.of(new PullResult.ChargeLoss(peak, before))
        : Optional.empty();
  }

  private Polyline during(Channel channel, double from, double to) {
    return Polyline.of(trace, channel).between(from, to);
  }

  private Polyline after(Channel channel, Window window) {
    return during(channel, window.start(), window.next());
  }

  private Readings readings(Polyline temperature, Window window) {
    Polyline toNext = temperature.between(window.start(), window.next());
    double start = toNext.first();
    double end = temperature.between(window.start(), window.counted()).last();
    return new Readings(
        start,
        end,
        temperature.between(window.start(), window.end()).highest(),
        toNext.highest(),
        end - start,
        limit.isPresent() ? toNext.timeAbove(limit.getAsDouble()) : 0);
  }

  private Optional<PullResult.Logged> beside(
      Scenario.Logged logged, Window window, double countedTo) {
    Optional<Polyline> charge =
        Polyline.of(logged, Signal.CHARGE_TEMPERATURE).filter(line -> covers(line, window));
    if (charge.isEmpty()) {
      return Optional.empty();
    }
    double counted =
        Polyline.of(logged, Signal.ENGINE_SPEED)
            .map(speed -> speed.between(window.start(), window.end()).risesTo(countedTo))
            .orElse(OptionalDouble.empty())
            .orElse(window.counted());
    double coveredTo = Math.min(window.next(), charge.get().endTime());
    Window own = window.countedAt(counted).upTo(Math.max(coveredTo, window.end()));
    List<Comparison.Residual> residuals =
        Comparisons.residuals(
            trace, logged, Signal.CHARGE_TEMPERATURE, window.start(), window.end());
    if (residuals.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PullResult.Logged(
            counted,
            coveredTo,
            readings(charge.get(), own),
            coreInletPeak(logged, own),
            Misfit.of(residuals)));
  }

  private static boolean covers(Polyline line, Window window) {
    double slack = line.spacing();
    return line.startTime() <= window.start() + slack
        && line.endTime() >= window.end() - slack
        && line.points(window.start(), window.end()) >= 2;
  }

  private static OptionalDouble coreInletPeak(Scenario.Logged logged, Window window) {
    return Polyline.of(logged, Signal.CORE_COOLANT_IN)
        .filter(line -> line.points(window.start(), window.next()) > 0)
        .map(
            line ->
                OptionalDouble.of(
                    line.between(
                            Math.max(window.start(), line.startTime()),
                            Math.min(window.next(), line.endTime()))
                        .highest()))
        .orElse(OptionalDouble.empty());
  }
}
