package soakloop.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.reading.LogOptions;
import soakloop.reading.LogStudy;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Comparison;
import soakloop.study.Misfit;
import soakloop.study.PullResult;
import soakloop.study.Readings;

/** Readings of the made-up trace, taken every tenth of a second. */
final class SampleReadings {
  private static final double TICK = 0.1;

  private SampleReadings() {}

  static PullResult pull(Trace trace, Trace.Span span, Optional<Log> log, OptionalDouble limit) {
    double next = Math.min(span.end() + SampleOutcome.WAIT, trace.time(trace.size() - 1));
    double heat = 0;
    for (double t = span.start(); t < span.end(); t += TICK) {
      heat += TICK * trace.at(Channel.HEAT_CORE, t);
    }
    DoubleUnaryOperator inlet = t -> trace.at(Channel.CORE_COOLANT_IN, t);
    DoubleUnaryOperator outlet = t -> trace.at(Channel.CORE_COOLANT_OUT, t);
    return new PullResult(
        span.phase().name(),
        span.start(),
        span.end(),
        span.countedAt(),
        trace.at(Channel.ENGINE_SPEED, span.countedAt()),
        read(t -> trace.at(Channel.CHARGE, t), span, next, limit),
        read(t -> trace.at(Channel.SENSOR, t), span, next, limit),
        new PullResult.CoolantReadings(
            inlet.applyAsDouble(span.start()),
            peak(inlet, span.start(), next),
            peak(outlet, span.start(), next)),
        0.68,
        heat,
        85e3,
        Optional.of(new PullResult.ChargeLoss(4.2e3, 89.2e3)),
        log.map(l -> logged(l, trace, span, next, limit)));
  }

  static Comparison compare(Trace trace, Log log) {
    Map<Signal, Misfit> whole = new EnumMap<>(Signal.class);
    Map<Signal, List<Comparison.Residual>> residuals = new EnumMap<>(Signal.class);
    for (Signal signal : List.of(Signal.CHARGE_TEMPERATURE, Signal.CORE_COOLANT_IN)) {
      List<Comparison.Residual> all = new ArrayList<>();
      for (int i = 0; i < log.size(); i++) {
        all.add(
            new Comparison.Residual(
                log.time(i),
                log.value(signal, i),
                trace.at(signal.channel().orElseThrow(), log.time(i))));
      }
      residuals.put(signal, all);
      whole.put(signal, misfit(all));
    }
    return new Comparison(
        LogStudy.of(log, LogOptions.DEFAULTS), 0, Optional.empty(), whole, residuals);
  }

  private static PullResult.Logged logged(
      Log log, Trace trace, Trace.Span span, double next, OptionalDouble limit) {
    var curve = log.curve(Signal.CHARGE_TEMPERATURE).orElseThrow();
    List<Comparison.Residual> all = new ArrayList<>();
    for (double t = span.start(); t < span.end(); t += TICK) {
      all.add(new Comparison.Residual(t, curve.at(t), trace.at(Channel.SENSOR, t)));
    }
    double peak = peak(log.curve(Signal.CORE_COOLANT_IN).orElseThrow()::at, span.start(), next);
    return new PullResult.Logged(
        span.countedAt(),
        next,
        read(curve::at, span, next, limit),
        OptionalDouble.of(peak),
        misfit(all));
  }

  private static Misfit misfit(List<Comparison.Residual> all) {
    double sum = 0;
    double squares = 0;
    double largest = 0;
    for (Comparison.Residual r : all) {
      sum += r.value();
      squares += r.value() * r.value();
      largest = Math.abs(r.value()) > Math.abs(largest) ? r.value() : largest;
    }
    return new Misfit(all.size(), sum / all.size(), Math.sqrt(squares / all.size()), largest);
  }

  private static Readings read(
      DoubleUnaryOperator of, Trace.Span span, double next, OptionalDouble limit) {
    double over = 0;
    for (double t = span.start(); t < next; t += TICK) {
      over += limit.isPresent() && of.applyAsDouble(t) > limit.getAsDouble() ? TICK : 0;
    }
    double start = of.applyAsDouble(span.start());
    double end = of.applyAsDouble(span.countedAt());
    return new Readings(
        start,
        end,
        peak(of, span.start(), span.end()),
        peak(of, span.start(), next),
        end - start,
        over);
  }

  private static double peak(DoubleUnaryOperator of, double from, double to) {
    double peak = Double.NEGATIVE_INFINITY;
    for (double t = from; t <= to; t += TICK) {
      peak = Math.max(peak, of.applyAsDouble(t));
    }
    return peak;
  }
}
