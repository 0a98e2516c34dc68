package soakloop.report;

import java.util.List;
import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.quantity.Curve;
import soakloop.rig.AdiabaticEfficiency;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Core;
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

/** An invented car, only there because a scenario must have one; no number of it is reported. */
final class SampleRig {
  private SampleRig() {}

  static Rig make() {
    Exchanger exchanger =
        new Exchanger(
            new PowerLawConductance(1500, 0.5, 4e-4, 0.7, 0.02, 0.65, 0.8, 0.2),
            3000,
            8e-4,
            Passes.ONE,
            new Exchanger.Grid(4, 4));
    DuctMetal metal = new DuctMetal(5000, 40, 0.5, 30);
    return new Rig(
        new Waterlike(),
        new Engine(4.1e-3, 0.96, 14, 40e3),
        new Blower(
            AirDelivery.PositiveDisplacement.of(1.7e-3, 2.35, 0.92, 0),
            new AdiabaticEfficiency.Constant(0.62),
            0.95,
            5,
            1000,
            metal),
        Optional.of(Curve.constant(90e3)),
        metal,
        new Sensor(2, 0.3, 0.5, 0.1),
        new Loop(
            List.of(
                new Reservoir("reservoir", 5e-3, 2),
                new Pump("pump", new PumpDelivery.StatedFlow(4e-4), new PumpPower.Stated(60), 2e-4),
                new Core("core", exchanger),
                new HeatExchanger("heat-exchanger", exchanger, 0.2)),
            Optional.of(new Resistance.KnownPoint(40e3, 4e-4, 1.8))),
        new Airflow(new FaceAir.Speeds(3, 0, 0.2), 0.3, 0, 0, Optional.empty()),
        new Underhood(0.3, 10, 0.4));
  }

  /** A liquid of round numbers. */
  private record Waterlike() implements Coolant {
    @Override
    public double density(double t) {
      return 1000;
    }

    @Override
    public double heatCapacity(double t) {
      return 4000;
    }

    @Override
    public double enthalpy(double t) {
      return 4000 * (t - ENTHALPY_ZERO);
    }

    @Override
    public double conductivity(double t) {
      return 0.6;
    }

    @Override
    public double viscosity(double t) {
      return 1e-3;
    }

    @Override
    public double freezingTemperature() {
      return 273.15;
    }

    @Override
    public double minTemperature() {
      return 273.15;
    }

    @Override
    public double maxTemperature() {
      return 373.15;
    }
  }
}
