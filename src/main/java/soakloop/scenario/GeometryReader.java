package soakloop.scenario;

import java.util.Locale;
import java.util.Optional;
import soakloop.exchange.CoreGeometry;
import soakloop.exchange.DuctShape;
import soakloop.exchange.Fin;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.exchange.LaminarHeating;
import soakloop.exchange.Metal;
import soakloop.exchange.PlateFinGeometry;
import soakloop.exchange.TubeFinGeometry;
import soakloop.rig.GeometricConductance;

/** Reads an exchanger's geometry: its fins, and tubes with ports or plates with fins between. */
final class GeometryReader {
  private static final String BAR_AND_PLATE = "bar-and-plate";

  private final In in;
  private final Block block;
  private final int passes;

  GeometryReader(In in, Block block, int passes) {
    this.in = in;
    this.block = block;
    this.passes = passes;
  }

  /**
   * What follows from geometry.
   *
   * @param conductance between the streams
   * @param mass metal with tanks, kg
   * @param coolant coolant with that in the tanks, m3
   */
  record Made(GeometricConductance conductance, double mass, double coolant) {}

  /** Returns what follows; empty after a problem. */
  Optional<Made> read() {
    double unevenAir = in.number("uneven-air");
    double tankMetal = in.number("tank-metal");
    double tankCoolant = in.number("tank-coolant");
    Optional<CoreGeometry> geometry = in.choice("kind").equals(BAR_AND_PLATE) ? plates() : tubes();
    in.done();
    return geometry
        .map(GeometricCore::new)
        .filter(this::works)
        .map(
            core ->
                new Made(
                    new GeometricConductance(core, unevenAir),
                    core.mass() * (1 + tankMetal),
                    core.coolantVolume() * (1 + tankCoolant)));
  }

  private Optional<CoreGeometry> plates() {
    in.refuse("ports", "goes with tube-and-fin; this is " + BAR_AND_PLATE);
    double wall = in.number("wall");
    double bar = in.number("bar");
    Metal metal = metal();
    Fin coolantFin = new FinReader(in.section("coolant-fins"), false).read(0);
    double layer = coolantFin.spacing() + 2 * wall;
    Fin fin = new FinReader(in.section("fins"), true).read(layer);
    return layers(fin.spacing(), layer)
        .map(
            n ->
                new PlateFinGeometry(
                    block.along(), block.depth(), n, fin, coolantFin, wall, bar, passes, metal));
  }

  private Optional<CoreGeometry> tubes() {
    in.refuse("coolant-fins", "goes with " + BAR_AND_PLATE + "; this is tube-and-fin");
    in.refuse("bar", "goes with " + BAR_AND_PLATE + "; this is tube-and-fin");
    double wall = in.number("wall");
    Metal metal = metal();
    In ports = in.section("ports");
    double width = ports.number("width");
    double height = ports.number("height");
    double web = ports.number("web");
    ports.done();
    if (block.known() && width + 2 * wall > block.depth()) {
      ports.problem(
          "width", "and two walls do not fit a thickness of " + millimetres(block.depth()));
      return Optional.empty();
    }
    double layer = height + 2 * wall;
    Fin fin = new FinReader(in.section("fins"), true).read(layer);
    return layers(fin.spacing(), layer)
        .map(
            n ->
                new TubeFinGeometry(
                    block.along(),
                    block.depth(),
                    n,
                    fin,
                    new DuctShape.Rectangular(width, height),
                    width + web,
                    wall,
                    passes,
                    LaminarHeating.WALL_FLUX,
                    metal));
  }

  private Metal metal() {
    Metal usual = Metal.ALUMINIUM;
    return new Metal(in.number("metal-conductivity"), usual.density(), usual.heatCapacity());
  }

  /** Returns the air layers: those stated, if they fit the face, or as many as do. */
  private Optional<Integer> layers(double airLayer, double coolantLayer) {
    boolean stated = in.has("layers");
    int wanted = (int) in.optional("layers").orElse(1);
    if (!block.known()) {
      return Optional.empty();
    }
    double needed = wanted * airLayer + (wanted + 1) * coolantLayer;
    if (needed > block.across() * (1 + 1e-9)) {
      in.problem(
          stated ? "layers" : "",
          String.format(
              Locale.ROOT,
              "%d of %s, with coolant on both sides of each, take %s; the face has %s",
              wanted,
              millimetres(airLayer),
              millimetres(needed),
              millimetres(block.across())));
      return Optional.empty();
    }
    return Optional.of(
        stated ? wanted : CoreGeometry.layersIn(block.across(), airLayer, coolantLayer));
  }

  /** Finds out before the run what friction of louvred fins cannot take: thin sheet, few fins. */
  private boolean works(GeometricCore core) {
    try {
      double flow = core.geometry().air().freeArea();
      core.airLoss(flow, FluidState.ofAir(300).viscosity(), 1, 1, 1);
      return true;
    } catch (IllegalArgumentException e) {
      in.problem(
          "fins",
          "have no pressure loss by their equation; give thicker louvred sheet or more fins");
      return false;
    }
  }

  private static String millimetres(double length) {
    return ExchangerReader.millimetres(length) + " mm";
  }
}
