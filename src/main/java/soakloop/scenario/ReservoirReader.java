package soakloop.scenario;

import java.util.Locale;
import java.util.Optional;
import soakloop.flow.Fittings;
import soakloop.flow.Resistance;
import soakloop.rig.Reservoir;
import soakloop.rig.TankIce;

/** Reads reservoirs; one of them may have ice. */
final class ReservoirReader {
  private final Hydraulics hydraulics;
  private String iced = "";

  ReservoirReader(Hydraulics hydraulics) {
    this.hydraulics = hydraulics;
  }

  Reservoir read(String name, In in) {
    Resistance ports =
        hydraulics.counts(in, "port")
            ? new Resistance.Pipe(0, in.number("port"), 0, Fittings.EXIT + Fittings.SHARP_ENTRY)
            : Resistance.NONE;
    Reservoir reservoir =
        new Reservoir(
            name,
            in.number("volume"),
            in.number("surroundings-conductance"),
            ports,
            layers(in),
            ice(name, in));
    in.done();
    return reservoir;
  }

  private static Reservoir.Layers layers(In in) {
    int count = in.count("layers");
    if (count == 1) {
      in.refuse("enters", "counts in a tank of layers; give layers too, or take this out");
      return Reservoir.Layers.MIXED;
    }
    String enters = in.choice("enters");
    return new Reservoir.Layers(
        count, Reservoir.Layers.Entry.valueOf(enters.toUpperCase(Locale.ROOT)));
  }

  private Optional<TankIce> ice(String name, In tank) {
    if (!tank.has("ice")) {
      tank.idle("capacity");
      return Optional.empty();
    }
    if (!iced.isEmpty()) {
      tank.problem(
          "ice", "is a second one; `" + iced + "` has ice already, and one tank may have it");
    }
    iced = name;
    if (!tank.has("capacity")) {
      tank.problem(
          "capacity", "is missing: ice raises the level, so say what the tank holds to the brim");
    }
    In in = tank.section("ice");
    double mass = in.optional("mass").orElse(0);
    TankIce ice =
        new TankIce(
            mass,
            in.number("temperature"),
            conductance(in, mass),
            tank.optional("capacity").orElse(1));
    in.done();
    return Optional.of(ice);
  }

  /** Returns the conductance per mass: stated for the ice of the start, or by the pieces' size. */
  private static double conductance(In in, double mass) {
    if (!in.has("conductance")) {
      return TankIce.ofPieces(in.number("pieces"), in.number("coefficient"));
    }
    for (String key : new String[] {"pieces", "coefficient"}) {
      in.refuse(key, "has no use beside conductance; give one or the other");
    }
    if (!(mass > 0)) {
      in.problem("conductance", "is that of the ice at the start; there is none, so give pieces");
      in.idle("conductance");
      return 1;
    }
    return in.number("conductance") / mass;
  }
}
