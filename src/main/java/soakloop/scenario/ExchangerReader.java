package soakloop.scenario;

import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.fluid.MoistAir;
import soakloop.rig.Conductance;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.Materials;
import soakloop.rig.Passes;

/** Reads core and heat exchanger, which share one grammar: stated values, or else from size. */
final class ExchangerReader {
  private final In in;
  private final Day day;

  ExchangerReader(In in, Day day) {
    this.in = in;
    this.day = day;
  }

  /** The core: its face is length by width, its depth the thickness. */
  Exchanger core() {
    In size = in.section("size");
    double area = 0;
    double volume = 0;
    if (size.present()) {
      area = size.number("length") * size.number("width");
      volume = area * size.number("thickness");
      size.done();
    }
    In c = in.section("conductance");
    OptionalDouble stated = c.optional("value");
    OptionalDouble airFlow = c.optional("air-flow");
    if (!size.present() && (stated.isEmpty() || !in.has("mass") || !in.has("coolant"))) {
      if (in.present()) {
        in.problem("", "needs size, or else conductance with a value, mass and coolant");
      } else {
        in.problem("", "is missing: " + "the charge cooler core, at least its size");
      }
      in.done();
      return Fallbacks.exchanger();
    }
    double value;
    double referenceAir;
    if (stated.isPresent()) {
      value = stated.getAsDouble();
      if (airFlow.isEmpty()) {
        c.problem("", "has a value, so it needs the air-flow at which that holds");
      }
      referenceAir = airFlow.orElse(0.5);
    } else {
      value = c.number("per-volume") * volume;
      referenceAir = c.number("air-flux") * area;
    }
    return exchanger(c, value, referenceAir, volume);
  }

  /** Returns the heat exchanger's face, m2. */
  double faceArea() {
    In face = in.section("face");
    double area = face.number("width") * face.number("height");
    face.done();
    return area;
  }

  /** The heat exchanger. */
  Exchanger heatExchanger() {
    double area = faceArea();
    double volume = area * in.number("thickness");
    In c = in.section("conductance");
    OptionalDouble stated = c.optional("value");
    OptionalDouble airFlow = c.optional("air-flow");
    double density =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    double referenceAir =
        airFlow.isPresent() ? airFlow.getAsDouble() : c.number("air-speed") * area * density;
    double value = stated.isPresent() ? stated.getAsDouble() : c.number("per-volume") * volume;
    return exchanger(c, value, referenceAir, volume);
  }

  private Exchanger exchanger(In c, double value, double airFlow, double volume) {
    // A key that another one makes idle is still a key.
    for (String idle : new String[] {"per-volume", "air-flow"}) {
      c.optional(idle);
    }
    if (c.has("air-flux")) {
      c.optional("air-flux");
    }
    if (c.has("air-speed")) {
      c.optional("air-speed");
    }
    double airShare = c.number("air-side-share");
    double wallShare = c.number("wall-share");
    if (airShare + wallShare > 0.99) {
      c.problem("wall-share", "leaves with air-side-share nothing for the coolant side");
      wallShare = 0;
      airShare = Math.min(airShare, 0.95);
    }
    Conductance conductance =
        new Conductance(
            value,
            airFlow,
            c.number("coolant-flow"),
            airShare,
            wallShare,
            c.number("air-exponent"),
            c.number("coolant-exponent"),
            c.number("still-share"));
    c.done();
    OptionalDouble mass = in.optional("mass");
    OptionalDouble coolant = in.optional("coolant");
    double metal = mass.isPresent() ? mass.getAsDouble() : in.number("metal-per-volume") * volume;
    double held = coolant.isPresent() ? coolant.getAsDouble() : in.number("coolant-share") * volume;
    in.optional("metal-per-volume");
    in.optional("coolant-share");
    Passes passes = passes();
    Exchanger exchanger =
        new Exchanger(
            conductance, metal * Materials.ALUMINIUM_HEAT_CAPACITY, held, passes, grid(passes));
    in.done();
    return exchanger;
  }

  private Passes passes() {
    In p = in.section("passes");
    Passes passes =
        new Passes(
            p.count("count"),
            Passes.Arranged.valueOf(p.choice("arranged").toUpperCase(Locale.ROOT)));
    p.done();
    return passes;
  }

  private Exchanger.Grid grid(Passes passes) {
    In cells = in.section("cells");
    int along = cells.count("along");
    int depth = cells.count("depth");
    cells.done();
    boolean deep = passes.arranged() == Passes.Arranged.DEPTH;
    int perPass = deep ? (depth + passes.count() - 1) / passes.count() : depth;
    return new Exchanger.Grid(along, perPass);
  }
}
