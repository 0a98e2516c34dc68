package soakloop.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;
import soakloop.quantity.Curve;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Engine;
import soakloop.rig.Materials;
import soakloop.rig.Rig;
import soakloop.rig.Sensor;
import soakloop.rig.Thermostat;
import soakloop.rig.Underhood;

/** Reads the hardware, section by section. */
final class RigReader {
  private final In root;
  private final Day day;

  RigReader(In root, Day day) {
    this.root = root;
    this.day = day;
  }

  Rig read() {
    return new Rig(
        coolant(),
        engine(),
        blower(),
        boost(),
        plenum(),
        sensor(),
        new LoopReader(root, day).read(),
        airflow(),
        underhood());
  }

  private Coolant coolant() {
    In in = root.section("coolant");
    String glycol = in.choice("glycol");
    OptionalDouble volume = in.optional("by-volume");
    OptionalDouble mass = in.optional("by-mass");
    in.done();
    if (glycol.equals("none")) {
      if (volume.isPresent() || mass.isPresent()) {
        in.problem("glycol", "is none, so there is no by-volume or by-mass to give");
      }
      return Water.INSTANCE;
    }
    if (volume.isPresent() == mass.isPresent()) {
      if (in.present()) {
        in.problem("", "needs by-volume or by-mass, one of the two");
      }
      return Water.INSTANCE;
    }
    Glycol kind = glycol.equals("ethylene") ? Glycol.ETHYLENE : Glycol.PROPYLENE;
    return volume.isPresent()
        ? GlycolMix.ofVolume(kind, volume.getAsDouble())
        : GlycolMix.ofMass(kind, mass.getAsDouble());
  }

  private Engine engine() {
    In in = root.section("engine");
    Engine engine =
        new Engine(
            in.number("displacement"),
            in.number("volumetric-efficiency"),
            in.number("idle-speed"),
            in.number("idle-manifold-pressure"));
    in.done();
    return engine;
  }

  private Blower blower() {
    In in = root.section("blower");
    Blower blower =
        new Blower(
            delivery(in),
            in.number("adiabatic-efficiency"),
            in.number("inlet-pick-up"),
            in.number("inlet-loss"),
            casing(in.section("case")));
    in.done();
    return blower;
  }

  private AirDelivery delivery(In in) {
    OptionalDouble displacement = in.optional("displacement");
    OptionalDouble ratio = in.optional("drive-ratio");
    In pulleys = in.section("pulleys");
    Optional<Curve> stated = in.curve("air-flow");
    if (stated.isPresent()) {
      if (displacement.isPresent() || ratio.isPresent() || pulleys.present()) {
        in.problem(
            "air-flow", "takes the place of displacement and drive ratio; give one or the other");
      }
      return new AirDelivery.Stated(stated.get());
    }
    if (!in.present()) {
      return new AirDelivery.Stated(Curve.constant(0.1));
    }
    if (displacement.isEmpty() || ratio.isPresent() == pulleys.present()) {
      in.problem("", "needs displacement with drive-ratio or pulleys (not both), or air-flow");
    }
    double turns = ratio.orElse(2);
    if (pulleys.present()) {
      turns = pulleys.number("crank") / pulleys.number("blower") * pulleys.number("step-up");
      pulleys.done();
    }
    return new AirDelivery.PositiveDisplacement(
        displacement.orElse(1e-3), turns, in.number("volumetric-efficiency"));
  }

  private static DuctMetal casing(In in) {
    DuctMetal metal =
        new DuctMetal(
            in.number("mass") * Materials.ALUMINIUM_HEAT_CAPACITY,
            in.number("conductance"),
            in.number("air-flow"),
            in.number("surroundings-conductance"));
    in.done();
    return metal;
  }

  private Curve boost() {
    Optional<Curve> boost = root.curve("boost");
    if (boost.isEmpty()) {
      root.problem("boost", "is missing: gauge pressure in the manifold at full load, like 13 psi");
    }
    return boost.orElse(Curve.constant(0));
  }

  private DuctMetal plenum() {
    In in = root.section("plenum");
    DuctMetal metal =
        new DuctMetal(
            in.number("mass") * Materials.ALUMINIUM_HEAT_CAPACITY,
            in.number("conductance"),
            in.number("air-flow"),
            in.number("engine-conductance"));
    in.done();
    return metal;
  }

  private Sensor sensor() {
    In in = root.section("sensor");
    Sensor sensor =
        new Sensor(
            in.number("time-constant"),
            in.number("air-flow"),
            in.number("flow-exponent"),
            in.number("boss-share"));
    in.done();
    return sensor;
  }

  private Airflow airflow() {
    In in = root.section("airflow");
    double weak =
        in.has("shop-fan") && in.word("shop-fan").equals(Optional.of("weak"))
            ? in.number("weak")
            : 0;
    double strong =
        in.has("shop-fan") && in.word("shop-fan").equals(Optional.of("strong"))
            ? in.number("strong")
            : 0;
    for (String word : new String[] {"weak", "strong"}) {
      in.optional(word);
    }
    double shop =
        switch (in.word("shop-fan").orElse("")) {
          case "none" -> 0;
          case "weak" -> weak;
          case "strong" -> strong;
          default -> in.number("shop-fan");
        };
    double car = in.word("car-fan").isPresent() ? 0 : in.number("car-fan");
    In thermostat = in.section("thermostat");
    Optional<Thermostat> bySwitch = Optional.empty();
    if (thermostat.present()) {
      double on = thermostat.number("on");
      double off = thermostat.number("off");
      thermostat.done();
      if (off < on) {
        bySwitch = Optional.of(new Thermostat(on, off));
      } else {
        thermostat.problem("off", "must be below on");
      }
    }
    Airflow airflow =
        new Airflow(
            shop,
            car,
            in.number("road-share"),
            in.number("still-air"),
            in.number("inlet-rise"),
            bySwitch);
    in.done();
    return airflow;
  }

  private Underhood underhood() {
    In in = root.section("underhood");
    Underhood underhood = new Underhood(in.number("share"), in.number("road-speed"));
    in.done();
    return underhood;
  }
}
