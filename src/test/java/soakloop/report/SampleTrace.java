package soakloop.report;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.session.Inputs;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;

/** Runs a few lumps by small Euler steps: enough to give charts their shapes. */
record SampleTrace(Trace trace) {
  private static final double STEP = 0.02;
  private static final int SAMPLE = 10;
  private static final double DAY = 290.15;
  private static final double ENGINE = 361.15;
  private static final double FLOW = 1600;

  static SampleTrace run(Session session, OptionalDouble limit) {
    int steps = (int) Math.round(session.endTime() / STEP);
    int size = steps / SAMPLE + 1;
    double[] time = new double[size];
    Map<Channel, double[]> columns = SampleOutcome.columns(size);
    List<Trace.Span> spans = spans(session);
    List<Trace.Event> events = new ArrayList<>();
    Inputs in = new Inputs();
    double tank = 297.15;
    double core = 297.5;
    double metal = 298;
    double plenum = 318;
    double blowerCase = 315;
    double sensor = 302.15;
    double[] heat = new double[6];
    for (int i = 0; i <= steps; i++) {
      double t = i * STEP;
      Trace.Span span = at(spans, t);
      span.phase().drive().at(t - span.start(), in);
      boolean pull = span.phase().kind() == Phase.Kind.PULL;
      double air = pull ? 0.0061 * in.engineSpeed : in.engineSpeed > 0 ? 0.02 : 0;
      double blower = DAY + 6 + (pull ? 80 + 0.25 * (in.engineSpeed - 43) : 8);
      double into = blower - 0.08 * (blower - blowerCase);
      double out = into - 0.93 * (into - metal) * (1 - 0.18 * air / 0.6);
      double charge = out + (plenum - out) * 0.1 / (1 + 4 * air);
      double toCore = air * 1006 * (into - out);
      double toDucts = air * 1006 * (blower - into + out - charge);
      double engine = 16 * (ENGINE - plenum);
      double underhood = 7 * (310 - tank) + 4 * (325 - blowerCase);
      double ambient = 95 * (tank - DAY);
      if (i % SAMPLE == 0) {
        int row = i / SAMPLE;
        time[row] = t;
        double tankIn = core - ambient / FLOW;
        Map<Channel, Double> now = new EnumMap<>(Channel.class);
        now.put(Channel.ENGINE_SPEED, in.engineSpeed);
        now.put(Channel.ROAD_SPEED, in.roadSpeed);
        now.put(Channel.BOOST, pull ? 85e3 : in.engineSpeed > 0 ? -60e3 : 0);
        now.put(Channel.AIR_MASS_FLOW, air);
        now.put(Channel.INLET_AIR, DAY + 6);
        now.put(Channel.BLOWER_OUTLET, blower);
        now.put(
            Channel.BOOST_BEFORE_CORE,
            26e3 * air * air + (pull ? 85e3 : in.engineSpeed > 0 ? -60e3 : 0));
        now.put(Channel.PRESSURE_RATIO, pull ? 1.85 : 1);
        now.put(Channel.BLOWER_POWER, pull ? 30e3 : 0);
        now.put(Channel.CORE_LOSS, 26e3 * air * air);
        now.put(Channel.CONDENSATE, 0.0);
        now.put(Channel.CORE_AIR_IN, into);
        now.put(Channel.CORE_AIR_OUT, out);
        now.put(Channel.CHARGE, charge);
        now.put(Channel.SENSOR, sensor);
        now.put(Channel.CORE_COOLANT_IN, tank);
        now.put(Channel.CORE_COOLANT_OUT, core);
        now.put(Channel.CORE_METAL, metal);
        now.put(Channel.RESERVOIR, tank);
        now.put(Channel.EXCHANGER_COOLANT_IN, core);
        now.put(Channel.EXCHANGER_COOLANT_OUT, tankIn);
        now.put(Channel.PLENUM_METAL, plenum);
        now.put(Channel.BLOWER_CASE, blowerCase);
        now.put(Channel.ENGINE_COOLANT, ENGINE);
        now.put(Channel.COOLANT_FLOW, 4e-4);
        now.put(Channel.FACE_SPEED, 3.0);
        now.put(Channel.HEAT_CORE, toCore);
        now.put(Channel.HEAT_DUCTS, toDucts);
        now.put(Channel.HEAT_ENGINE, engine);
        now.put(Channel.HEAT_PUMP, 60.0);
        now.put(Channel.HEAT_UNDERHOOD, underhood);
        now.put(Channel.HEAT_AMBIENT, ambient);
        now.put(Channel.ICE_LEFT, Double.NaN);
        now.forEach((channel, value) -> requireNonNull(columns.get(channel))[row] = value);
      }
      double before = sensor;
      sensor +=
          STEP * (charge - sensor) / 2 * (0.15 + 0.85 * Math.sqrt(air / 0.4))
              + STEP * (plenum - sensor) * 0.004;
      if (limit.isPresent() && (before > limit.getAsDouble()) != (sensor > limit.getAsDouble())) {
        events.add(
            new Trace.Event(
                t,
                sensor > before
                    ? Trace.Event.Kind.LIMIT_EXCEEDED
                    : Trace.Event.Kind.LIMIT_REGAINED));
      }
      double[] flows = {toCore, toDucts, engine, 60, underhood, ambient};
      for (int k = 0; k < 6; k++) {
        heat[k] += STEP * flows[k];
      }
      double carried = FLOW * (tank - core);
      double passed = 6500 * (metal - core);
      metal += STEP * (toCore - passed) / 3200;
      core += STEP * (passed + carried + 60) / 3300;
      tank += STEP * (-carried - ambient + 7 * (310 - tank)) / 22000;
      plenum += STEP * (engine + 0.8 * air * 1006 * (out - charge) * -1) / 9000;
      blowerCase += STEP * (air * 1006 * (blower - into) + 4 * (325 - blowerCase)) / 6000;
    }
    double net = heat[0] + heat[1] + heat[2] + heat[3] + heat[4] - heat[5];
    EnergyLedger ledger =
        new EnergyLedger(
            heat[0],
            heat[1],
            heat[2],
            heat[3],
            heat[4],
            heat[5],
            0,
            0.55 * net,
            0.06 * net,
            0.05 * net,
            0.34 * net,
            0,
            2 * (heat[0] + heat[5]));
    return new SampleTrace(
        new Trace(time, columns, spans, events, ledger, new Trace.Effort(60, 2000, 14000)));
  }

  /** The invented log: whole degrees, ten rows a second, a little off the model. */
  static Log log(Trace trace, Session session) {
    List<Trace.Span> spans = spans(session);
    Inputs in = new Inputs();
    int size = (int) (trace.time(trace.size() - 1) * 10) + 1;
    double[] time = new double[size];
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    double[] speed = new double[size];
    double[] boost = new double[size];
    double[] charge = new double[size];
    double[] coolant = new double[size];
    Random random = new Random(7);
    for (int i = 0; i < size; i++) {
      time[i] = i / 10.0;
      double drift = 1.5 * Math.sin(time[i] / 90) + 0.3 * random.nextGaussian();
      Trace.Span span = at(spans, time[i]);
      span.phase().drive().at(time[i] - span.start(), in);
      speed[i] = Math.round(in.engineSpeed * 60) / 60.0;
      boost[i] = trace.at(Channel.BOOST, time[i]) + 800 * random.nextGaussian();
      charge[i] = whole(trace.at(Channel.SENSOR, Math.max(0, time[i] - 0.4)) + drift);
      coolant[i] =
          whole(trace.at(Channel.CORE_COOLANT_IN, time[i]) + 0.8 + 0.2 * random.nextGaussian());
    }
    values.put(Signal.ENGINE_SPEED, speed);
    values.put(Signal.BOOST, boost);
    values.put(Signal.CHARGE_TEMPERATURE, charge);
    values.put(Signal.CORE_COOLANT_IN, coolant);
    return new Log("cool-morning.csv", time, values, List.of(), List.of("invented"));
  }

  private static double whole(double kelvin) {
    return Math.round(kelvin - 273.15) + 273.15;
  }

  private static List<Trace.Span> spans(Session session) {
    List<Trace.Span> spans = new ArrayList<>();
    double t = 0;
    for (Phase phase : session.phases()) {
      spans.add(new Trace.Span(phase, t, t + phase.duration()));
      t += phase.duration();
    }
    return spans;
  }

  private static Trace.Span at(List<Trace.Span> spans, double t) {
    return spans.stream()
        .filter(s -> t < s.end())
        .findFirst()
        .orElseGet(() -> spans.get(spans.size() - 1));
  }
}
