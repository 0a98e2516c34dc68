package soakloop.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.exchange.PassedCrossflow;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Dimension;
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
  /** Largest share of a coolant side that air may take [-]. */
  private static final double MOST_AIR = 0.8;

  private final In in;
  private final Day day;
  private final Coolant coolant;
  private final PressureLossReader losses;

  ExchangerReader(In in, Day day, Coolant coolant, PressureLossReader losses) {
    this.in = in;
    this.day = day;
    this.coolant = coolant;
    this.losses = losses;
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
    return exchanger(conductance, new Sized(block, 2), "air-flux", block.face(), 0);
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
    Optional<String> behind = in.text("behind");
    Sized sized = new Sized(new Block(width, height, depth), 1);
    double area = sized.block().face();
    return new HeatExchanger(
        name, exchanger(conductance, sized, "air-speed", area * density, density), area, behind);
  }

  private boolean needsSize(In conductance) {
    return in.has("geometry") || !conductance.has("value") || !in.has("mass") || !in.has("coolant");
  }

  /**
   * A block and how its default pressure loss goes.
   *
   * @param usualPasses of the exchanger that the default is for
   */
  private record Sized(Block block, int usualPasses) {
    PressureLossReader.Way way(Passes passes) {
      double along = block.along();
      return new PressureLossReader.Way(
          along, along > 0 ? block.volume() / along : 0, passes.count(), usualPasses);
    }
  }

  private Exchanger exchanger(
      In conductance, Sized sized, String byFace, double flowPerUnit, double airDensity) {
    Exchanger exchanger =
        in.has("geometry")
            ? fromGeometry(sized)
            : fromValues(
                new ConductanceReader(
                    conductance,
                    byFace,
                    flowPerUnit,
                    measured -> new MeasuredReader(measured, coolant, crossflow(), airDensity)),
                sized);
    double air = trappedAir(exchanger.coolantVolume());
    in.done();
    return exchanger.withAir(air);
  }

  /** Returns the share of the coolant side that holds air, stated as such or as a volume. */
  private double trappedAir(double held) {
    OptionalDouble share = in.optional("trapped-air");
    if (share.isPresent()) {
      in.refuse("trapped-air-volume", "has no use beside trapped-air; give one or the other");
      return share.getAsDouble();
    }
    double volume = in.optional("trapped-air-volume").orElse(0);
    if (volume > MOST_AIR * held * (1 + 1e-9)) {
      in.problem(
          "trapped-air-volume",
          "is more than the coolant side can hold of air; allowed: up to "
              + Dimension.VOLUME.require("L").format(MOST_AIR * held, 2)
              + " L, 80 % of "
              + Dimension.VOLUME.require("L").format(held, 2)
              + " L");
      return 0;
    }
    return Math.min(MOST_AIR, volume / held);
  }

  private Exchanger fromValues(ConductanceReader reader, Sized sized) {
    Block block = sized.block();
    Conductance conductance = reader.read(block);
    double metal = bySize("mass", "metal-per-volume", block.volume());
    double held = bySize("coolant", "coolant-share", block.volume());
    Passes passes = passes();
    return new Exchanger(
        conductance,
        metal * Materials.ALUMINIUM_HEAT_CAPACITY,
        held,
        passes,
        grid(passes),
        losses.read(in, sized.way(passes)));
  }

  private Exchanger fromGeometry(Sized sized) {
    Block block = sized.block();
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
    Optional<Resistance> worked = conductance.geometry().map(Exchanger::resistance);
    return new Exchanger(
        conductance,
        mass * Materials.ALUMINIUM_HEAT_CAPACITY,
        held,
        passes,
        grid(passes),
        losses.read(in, sized.way(passes), worked));
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
