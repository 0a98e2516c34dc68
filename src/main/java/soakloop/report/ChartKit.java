package soakloop.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.reading.Updates;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Comparison;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * What the charts share: an outcome's curves in shown units.
 *
 * @param outcome what is drawn
 * @param display how numbers are shown
 */
record ChartKit(Outcome outcome, Display display) {
  /** Pixels of a chart's width to each logged point. */
  private static final int POINT_EVERY = 3;

  Trace trace() {
    return outcome.trace();
  }

  TimeScale time() {
    return TimeScale.of(trace());
  }

  /** Returns a unit's symbol in square brackets. */
  String in(Dimension dimension) {
    return " [" + display.symbol(dimension) + "]";
  }

  double shown(double si, Dimension dimension) {
    return display.units().unit(dimension).fromSi(si);
  }

  double[] shown(double[] si, Dimension dimension) {
    Unit unit = display.units().unit(dimension);
    return Arrays.stream(si).map(unit::fromSi).toArray();
  }

  /** Returns a channel over the session's time. */
  double[][] line(Channel channel) {
    return time().line(trace(), shown(trace().values(channel), channel.dimension()));
  }

  /** Returns a channel of the charge air, broken where no air moves. */
  double[][] airLine(Channel channel) {
    double[] values = shown(trace().values(channel), channel.dimension());
    for (int i = 0; i < values.length; i++) {
      if (!(trace().value(Channel.AIR_MASS_FLOW, i) > 0)) {
        values[i] = Double.NaN;
      }
    }
    return time().line(trace(), values);
  }

  /** Returns the phases with the engine off, from the first time shown. */
  List<Trace.Span> engineOff() {
    return trace().spans().stream()
        .filter(s -> s.phase().drive() instanceof Drive.EngineOff && s.end() > time().from())
        .toList();
  }

  /** Returns measured points over the session's time; none if the log lacks the signal. */
  double[][] logged(Signal signal, ChartStyle style) {
    Optional<Comparison> beside = outcome.comparison();
    if (beside.isEmpty()) {
      return new double[2][0];
    }
    Updates measured = beside.get().reading().updates(signal);
    double offset = beside.get().offset();
    double[] x = Arrays.stream(measured.times()).map(t -> time().of(t - offset)).toArray();
    double[] y = shown(measured.values(), signal.dimension());
    return thinned(x, y, style);
  }

  /** Returns modelled less logged over the session's time. */
  double[][] residuals(Signal signal, ChartStyle style) {
    List<Comparison.Residual> all =
        outcome
            .comparison()
            .map(c -> c.residuals().getOrDefault(signal, List.of()))
            .orElse(List.of());
    double[] x = all.stream().mapToDouble(r -> time().of(r.time())).toArray();
    double[] y =
        all.stream().mapToDouble(r -> shown(r.value(), Dimension.TEMPERATURE_DIFFERENCE)).toArray();
    return thinned(x, y, style);
  }

  /** Shades the pulls and, if wanted, numbers them above. */
  void shadePulls(PanelBuilder panel, boolean named) {
    for (PullResult pull : outcome.pulls()) {
      panel.band(
          time().of(pull.startTime()),
          time().of(pull.endTime()),
          named ? Counted.of(outcome).number(pull.name()) : "");
    }
  }

  /** Draws the charge temperature limit, if there is one. */
  void drawLimit(PanelBuilder panel) {
    outcome
        .scenario()
        .limits()
        .chargeTemperature()
        .ifPresent(
            k ->
                panel.limit(
                    shown(k, Dimension.TEMPERATURE),
                    "limit " + display.temperature(k),
                    degrees(10)));
  }

  /** Returns a degree's worth of Kelvin in shown units, so that scales need not depend on them. */
  double degrees(double kelvin) {
    return shown(kelvin, Dimension.TEMPERATURE_DIFFERENCE);
  }

  private double[][] thinned(double[] x, double[] y, ChartStyle style) {
    return Thinning.points(
        x, y, time().of(time().from()), time().of(time().to()), style.width() / POINT_EVERY);
  }
}
