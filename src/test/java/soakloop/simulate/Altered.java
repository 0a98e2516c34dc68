package soakloop.simulate;

import java.util.Optional;
import java.util.function.UnaryOperator;
import soakloop.charge.BlowerSize;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Core;
import soakloop.rig.DuctMetal;
import soakloop.rig.Exchanger;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Pump;
import soakloop.rig.PumpPower;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;

/** The same rig with one thing different. */
final class Altered {
  private Altered() {}

  static Rig elements(Rig rig, UnaryOperator<LoopElement> change) {
    Loop loop = rig.loop();
    return new Rig(
        rig.coolant(),
        rig.engine(),
        rig.blower(),
        rig.boost(),
        rig.plenum(),
        rig.sensor(),
        new Loop(loop.elements().stream().map(change).toList(), loop.plumbing()),
        rig.airflow(),
        rig.underhood());
  }

  static Rig coreConductance(Rig rig, double factor) {
    return elements(
        rig,
        e -> {
          if (!(e instanceof Core core)) {
            return e;
          }
          Exchanger x = core.exchanger();
          PowerLawConductance c = (PowerLawConductance) x.conductance();
          PowerLawConductance more =
              new PowerLawConductance(
                  factor * c.value(),
                  c.airFlow(),
                  c.coolantFlow(),
                  c.airSideShare(),
                  c.wallShare(),
                  c.airExponent(),
                  c.coolantExponent(),
                  c.stillShare());
          return new Core(
              core.name(),
              new Exchanger(more, x.metalHeatCapacity(), x.coolantVolume(), x.passes(), x.grid()));
        });
  }

  static Rig reservoir(Rig rig, String name, double factor) {
    return elements(
        rig,
        e ->
            e instanceof Reservoir r && r.name().equals(name)
                ? new Reservoir(r.name(), factor * r.coolantVolume(), r.surroundings())
                : e);
  }

  static Rig withoutPumpHeat(Rig rig) {
    return elements(
        rig,
        e ->
            e instanceof Pump p
                ? new Pump(p.name(), p.delivery(), new PumpPower.Stated(0), p.coolantVolume())
                : e);
  }

  /** Takes away what warms or cools hoses, reservoirs and blower case from outside. */
  static Rig insulated(Rig rig) {
    Rig loop =
        elements(
            rig,
            e -> {
              if (e instanceof Hose h) {
                return new Hose(h.name(), h.length(), h.bore(), h.wall(), 0, h.cells(), h.layers());
              }
              if (e instanceof Reservoir r) {
                return new Reservoir(r.name(), r.coolantVolume(), 0);
              }
              return e;
            });
    Blower b = rig.blower();
    DuctMetal casing = b.casing();
    DuctMetal untied =
        new DuctMetal(casing.heatCapacity(), casing.airConductance(), casing.airFlow(), 0);
    return new Rig(
        loop.coolant(),
        loop.engine(),
        new Blower(
            b.delivery(),
            b.adiabaticEfficiency(),
            b.mechanicalEfficiency(),
            b.inletPickUp(),
            b.inletLoss(),
            untied),
        loop.boost(),
        loop.plenum(),
        loop.sensor(),
        loop.loop(),
        loop.airflow(),
        loop.underhood());
  }

  /** Leaves the boost to blower and engine, some air leaking back, if the blower has a size. */
  static Rig fromPulleys(Rig rig) {
    Blower b = rig.blower();
    if (!(b.delivery() instanceof AirDelivery.PositiveDisplacement p)) {
      return rig;
    }
    BlowerSize size =
        new BlowerSize(p.size().displacement(), p.size().driveRatio(), p.size().fill(), 0.05);
    return new Rig(
        rig.coolant(),
        rig.engine(),
        new Blower(
            new AirDelivery.PositiveDisplacement(size),
            b.adiabaticEfficiency(),
            b.mechanicalEfficiency(),
            b.inletPickUp(),
            b.inletLoss(),
            b.casing()),
        Optional.empty(),
        rig.plenum(),
        rig.sensor(),
        rig.loop(),
        rig.airflow(),
        rig.underhood());
  }

  /** Leaves out the elements of a kind. */
  static Rig without(Rig rig, Class<? extends LoopElement> kind) {
    Loop loop = rig.loop();
    return new Rig(
        rig.coolant(),
        rig.engine(),
        rig.blower(),
        rig.boost(),
        rig.plenum(),
        rig.sensor(),
        new Loop(
            loop.elements().stream().filter(e -> !kind.isInstance(e)).toList(), loop.plumbing()),
        rig.airflow(),
        rig.underhood());
  }

  /** Lets the air at the heat exchangers be as the day. */
  static Rig withoutInletRise(Rig rig) {
    Airflow a = rig.airflow();
    return new Rig(
        rig.coolant(),
        rig.engine(),
        rig.blower(),
        rig.boost(),
        rig.plenum(),
        rig.sensor(),
        rig.loop(),
        new Airflow(a.face(), a.stillAir(), 0, a.recirculation(), a.thermostat()),
        rig.underhood());
  }
}
