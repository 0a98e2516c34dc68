package soakloop.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import soakloop.exchange.PassedCrossflow;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.rig.Conductance;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Materials;
import soakloop.rig.Passes;

/**
 * Reads core and heat exchanger, which share one grammar: geometry, or else stated and measured
 * values, or else from size.
 */
final class ExchangerReader {
  private final In in;
  private final Day day;
  private final Coolant coolant;

  ExchangerReader(In in, Day day, Coolant coolant) {
    this.in = in;
    this.day = day;
    this.coolant = coolant;
  }

  /** The core: its face is length by width, its depth the thickness. */
  Exchanger core() {
    In conductance = in.section("conductance");
    if (in.present() && !in.has("size") && needsSize(conductance)) {
      in.problem("", "needs size; or else mass, coolant and a conductance with a value");
    }
    In size = in.section("size");
    Block block = Block.NONE;
    if (size.present()) {
      block = new Block(size.number("length"), size.number("width"), size.number("thickness"));
      size.done();
    }
    bounded(size, block);
    return exchanger(conductance, block, "air-flux", block.face(), 0);
  }

  /** A core under a blower has only so much room. */
  private void bounded(In size, Block block) {
    double free = in.optional("free-height").orElse(Double.POSITIVE_INFINITY);
    if (in.has("free-height") && in.present() && !in.has("size")) {
      in.problem("free-height", "bounds the thickness of the core; give its size too");
    }
    if (block.depth() > free) {
      size.problem(
          "thickness",
          "is "
              + millimetres(block.depth())
              + " mm; free-height leaves "
              + millimetres(free)
              + " mm");
    }
  }

  /** Returns a length in mm to four digits. */
  static String millimetres(double length) {
    return BigDecimal.valueOf(1e3 * length)
        .round(new MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The heat exchanger: its depth counts where anything follows from size. */
  HeatExchanger heatExchanger(String name) {
    In face = in.section("face");
    double width = face.number("width");
    double height = face.number("height");
    face.done();
    In conductance = in.section("conductance");
    double depth = 0;
    if (needsSize(conductance)) {
      depth = in.number("thickness");
    } else {
      in.idle("thickness");
    }
    double density =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    Block block = new Block(width, height, depth);
    return new HeatExchanger(
        name,
        exchanger(conductance, block, "air-speed", block.face() * density, density),
        block.face());
  }

  private boolean needsSize(In conductance) {
    return in.has("geometry") || !conductance.has("value") || !in.has("mass") || !in.has("coolant");
  }

  private Exchanger exchanger(
      In conductance, Block block, String byFace, double flowPerUnit, double airDensity) {
    Exchanger exchanger =
        in.has("geometry")
            ? fromGeometry(block)
            : fromValues(
                new ConductanceReader(
                    conductance,
                    byFace,
                    flowPerUnit,
                    measured -> new MeasuredReader(measured, coolant, crossflow(), airDensity)),
                block);
    in.done();
    return exchanger;
  }

  private Exchanger fromValues(ConductanceReader reader, Block block) {
    Conductance conductance = reader.read(block);
    double metal = bySize("mass", "metal-per-volume", block.volume());
    double held = bySize("coolant", "coolant-share", block.volume());
    Passes passes = passes();
    return new Exchanger(
        conductance, metal * Materials.ALUMINIUM_HEAT_CAPACITY, held, passes, grid(passes));
  }

  private Exchanger fromGeometry(Block block) {
    Passes passes = passes();
    for (String other : new String[] {"conductance", "metal-per-volume", "coolant-share"}) {
      in.refuse(other, "has no use beside geometry; give one or the other");
    }
    Optional<GeometryReader.Made> made =
        new GeometryReader(in.section("geometry"), block, passes.count()).read();
    double mass = in.optional("mass").orElse(made.map(GeometryReader.Made::mass).orElse(1.0));
    double held =
        in.optional("coolant").orElse(made.map(GeometryReader.Made::coolant).orElse(1e-3));
    Conductance conductance =
        made.<Conductance>map(GeometryReader.Made::conductance)
            .orElse(Fallbacks.exchanger().conductance());
    return new Exchanger(
        conductance, mass * Materials.ALUMINIUM_HEAT_CAPACITY, held, passes, grid(passes));
  }

  /** Returns a value that is there, or so much per volume of block. */
  private double bySize(String key, String perVolume, double volume) {
    if (in.has(key)) {
      in.refuse(perVolume, "has no use beside " + key + "; give one or the other");
      return in.number(key);
    }
    double value = in.number(perVolume) * volume;
    return value > 0 ? value : 1e-3;
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

  private PassedCrossflow crossflow() {
    Passes passes = passes();
    return new PassedCrossflow(passes.count(), passes.arranged() == Passes.Arranged.DEPTH);
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
