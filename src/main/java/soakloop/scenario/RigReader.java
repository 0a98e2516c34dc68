package soakloop.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Engine;
import soakloop.rig.Loop;
import soakloop.rig.Materials;
import soakloop.rig.Rig;
import soakloop.rig.Sensor;
import soakloop.rig.Underhood;

/** Reads the hardware, section by section. */
final class RigReader {
  /** Least absolute manifold pressure at full load, Pa. */
  private static final double LEAST_MANIFOLD = 10e3;

  private final In root;
  private final Day day;

  RigReader(In root, Day day) {
    this.root = root;
    this.day = day;
  }

  Rig read() {
    Coolant coolant = coolant();
    Engine engine = engine();
    Blower blower = new BlowerReader(root.section("blower")).read();
    Optional<Curve> boost = boost(blower);
    DuctMetal plenum = plenum();
    Sensor sensor = sensor();
    Loop loop = new LoopReader(root, day, coolant).read();
    Airflow airflow = new AirflowReader(root, day).read(loop);
    return new Rig(coolant, engine, blower, boost, plenum, sensor, loop, airflow, underhood());
  }

  private Coolant coolant() {
    In in = root.section("coolant");
    String glycol = in.choice("glycol");
    OptionalDouble volume = in.optional("by-volume");
    OptionalDouble mass = in.optional("by-mass");
    in.done();
    if (glycol.equals("none")) {
      for (String share : new String[] {"by-volume", "by-mass"}) {
        in.refuse(share, "has no use with plain water; name the glycol, or take this out");
      }
      return Water.INSTANCE;
    }
    if (volume.isPresent() && mass.isPresent()) {
      in.problem("by-mass", "has no use beside by-volume; give one or the other");
    }
    if (in.has("glycol") && volume.isEmpty() && mass.isEmpty()) {
      in.problem("", "needs the glycol's share: by-volume or by-mass");
    }
    if (volume.isPresent() == mass.isPresent()) {
      return Water.INSTANCE;
    }
    Glycol kind = glycol.equals("ethylene") ? Glycol.ETHYLENE : Glycol.PROPYLENE;
    if (mass.isPresent()) {
      return GlycolMix.ofMass(kind, mass.getAsDouble());
    }
    if (volume.getAsDouble() > kind.maxVolumeFraction()) {
      String most = Dimension.FRACTION.require("%").format(kind.maxVolumeFraction(), 1);
      in.problem(
          "by-volume", "is too much; allowed with " + glycol + " glycol: 0 to " + most + " %");
      return Water.INSTANCE;
    }
    return GlycolMix.ofVolume(kind, volume.getAsDouble());
  }

  private Engine engine() {
    In in = root.section("engine");
    Engine engine =
        new Engine(
            in.number("displacement"),
            in.curve("volumetric-efficiency").orElse(Curve.constant(1)),
            in.number("idle-speed"),
            in.number("idle-manifold-pressure"));
    in.done();
    return engine;
  }

  /** An engine at full load needs air: on a day of low pressure little may be taken off it. */
  private void requireAir(Curve boost) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < boost.size(); i++) {
      least = Math.min(least, boost.value(i));
    }
    if (day.pressure() + least < LEAST_MANIFOLD && !root.context().hasProblems()) {
      root.problem("boost", "leaves less than 10 kPa of air in the manifold on such a day");
    }
  }

  /** Returns the boost that is held, or none where blower and engine make it. */
  private Optional<Curve> boost(Blower blower) {
    if (root.word("boost").isEmpty()) {
      Optional<Curve> stated = root.curve("boost");
      stated.ifPresent(this::requireAir);
      return stated;
    }
    if (blower.delivery() instanceof AirDelivery.Stated) {
      root.problem("boost", "must be stated beside blower.air-flow: a pressure, or points");
    }
    return Optional.empty();
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

  private Underhood underhood() {
    In in = root.section("underhood");
    Underhood underhood = new Underhood(in.number("share"), in.number("road-speed"), openHood(in));
    in.done();
    return underhood;
  }

  /** Counts only where a hood is opened: elsewhere no study need move it. */
  private double openHood(In in) {
    if (root.peek("session").stream().anyMatch(RigReader::opensHood)) {
      return in.number("open-hood");
    }
    in.idle("open-hood");
    return 1;
  }

  private static boolean opensHood(Node node) {
    if (node instanceof Node.Items items) {
      return items.items().stream().anyMatch(RigReader::opensHood);
    }
    return node instanceof Node.Section section
        && section.entries().stream()
            .anyMatch(
                e ->
                    e.key().equals("hood")
                        ? e.value() instanceof Node.Scalar s && s.text().equals("open")
                        : opensHood(e.value()));
  }
}
