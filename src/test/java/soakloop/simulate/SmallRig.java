package soakloop.simulate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.flow.Resistance;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
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
import soakloop.rig.Loop;
import soakloop.rig.Passes;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.PumpPower;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.rig.Sensor;
import soakloop.rig.Underhood;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * An invented rig small enough to be written down a second time by hand: reservoir, pump, core and
 * heat exchanger of one cell each, no hoses, no duct metal, dry air; two pulls of 10 s and an idle
 * of 60 s after each.
 */
public final class SmallRig {
  /** Length of a pull, s. */
  public static final double PULL = 10;

  /** Length of an idle, s. */
  public static final double IDLE = 60;

  private static final double LITRES_PER_MINUTE = 1e-3 / 60;
  private static final Exchanger.Grid ONE_CELL = new Exchanger.Grid(1, 1);

  private SmallRig() {}

  /** Runs it, tolerances a thousand times finer than usual. */
  public static Trace run() {
    Rig rig = rig();
    Phase pull = Phases.pull(2600.0 / 60, 6700.0 / 60, PULL, 0);
    Phase idle = Phases.idle(rig, IDLE);
    Setup setup =
        new Setup(
            new Day(293.15, 100e3, 0),
            rig,
            new Start(OptionalDouble.empty(), OptionalDouble.of(303.15), 363.15),
            new Session(List.of(pull, idle, pull, idle)),
            OptionalDouble.empty());
    try {
      return Simulation.run(setup, Options.DEFAULT.withTolerances(1e-7, 1e-10));
    } catch (SimulationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Rig rig() {
    DuctMetal apart = new DuctMetal(5000, 0, 1, 0);
    return new Rig(
        GlycolMix.ofMass(Glycol.ETHYLENE, 0.3),
        new Engine(4.1e-3, 0.96, 850.0 / 60, 38e3),
        new Blower(
            AirDelivery.PositiveDisplacement.of(1.7e-3, 2.35, 0.92, 0),
            new AdiabaticEfficiency.Constant(0.62),
            0.95,
            5,
            2e3,
            apart),
        Optional.of(Curve.constant(90e3)),
        apart,
        new Sensor(2, 0.3, 0.55, 0),
        new Loop(
            List.of(
                new Reservoir("reservoir", 4e-3, 0),
                new Pump(
                    "pump",
                    new PumpDelivery.StatedFlow(24 * LITRES_PER_MINUTE),
                    new PumpPower.Stated(50),
                    1e-4),
                new Core(
                    "core",
                    new Exchanger(
                        new PowerLawConductance(
                            700, 0.5, 25 * LITRES_PER_MINUTE, 0.7, 0.01, 0.55, 0.35, 0.25),
                        3000,
                        0.9e-3,
                        Passes.ONE,
                        ONE_CELL)),
                new HeatExchanger(
                    "heat exchanger",
                    new Exchanger(
                        new PowerLawConductance(
                            600, 1, 20 * LITRES_PER_MINUTE, 0.85, 0.01, 0.5, 0.4, 0.25),
                        2500,
                        1.4e-3,
                        Passes.ONE,
                        ONE_CELL),
                    0.2)),
            Optional.of(new Resistance.KnownPoint(40e3, 24 * LITRES_PER_MINUTE, 1.8))),
        new Airflow(new FaceAir.Speeds(0, 0, 0), 2, 0, 0, Optional.empty()),
        new Underhood(0, 10, 0.4));
  }
}
