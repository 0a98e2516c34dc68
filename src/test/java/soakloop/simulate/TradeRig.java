package soakloop.simulate;

import java.util.ArrayList;
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
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
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
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * An invented blown V8 for the trade's facts: 5.5 L, a 2.65 L/rev blower at 2.5 to 1, 20.5 to 22
 * psi, a two-pass core with 5 kg of metal, 14 L of reservoir, 35 L/min of 40 % ethylene glycol, on
 * a dyno in still air at 107 degF. All plausible, none measured.
 */
public final class TradeRig {
  static final double PSI = 6894.757;
  static final double SLOW = 2000.0 / 60;
  static final double FAST = 8000.0 / 60;
  static final double PULL = 10;

  private static final double WAIT = 150;
  private static final double ALUMINIUM = Materials.ALUMINIUM_HEAT_CAPACITY;
  private static final double LITRES_PER_MINUTE = 1e-3 / 60;

  private TradeRig() {}

  static double kelvin(double fahrenheit) {
    return (fahrenheit - 32) / 1.8 + 273.15;
  }

  /**
   * Pulls, idling after each.
   *
   * @param count how many
   * @param conductance of the core at 0.6 kg/s of air and 30 L/min, W/K
   */
  public static Setup pulls(int count, double conductance) {
    Rig rig = rig(conductance);
    List<Phase> phases = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      phases.add(Phases.pull(SLOW, FAST, PULL, 0));
      phases.add(Phases.idle(rig, WAIT));
    }
    Start start =
        new Start(OptionalDouble.of(kelvin(108)), OptionalDouble.of(kelvin(107)), kelvin(200));
    Day day = new Day(kelvin(107), 100e3, 0.3);
    return new Setup(day, rig, start, new Session(phases), OptionalDouble.empty());
  }

  private static Rig rig(double conductance) {
    Blower blower =
        new Blower(
            AirDelivery.PositiveDisplacement.of(2.65e-3, 2.5, 0.92, 0),
            new AdiabaticEfficiency.Constant(0.68),
            0.95,
            0,
            2e3,
            new DuctMetal(9 * ALUMINIUM, 15, 0.5, 5));
    Curve boost =
        Curve.of(
            new double[] {SLOW, 3500.0 / 60, FAST},
            new double[] {20.5 * PSI, 21.5 * PSI, 22 * PSI});
    return new Rig(
        GlycolMix.ofVolume(Glycol.ETHYLENE, 0.4),
        new Engine(5.5e-3, 0.96, 850.0 / 60, 40e3),
        blower,
        Optional.of(boost),
        new DuctMetal(8 * ALUMINIUM, 12, 0.5, 8),
        new Sensor(1.5, 0.3, 0.55, 0.01),
        loop(conductance),
        new Airflow(new FaceAir.Speeds(0, 0, 0.18), 0.2, 0, 0, Optional.empty()),
        new Underhood(0.3, 11, 0.4));
  }

  private static Loop loop(double conductance) {
    Hose.Wall rubber = Materials.HoseWall.RUBBER.thick(4e-3);
    PowerLawConductance core =
        new PowerLawConductance(
            conductance, 0.6, 30 * LITRES_PER_MINUTE, 0.65, 0.01, 0.55, 0.4, 0.25);
    PowerLawConductance radiator =
        new PowerLawConductance(200, 1, 20 * LITRES_PER_MINUTE, 0.85, 0.01, 0.5, 0.4, 0.25);
    List<LoopElement> elements =
        List.of(
            new Reservoir("reservoir", 14e-3, 2),
            new Pump(
                "pump",
                new PumpDelivery.StatedFlow(35 * LITRES_PER_MINUTE),
                new PumpPower.Stated(60),
                0.1e-3),
            new Hose("supply hose", 1.5, 19e-3, rubber, 12, 5, 3),
            new Core(
                "core",
                new Exchanger(
                    core,
                    5 * ALUMINIUM,
                    1.5e-3,
                    new Passes(2, Passes.Arranged.DEPTH),
                    new Exchanger.Grid(4, 2))),
            new Hose("return hose", 1.5, 19e-3, rubber, 12, 5, 3),
            new HeatExchanger(
                "heat exchanger",
                new Exchanger(radiator, 3 * ALUMINIUM, 2e-3, Passes.ONE, new Exchanger.Grid(4, 2)),
                0.25));
    return new Loop(
        elements, Optional.of(new Resistance.KnownPoint(40e3, 30 * LITRES_PER_MINUTE, 1.8)));
  }
}
