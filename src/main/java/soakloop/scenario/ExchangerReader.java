package soakloop.scenario;

import java.util.Locale;
import java.util.Optional;
import soakloop.fluid.MoistAir;
import soakloop.rig.Conductance;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Materials;
import soakloop.rig.Passes;

/** Reads core and heat exchanger, which share one grammar: stated values, or else from size. */
final class ExchangerReader {
  private final In in;
  private final Day day;
  private final PressureLossReader losses;

  /**
   * The block of an exchanger.
   *
   * @param volume m3; 0 where it is not known
   * @param length along the tubes, m; 0 where it is not known
   * @param usualPasses of the exchanger that its default pressure loss is for
   */
  private record Block(double volume, double length, int usualPasses) {
    PressureLossReader.Way way(Passes passes) {
      return new PressureLossReader.Way(
          length, length > 0 ? volume / length : 0, passes.count(), usualPasses);
    }
  }

  ExchangerReader(In in, Day day, PressureLossReader losses) {
    this.in = in;
    this.day = day;
    this.losses = losses;
  }

  /** The core: its face is length by width, its depth the thickness. */
  Exchanger core() {
    In conductance = in.section("conductance");
    if (in.present() && !in.has("size") && needsVolume(conductance)) {
      in.problem("", "needs size; or else mass, coolant and a conductance with a value");
    }
    In size = in.section("size");
    double area = 0;
    double volume = 0;
    double length = 0;
    if (size.present()) {
      length = size.number("length");
      area = length * size.number("width");
      volume = area * size.number("thickness");
      size.done();
    }
    return exchanger(
        new ConductanceReader(conductance, "air-flux", area), new Block(volume, length, 2));
  }

  /** The heat exchanger: its depth counts where mass, coolant or conductance follow from size. */
  HeatExchanger heatExchanger(String name) {
    In face = in.section("face");
    double width = face.number("width");
    double area = width * face.number("height");
    face.done();
    In conductance = in.section("conductance");
    double volume = 0;
    if (needsVolume(conductance)) {
      volume = area * in.number("thickness");
    } else {
      in.idle("thickness");
    }
    double density =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    ConductanceReader reader = new ConductanceReader(conductance, "air-speed", area * density);
    Optional<String> behind = in.text("behind");
    return new HeatExchanger(name, exchanger(reader, new Block(volume, width, 1)), area, behind);
  }

  private boolean needsVolume(In conductance) {
    return !conductance.has("value") || !in.has("mass") || !in.has("coolant");
  }

  /** Reads what both have. */
  private Exchanger exchanger(ConductanceReader reader, Block block) {
    double volume = block.volume();
    Conductance conductance = reader.read(volume);
    double metal = bySize("mass", "metal-per-volume", volume);
    double held = bySize("coolant", "coolant-share", volume);
    Passes passes = passes();
    Exchanger exchanger =
        new Exchanger(
            conductance,
            metal * Materials.ALUMINIUM_HEAT_CAPACITY,
            held,
            passes,
            grid(passes),
            losses.read(in, block.way(passes)));
    double air = in.optional("trapped-air").orElse(0);
    in.done();
    return exchanger.withAir(air);
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
