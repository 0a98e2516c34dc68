package soakloop.simulate;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Reservoir;

/** Samples every channel from the integrator's dense output at even times and at phase ends. */
final class Recorder implements ODEStepHandler {
  /** How long a phase is sampled more closely, s. */
  private static final double FIRST = 3;

  private static final int FIRST_ROOM = 128;

  private final LoopModel model;
  private final double[] scratch;
  private final double[] sample;
  private final int reservoir;
  private final int exchanger;
  private double[] time = new double[FIRST_ROOM];
  private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
  private int size;
  private double interval;
  private double dense;
  private long denseCount;
  private double phaseStart;
  private long next;
  private long steps;

  Recorder(LoopModel model) {
    this.model = model;
    this.scratch = new double[model.getDimension()];
    this.sample = new double[model.getDimension()];
    this.reservoir = model.first(Reservoir.class);
    this.exchanger = model.first(HeatExchanger.class);
    for (Channel channel : Channel.values()) {
      columns.put(channel, new double[time.length]);
    }
  }

  /**
   * Begins a phase.
   *
   * @param start s
   * @param sampling time between samples, s
   * @param atFirst the same in the first seconds, s
   * @param y the state
   */
  void startPhase(double start, double sampling, double atFirst, double[] y) {
    interval = sampling;
    dense = Math.min(sampling, atFirst);
    denseCount = dense < sampling ? (long) Math.ceil(FIRST / dense) : 0;
    phaseStart = start;
    next = 1;
    record(start, y);
  }

  void endPhase(double end, double[] y) {
    record(end, y);
  }

  long steps() {
    return steps;
  }

  @Override
  public void handleStep(ODEStateInterpolator interpolator) {
    steps++;
    double end = interpolator.getCurrentState().getTime();
    for (double t = due(); t < end - 1e-9; t = due()) {
      if (interpolator instanceof HermiteInterpolator hermite) {
        hermite.state(t, sample);
        record(t, sample);
      } else {
        record(t, interpolator.getInterpolatedState(t).getPrimaryState());
      }
      next++;
    }
  }

  private double due() {
    return next <= denseCount
        ? phaseStart + next * dense
        : phaseStart + denseCount * dense + (next - denseCount) * interval;
  }

  private void record(double t, double[] y) {
    if (size == time.length) {
      time = Arrays.copyOf(time, 2 * size);
      columns.replaceAll((channel, column) -> Arrays.copyOf(column, 2 * size));
    }
    time[size] = t;
    Moment m = model.observe(t, y, scratch);
    put(Channel.ENGINE_SPEED, m.inputs.engineSpeed);
    put(Channel.ROAD_SPEED, m.inputs.roadSpeed);
    put(Channel.BOOST, m.boost);
    put(Channel.AIR_MASS_FLOW, m.airMassFlow);
    put(Channel.INLET_AIR, m.inletAir);
    put(Channel.BLOWER_OUTLET, m.blowerOutlet);
    boolean loses = model.core().knowsLoss();
    put(Channel.BOOST_BEFORE_CORE, loses ? m.boost + m.coreLoss : Double.NaN);
    put(Channel.PRESSURE_RATIO, m.pressureRatio);
    put(Channel.BLOWER_POWER, m.blowerPower);
    put(Channel.CORE_LOSS, loses ? m.coreLoss : Double.NaN);
    put(Channel.CONDENSATE, m.condensate);
    put(Channel.CORE_AIR_IN, m.coreAirIn);
    put(Channel.CORE_AIR_OUT, m.coreAirOut);
    put(Channel.CHARGE, m.charge);
    put(Channel.SENSOR, y[model.air().sensor()]);
    put(Channel.CORE_METAL, model.core().meanMetal(y));
    put(Channel.PLENUM_METAL, y[model.air().plenum()]);
    put(Channel.BLOWER_CASE, y[model.air().casing()]);
    put(Channel.ENGINE_COOLANT, m.engineCoolant);
    put(Channel.COOLANT_FLOW, m.coolantFlow);
    put(Channel.FACE_SPEED, m.faceSpeed);
    put(Channel.HEAT_CORE, m.heatCore);
    put(Channel.HEAT_DUCTS, m.heatDucts);
    put(Channel.HEAT_ENGINE, m.heatEngine);
    put(Channel.HEAT_PUMP, m.pumpPower);
    put(Channel.HEAT_UNDERHOOD, m.heatUnderhood);
    put(Channel.HEAT_AMBIENT, m.heatAmbient);
    put(Channel.HEAT_ICE, m.heatIce);
    put(Channel.HEAT_CHILLER, m.heatChiller);
    put(Channel.CHILLER_POWER, m.chillerPower);
    put(Channel.ICE_LEFT, m.iceLeft);
    put(Channel.CORE_COOLANT_IN, model.entering(model.coreAt(), y));
    put(Channel.CORE_COOLANT_OUT, model.leaving(model.coreAt(), y));
    put(Channel.RESERVOIR, reservoir < 0 ? Double.NaN : model.leaving(reservoir, y));
    put(Channel.EXCHANGER_COOLANT_IN, exchanger < 0 ? Double.NaN : model.entering(exchanger, y));
    put(Channel.EXCHANGER_COOLANT_OUT, exchanger < 0 ? Double.NaN : model.leaving(exchanger, y));
    size++;
  }

  private void put(Channel channel, double value) {
    java.util.Objects.requireNonNull(columns.get(channel))[size] = value;
  }

  double[] times() {
    return Arrays.copyOf(time, size);
  }

  Map<Channel, double[]> values() {
    Map<Channel, double[]> cut = new EnumMap<>(Channel.class);
    columns.forEach((channel, column) -> cut.put(channel, Arrays.copyOf(column, size)));
    return cut;
  }
}
