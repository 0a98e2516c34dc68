package soakloop.simulate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.exchange.LiquidCoupledPair;
import soakloop.flow.Resistance;
import soakloop.fluid.Air;
import soakloop.fluid.Coolant;
import soakloop.quantity.Curve;
import soakloop.rig.AdiabaticEfficiency;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Engine;
import soakloop.rig.Exchanger;
import soakloop.rig.FaceAir;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.Materials;
import soakloop.rig.Passes;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.PumpPower;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.rig.Sensor;
import soakloop.rig.Underhood;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * An invented rig held at full load and one engine speed until nothing changes any more. Nothing
 * but charge air and outside air gives or takes heat: no pump power, no ducts, insulated hoses and
 * reservoir, dry air.
 */
public final class LongHaul {
  private static final double DAY = 293.15; // K
  private static final double BAROMETER = 101_325; // Pa
  private static final double FLOW = 20e-3 / 60; // m3/s
  private static final double FACE = 0.18; // m2
  private static final double FACE_SPEED = 5; // m/s
  private static final double HOUR = 3600; // s
  private static final double AIR_FLOW = 0.4; // kg/s
  private static final Exchanger.Grid CORE_GRID = new Exchanger.Grid(4, 4);
  private static final Exchanger.Grid COOLER_GRID = new Exchanger.Grid(4, 2);

  private static final PowerLawConductance CORE =
      new PowerLawConductance(600, AIR_FLOW, FLOW, 0.7, 0.01, 0.6, 0.3, 0.1);
  private static final PowerLawConductance COOLER =
      new PowerLawConductance(1200, 1, FLOW, 0.75, 0.01, 0.6, 0.3, 0.1);

  private final Coolant coolant;
  private final Trace trace;

  private LongHaul(Coolant coolant) throws SimulationException {
    this.coolant = coolant;
    Drive full = new Drive.FullLoad(Curve.constant(80), Curve.constant(0));
    Phase phase =
        new Phase("haul", Phase.Kind.CRUISE, HOUR, full, Cooling.ALL, OptionalDouble.empty());
    Start start = new Start(OptionalDouble.empty(), OptionalDouble.of(DAY), 363.15);
    trace =
        Simulation.run(
            new Setup(
                new Day(DAY, BAROMETER, 0),
                rig(),
                start,
                new Session(List.of(phase)),
                OptionalDouble.empty()));
  }

  /**
   * Runs the rig.
   *
   * @param coolant what fills its loop
   */
  public static LongHaul of(Coolant coolant) {
    try {
      return new LongHaul(coolant);
    } catch (SimulationException e) {
      throw new IllegalStateException(e);
    }
  }

  private Rig rig() {
    DuctMetal apart = new DuctMetal(5000, 0, 1, 0);
    AirDelivery delivery = new AirDelivery.Stated(Curve.constant(AIR_FLOW));
    return new Rig(
        coolant,
        new Engine(4e-3, 0.95, 14, 35e3),
        new Blower(delivery, new AdiabaticEfficiency.Constant(0.62), 0.95, 5, 0, apart),
        Optional.of(Curve.constant(95e3)),
        apart,
        new Sensor(2, 0.4, 0.5, 0),
        new Loop(
            List.of(
                new Reservoir("reservoir", 4e-3, 0),
                new Pump("pump", new PumpDelivery.StatedFlow(FLOW), new PumpPower.Stated(0), 1e-4),
                hose("supply"),
                new Core("core", new Exchanger(CORE, 3000, 8e-4, Passes.ONE, CORE_GRID)),
                hose("return"),
                new HeatExchanger(
                    "cooler", new Exchanger(COOLER, 3000, 1.4e-3, Passes.ONE, COOLER_GRID), FACE)),
            Optional.of(new Resistance.KnownPoint(40e3, FLOW, 1.8))),
        new Airflow(new FaceAir.Speeds(0, 0, 0), FACE_SPEED, 0, 0, Optional.empty()),
        new Underhood(0.3, 10, 0.4));
  }

  private static Hose hose(String name) {
    return new Hose(name, 1.5, 19e-3, Materials.HoseWall.RUBBER.thick(4e-3), 0, 5, 3);
  }

  /**
   * Returns the last value of a channel.
   *
   * @param channel which
   */
  public double last(Channel channel) {
    return trace.value(channel, trace.size() - 1);
  }

  /** Returns how much the coolant into the core still changed in the last minute, K. */
  public double drift() {
    return last(Channel.CORE_COOLANT_IN)
        - trace.value(Channel.CORE_COOLANT_IN, trace.firstFrom(HOUR - 60));
  }

  /** How an exchanger's effectiveness follows from transfer units and capacity ratio. */
  public interface Effectiveness {
    /**
     * Returns the effectiveness.
     *
     * @param grid cells of the exchanger
     * @param units transfer units
     * @param ratio smaller over larger capacity rate
     * @param airIsLess whether the air has the smaller rate
     */
    double of(Exchanger.Grid grid, double units, double ratio, boolean airIsLess);
  }

  /**
   * Returns the steady solution at the run's air, the coolant's heat capacity at the mean of its
   * two temperatures.
   *
   * @param effectiveness of both exchangers
   */
  public LiquidCoupledPair steady(Effectiveness effectiveness) {
    double blown = last(Channel.BLOWER_OUTLET);
    double chargeRate = AIR_FLOW * Air.heatCapacity(0.5 * (blown + last(Channel.INLET_AIR)));
    double outside =
        FACE * FACE_SPEED * BAROMETER / (Air.GAS_CONSTANT * DAY) * Air.heatCapacity(DAY);
    double outsideFlow = FACE * FACE_SPEED * BAROMETER / (Air.GAS_CONSTANT * DAY);
    LiquidCoupledPair pair = null;
    double mean = 320;
    for (int i = 0; i < 20; i++) {
      double cold = pair == null ? mean : pair.coldLiquid();
      double liquid = FLOW * coolant.density(cold) * coolant.heatCapacity(mean);
      pair =
          new LiquidCoupledPair(
              blown,
              chargeRate,
              at(effectiveness, CORE_GRID, CORE.overall(AIR_FLOW, FLOW), chargeRate, liquid),
              DAY,
              outside,
              at(effectiveness, COOLER_GRID, COOLER.overall(outsideFlow, FLOW), outside, liquid),
              liquid);
      mean = 0.5 * (pair.coldLiquid() + pair.hotLiquid());
    }
    return java.util.Objects.requireNonNull(pair);
  }

  private static double at(
      Effectiveness effectiveness,
      Exchanger.Grid grid,
      double conductance,
      double air,
      double liquid) {
    double least = Math.min(air, liquid);
    return effectiveness.of(
        grid, conductance / least, least / Math.max(air, liquid), air <= liquid);
  }
}
