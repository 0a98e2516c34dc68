package soakloop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.reading.LogOptions;
import soakloop.reading.LogStudy;
import soakloop.scenario.Scenario;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;

/** Traces and logs put together by hand, all of straight lines. */
final class HandMade {
  private final double[] time;
  private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
  private final List<Trace.Span> spans = new ArrayList<>();

  /** A trace with samples at these times; every channel is level at 300 until it is set. */
  HandMade(double... time) {
    this.time = time;
    for (Channel channel : Channel.values()) {
      double[] level = new double[time.length];
      Arrays.fill(level, 300);
      columns.put(channel, level);
    }
  }

  HandMade with(Channel channel, double... values) {
    columns.put(channel, values);
    return this;
  }

  HandMade pull(String name, double start, double end, OptionalDouble countedAfter) {
    Drive drive = new Drive.FullLoad(Curve.constant(100), Curve.constant(0));
    return span(
        new Phase(name, Phase.Kind.PULL, end - start, drive, Cooling.ALL, countedAfter),
        start,
        end);
  }

  HandMade idle(double start, double end) {
    return span(
        new Phase(
            "wait",
            Phase.Kind.WAIT,
            end - start,
            new Drive.Idle(14),
            Cooling.ALL,
            OptionalDouble.empty()),
        start,
        end);
  }

  private HandMade span(Phase phase, double start, double end) {
    spans.add(new Trace.Span(phase, start, end));
    return this;
  }

  Trace trace() {
    EnergyLedger nothing = new EnergyLedger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    return new Trace(time, columns, spans, List.of(), nothing, new Trace.Effort(1, 1, 1));
  }

  static Scenario.Logged logged(
      double startsAt, double[] sessionTime, Map<Signal, double[]> values) {
    double[] logTime = Arrays.stream(sessionTime).map(t -> t + startsAt).toArray();
    return new Scenario.Logged(
        LogStudy.of(
            new Log("invented.csv", logTime, values, List.of(), List.of()), LogOptions.DEFAULTS),
        startsAt);
  }

  static double[] row(double... values) {
    return values;
  }
}
