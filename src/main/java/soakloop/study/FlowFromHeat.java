package soakloop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import soakloop.fluid.Coolant;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.Estimate;
import soakloop.reading.AirHeat;
import soakloop.reading.AirSide;
import soakloop.reading.CoolantFlow;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;
import soakloop.reading.Updates;
import soakloop.rig.Exchanger;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.Stated;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * The loop's flow as the log's heat balance gives it, beside the model's. Air that the log does not
 * show is the model's, and what the scenario's spreads of day, engine, blower and boost make of it
 * counts in the interval.
 *
 * @param read what the balance gives
 * @param flow mean over its pulls, m3/s
 * @param modelled mean of the model over the same pulls, m3/s
 * @param modelledAir what of the air is the model's; none if the log shows all
 */
public record FlowFromHeat(
    CoolantFlow read, Estimate flow, double modelled, List<Channel> modelledAir) {
  /** Keys that the air's flow and temperature before the core hang on begin with these. */
  private static final List<String> AIR_KEYS = List.of("day.", "engine.", "blower.", "boost");

  /** How well heat capacities of a known mixture are known [-] (own judgement). */
  private static final double COOLANT = 0.02;

  /** How well a core's own heat capacity is known [-] (own judgement). */
  private static final double CORE = 0.25;

  /** How far logged and modelled engine speed may lie apart in a pull that is used [-]. */
  private static final double ALIKE = 0.08;

  /** Keeps the list as it is. */
  public FlowFromHeat {
    modelledAir = List.copyOf(modelledAir);
  }

  /** Returns whether the model's flow lies in the interval. */
  public boolean agrees() {
    return Math.abs(modelled - flow.value()) <= flow.spread();
  }

  /**
   * Reads it.
   *
   * @param scenario that was run
   * @param trace what happened
   * @return empty if there is no log that allows it
   */
  static Optional<FlowFromHeat> of(Scenario scenario, Trace trace) {
    return scenario.logged().flatMap(logged -> of(scenario, logged, trace));
  }

  private static Optional<FlowFromHeat> of(Scenario scenario, Scenario.Logged logged, Trace trace) {
    LogReading reading = logged.reading();
    if (reading.updates(Signal.CORE_COOLANT_IN).isEmpty()
        || reading.updates(Signal.CORE_COOLANT_OUT).isEmpty()
        || reading.usable(Signal.CHARGE_TEMPERATURE).isEmpty()) {
      return Optional.empty();
    }
    List<Pull> pulls = reading.pulls().stream().filter(p -> alike(logged, trace, p)).toList();
    if (pulls.isEmpty()) {
      return Optional.empty();
    }
    List<Channel> modelled = new ArrayList<>();
    if (reading.updates(Signal.AIR_MASS_FLOW).isEmpty()) {
      modelled.add(Channel.AIR_MASS_FLOW);
    }
    if (reading.usable(Signal.CORE_AIR_IN).isEmpty()) {
      modelled.add(Channel.CORE_AIR_IN);
    }
    LogOptions options = options(scenario);
    CoolantFlow read =
        CoolantFlow.of(
            reading.channels(),
            pulls,
            air(scenario, logged, trace, modelled),
            loop(scenario, trace),
            options);
    return read.mean()
        .map(flow -> new FlowFromHeat(read, flow, modelled(read, pulls, logged, trace), modelled));
  }

  /** The model's flow in the pulls that were read. */
  private static double modelled(
      CoolantFlow read, List<Pull> pulls, Scenario.Logged logged, Trace trace) {
    return pulls.stream()
        .filter(p -> read.pulls().stream().anyMatch(o -> o.pull() == p.number()))
        .mapToDouble(
            p -> trace.at(Channel.COOLANT_FLOW, 0.5 * (p.start() + p.end()) - logged.startsAt()))
        .average()
        .orElse(Double.NaN);
  }

  /** Whether the model does in a logged pull what the log does. */
  private static boolean alike(Scenario.Logged logged, Trace trace, Pull pull) {
    Updates speed = logged.reading().updates(Signal.ENGINE_SPEED).between(pull.start(), pull.end());
    double from = pull.start() - logged.startsAt();
    double to = pull.end() - logged.startsAt();
    if (speed.isEmpty() || from < trace.time(0) || to > trace.time(trace.size() - 1)) {
      return false;
    }
    double apart =
        IntStream.range(0, speed.size())
            .mapToDouble(
                i ->
                    Math.abs(
                        trace.at(Channel.ENGINE_SPEED, speed.time(i) - logged.startsAt())
                            - speed.value(i)))
            .average()
            .orElse(Double.NaN);
    return apart <= ALIKE * speed.mean();
  }

  private static LogOptions options(Scenario scenario) {
    LogOptions usual = LogOptions.DEFAULTS;
    Estimate lag =
        scenario.values().stream()
            .filter(v -> v.key().equals("sensor.time-constant"))
            .map(Stated::estimate)
            .findFirst()
            .orElse(usual.airLag());
    return usual.withSensors(lag, usual.coolantLag(), usual.sensorBias());
  }

  private static CoolantFlow.Loop loop(Scenario scenario, Trace trace) {
    Coolant coolant = scenario.rig().coolant();
    double t = trace.value(Channel.CORE_COOLANT_IN, trace.size() / 2);
    double perVolume = coolant.density(t) * coolant.heatCapacity(t);
    Exchanger core = scenario.rig().loop().core().exchanger();
    double capacity = core.metalHeatCapacity() + core.coolantVolume() * perVolume;
    return new CoolantFlow.Loop(
        new Estimate(perVolume, COOLANT * perVolume), new Estimate(capacity, CORE * capacity));
  }

  private static AirHeat air(
      Scenario scenario, Scenario.Logged logged, Trace trace, List<Channel> modelled) {
    AirSide own = side(scenario, logged, trace, modelled);
    if (modelled.isEmpty()) {
      return own;
    }
    List<AirSide> moved =
        UncertainKeys.of(scenario).stream()
            .filter(key -> AIR_KEYS.stream().anyMatch(key.key()::startsWith))
            .flatMap(key -> moved(scenario, logged, modelled, key).stream())
            .toList();
    return new Modelled(own, moved);
  }

  /** The air of a run with one key at the upper end of its interval, or the lower if that fails. */
  private static Optional<AirSide> moved(
      Scenario scenario, Scenario.Logged logged, List<Channel> modelled, UncertainKey key) {
    for (double share : new double[] {1, 0}) {
      try {
        Scenario other = scenario.with(key.written(share));
        Trace trace = Simulation.run(other.setup().withoutLimit(), Options.STUDY);
        return Optional.of(side(other, logged, trace, modelled));
      } catch (ScenarioException | SimulationException e) {
        // That end cannot be; the other one tells as much.
      }
    }
    return Optional.empty();
  }

  private static AirSide side(
      Scenario scenario, Scenario.Logged logged, Trace trace, List<Channel> modelled) {
    LogReading reading = logged.reading();
    LogOptions options = options(scenario);
    return new AirSide(
        of(
            modelled.contains(Channel.AIR_MASS_FLOW),
            () -> new AirSide.Flow(curve(trace, Channel.AIR_MASS_FLOW, logged), 0),
            () -> AirSide.metered(reading.updates(Signal.AIR_MASS_FLOW))),
        of(
            modelled.contains(Channel.CORE_AIR_IN),
            () -> AirSide.Course.exactly(curve(trace, Channel.CORE_AIR_IN, logged)),
            () ->
                AirSide.sensed(
                    reading.usable(Signal.CORE_AIR_IN),
                    LogOptions.DEFAULTS.airLag(),
                    options.sensorBias())),
        AirSide.charge(
            reading.usable(Signal.CHARGE_TEMPERATURE), options.airLag(), options.sensorBias()));
  }

  private static <T> T of(boolean modelled, Supplier<T> model, Supplier<T> log) {
    return modelled ? model.get() : log.get();
  }

  /** A channel of a run over the log's time. */
  private static Curve curve(Trace trace, Channel channel, Scenario.Logged logged) {
    int[] known =
        IntStream.range(0, trace.size())
            .filter(i -> Double.isFinite(trace.value(channel, i)))
            .filter(i -> i == 0 || trace.time(i) > trace.time(i - 1))
            .toArray();
    return Curve.of(
        IntStream.of(known).mapToDouble(i -> trace.time(i) + logged.startsAt()).toArray(),
        IntStream.of(known).mapToDouble(i -> trace.value(channel, i)).toArray());
  }

  /**
   * Air that is partly the model's.
   *
   * @param own the scenario as it is
   * @param moved with one key at an end of its interval each
   */
  private record Modelled(AirSide own, List<AirSide> moved) implements AirHeat {
    @Override
    public Estimate over(double from, double to) {
      Estimate heat = own.over(from, to);
      double spread = heat.spread();
      for (AirSide other : moved) {
        spread = Math.hypot(spread, other.over(from, to).value() - heat.value());
      }
      return new Estimate(heat.value(), spread);
    }
  }
}
