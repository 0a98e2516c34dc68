package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;

/**
 * Which way a change of geometry must move what follows from it, at the same flows, over random
 * cores within the ranges of their equations. Directions follow from the surfaces and from films
 * and friction that go with a power of flow below 1 and 2: physics, no source needed.
 *
 * <p>Not a must, and so not held: conductance of ports and plain channels where flow turns
 * turbulent (a thicker core slows the coolant, and the film may fall more than the surface grows),
 * and the loss of plain air fins there (denser ones may calm the flow); anything with more height
 * of the fins, or thicker sheet, but what is named below (efficiency, surface and speed pull in
 * different directions).
 */
@Tag("analytic")
class MonotoneGeometryTest {
  private static final int CORES = 400;

  private static final FluidState AIR = FluidState.ofAir(360);
  private static final GlycolMix MIX = GlycolMix.ofVolume(Glycol.ETHYLENE, 0.3);
  private static final FluidState COOLANT = FluidState.of(MIX, 315);
  private static final double DENSITY = MIX.density(315);

  /** Reynolds number up to which a channel is laminar. */
  private static final double LAMINAR = 2300;

  /** From here on a turbulent film goes with a power of flow below 1 (Gnielinski, Re - 1000). */
  private static final double TURBULENT = 8000;

  /** A core with its flows, kg/s. */
  private record Case(CoreGeometry geometry, double air, double coolant) {
    GeometricCore core() {
      return new GeometricCore(geometry);
    }

    boolean inRange() {
      return core().outsideRange(air, AIR, coolant, COOLANT).isEmpty();
    }

    /** Whether the air's film goes with a power of flow below 1, and so with the surface. */
    boolean airIsPlain() {
      double re =
          air / geometry.air().freeArea() * geometry.air().hydraulicDiameter() / AIR.viscosity();
      return !(geometry.fin() instanceof PlainFin) || re < LAMINAR || re > TURBULENT;
    }

    boolean coolantIsPlain() {
      CorePassage passage = geometry.coolant();
      double re =
          coolant
              * geometry.passes()
              / passage.freeArea()
              * passage.hydraulicDiameter()
              / COOLANT.viscosity();
      boolean power = passage instanceof FinnedPassage f && f.fin() instanceof OffsetStripFin;
      return power || re < LAMINAR || re > TURBULENT;
    }
  }

  /** What is looked at. */
  private enum Figure {
    AIR_SIDE(c -> c.core().airSide(c.air, AIR)),
    COOLANT_SIDE(c -> c.core().coolantSide(c.coolant, COOLANT)),
    AIR_LOSS(c -> c.core().airLoss(c.air, AIR.viscosity(), 2.1, 2.1, 2.1)),
    COOLANT_LOSS(c -> c.core().coolantLoss(c.coolant, COOLANT.viscosity(), DENSITY)),
    MASS(c -> c.core().mass()),
    COOLANT_VOLUME(c -> c.core().coolantVolume()),
    WALL(c -> c.core().wallResistance());

    private final ToDoubleFunction<Case> value;

    Figure(ToDoubleFunction<Case> value) {
      this.value = value;
    }
  }

  private static final char UP = '+';
  private static final char DOWN = '-';
  private static final char SAME = '=';

  /** Not less, by rounding. */
  private static final char NO_LESS = '>';

  private static final char OPEN = '?';

  /** What a change does to the figures, in their order. */
  private record Change(String name, UnaryOperator<Case> edit, String must) {}

  private static UnaryOperator<Case> geometry(UnaryOperator<CoreGeometry> edit) {
    return c -> new Case(edit.apply(c.geometry), c.air, c.coolant);
  }

  private static List<Change> changes() {
    return List.of(
        new Change("thicker", geometry(g -> g.thicker(1.2)), "+>+-++-"),
        new Change(
            "denser fins", geometry(g -> g.withFinDensity(1.15 / g.fin().pitch())), "+=+=+=="),
        new Change("wider", geometry(g -> g.withWidth(1.2 * g.width())), "+>-+++-"),
        new Change("more layers", geometry(g -> g.withAirLayers(g.airLayers() + 3)), "+>--++-"),
        new Change("more passes", geometry(g -> withPasses(g, g.passes() + 1)), "=>=+==="),
        new Change("thicker wall", geometry(g -> withWall(g, 1.3 * g.wall())), "==>=+=+"),
        new Change("thicker sheet", geometry(MonotoneGeometryTest::thickerSheet), "?=?=+=="),
        new Change("metal that conducts more", geometry(MonotoneGeometryTest::copper), "+>==?=-"),
        new Change("more air", c -> new Case(c.geometry, 1.2 * c.air, c.coolant), "+=+===="),
        new Change("more coolant", c -> new Case(c.geometry, c.air, 1.2 * c.coolant), "=>=+==="));
  }

  private static CoreGeometry withPasses(CoreGeometry g, int passes) {
    return rebuilt(g, g.fin(), passes, g.wall(), g.metal());
  }

  private static CoreGeometry withWall(CoreGeometry g, double wall) {
    return rebuilt(g, g.fin(), g.passes(), wall, g.metal());
  }

  private static CoreGeometry copper(CoreGeometry g) {
    return rebuilt(g, g.fin(), g.passes(), g.wall(), new Metal(380, 8900, 385));
  }

  /** A quarter more sheet, inwards: the pitch stays. */
  private static CoreGeometry thickerSheet(CoreGeometry g) {
    Fin fin = g.fin();
    double t = 1.25 * fin.thickness();
    double gap = fin.pitch() - t;
    double height = fin.spacing() - t;
    Fin other;
    if (fin instanceof OffsetStripFin o) {
      other = new OffsetStripFin(gap, height, t, o.strip());
    } else if (fin instanceof LouvredFin l) {
      other = new LouvredFin(gap, height, t, l.louvres());
    } else {
      other = new PlainFin(gap, height, t);
    }
    return g.withFin(other);
  }

  private static CoreGeometry rebuilt(
      CoreGeometry g, Fin fin, int passes, double wall, Metal metal) {
    if (g instanceof PlateFinGeometry p) {
      return new PlateFinGeometry(
          p.width(), p.depth(), p.airLayers(), fin, p.coolantFin(), wall, p.bar(), passes, metal);
    }
    TubeFinGeometry t = (TubeFinGeometry) g;
    return new TubeFinGeometry(
        t.width(),
        t.depth(),
        t.airLayers(),
        fin,
        t.port(),
        t.portPitch(),
        wall,
        passes,
        t.heating(),
        metal);
  }

  /** Draws a core with its flows; the fins are the named kind's. */
  private static Optional<Case> draw(SplittableRandom random, int kind) {
    double width = random.nextDouble(0.15, 0.7);
    double depth = random.nextDouble(0.017, kind == 2 ? 0.045 : 0.12);
    int layers = random.nextInt(5, 40);
    double sheet = random.nextDouble(0.06e-3, 0.15e-3);
    double height = random.nextDouble(3e-3, 10e-3);
    double pitch = random.nextDouble(1.0e-3, 2.6e-3);
    double wall = random.nextDouble(0.3e-3, 0.8e-3);
    double tube = random.nextDouble(1.5e-3, 4e-3);
    int passes = random.nextInt(1, 4);
    try {
      Fin fin =
          switch (kind) {
            case 0 -> new PlainFin(pitch - sheet, height, sheet);
            case 1 ->
                new OffsetStripFin(pitch - sheet, height, sheet, random.nextDouble(2.2e-3, 7e-3));
            default ->
                new LouvredFin(
                    pitch - sheet,
                    height,
                    sheet,
                    new LouvredFin.Louvres(
                        random.nextDouble(0.8e-3, 1.8e-3),
                        0.85 * height,
                        Math.toRadians(random.nextDouble(15, 33)),
                        tube + 2 * wall));
          };
      CoreGeometry geometry =
          random.nextBoolean()
              ? new TubeFinGeometry(
                  width,
                  depth,
                  layers,
                  fin,
                  new DuctShape.Rectangular(random.nextDouble(1e-3, 4e-3), tube),
                  random.nextDouble(4.3e-3, 5e-3),
                  wall,
                  passes,
                  LaminarHeating.WALL_FLUX,
                  Metal.ALUMINIUM)
              : new PlateFinGeometry(
                  width,
                  depth,
                  layers,
                  fin,
                  random.nextBoolean()
                      ? new PlainFin(pitch, tube, 0.12e-3)
                      : new OffsetStripFin(
                          random.nextDouble(1.2e-3, 2.4e-3),
                          random.nextDouble(2.5e-3, 5e-3),
                          0.12e-3,
                          random.nextDouble(3e-3, 8e-3)),
                  wall,
                  3e-3,
                  passes,
                  Metal.ALUMINIUM);
      double air = random.nextDouble(4, 25) * geometry.air().freeArea();
      double coolant =
          Math.exp(random.nextDouble(Math.log(30), Math.log(1500)))
              * geometry.coolant().freeArea()
              / passes;
      return Optional.of(new Case(geometry, air, coolant)).filter(Case::inRange);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  @Test
  void changesMoveWhatTheyMustTheWayTheyMust() {
    List<String> wrong = new ArrayList<>();
    List<Change> changes = changes();
    int[] held = new int[changes.size()];
    for (int kind = 0; kind < 3; kind++) {
      SplittableRandom random = new SplittableRandom(71 + kind);
      int drawn = 0;
      while (drawn < CORES) {
        Optional<Case> found = draw(random, kind);
        if (found.isPresent()) {
          drawn++;
          for (int i = 0; i < held.length; i++) {
            held[i] += hold(changes.get(i), found.get(), wrong);
          }
        }
      }
    }
    assertTrue(
        wrong.isEmpty(), () -> wrong.size() + ": " + wrong.subList(0, Math.min(12, wrong.size())));
    for (int i = 0; i < held.length; i++) {
      assertTrue(held[i] > CORES, changes.get(i).name + " held " + held[i] + " times only");
    }
  }

  private static int hold(Change change, Case before, List<String> wrong) {
    Case after;
    try {
      after = change.edit.apply(before);
    } catch (IllegalArgumentException e) {
      return 0;
    }
    if (!after.inRange()) {
      return 0;
    }
    List<Figure> figures = List.of(Figure.values());
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      char must = change.must.charAt(i);
      boolean films =
          switch (figure) {
            case AIR_SIDE, AIR_LOSS -> before.airIsPlain() && after.airIsPlain();
            case COOLANT_SIDE -> before.coolantIsPlain() && after.coolantIsPlain();
            default -> true;
          };
      double was = figure.value.applyAsDouble(before);
      double is = figure.value.applyAsDouble(after);
      boolean right =
          switch (must) {
            case UP -> is > was;
            case DOWN -> is < was;
            case SAME -> Math.abs(is - was) <= 1e-9 * was;
            case NO_LESS -> is >= was * (1 - 1e-9);
            case OPEN -> true;
            default -> throw new AssertionError(must);
          };
      if (films && !right) {
        wrong.add(change.name + " " + figure + " " + must + " " + is / was + " " + before);
      }
    }
    return 1;
  }
}
