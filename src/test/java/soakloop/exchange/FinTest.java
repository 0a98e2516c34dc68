package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.quantity.OutsideRange;

@Tag("analytic")
class FinTest {
  private static final FluidState AIR = FluidState.ofAir(350);
  private static final double DEPTH = 0.05;
  private static final OffsetStripFin STRIP = new OffsetStripFin(1.6e-3, 8e-3, 0.1e-3, 3e-3);
  private static final LouvredFin LOUVRED =
      new LouvredFin(
          1.4e-3, 8e-3, 0.1e-3, new LouvredFin.Louvres(1.2e-3, 6.8e-3, Math.toRadians(27), 2e-3));

  static Stream<Fin> fins() {
    return Stream.of(new PlainFin(1.6e-3, 8e-3, 0.1e-3), STRIP, LOUVRED);
  }

  @ParameterizedTest
  @MethodSource("fins")
  void fasterAirTakesMoreHeatAndMorePressure(Fin fin) {
    double film = 0;
    double drag = 0;
    for (double g = 0.2; g < 60; g *= 1.03) {
      double nextFilm = fin.film(g, AIR, DEPTH);
      double nextDrag = g * g * fin.friction(g, AIR.viscosity(), DEPTH);
      assertTrue(nextFilm > film, fin + " film at " + g);
      assertTrue(nextDrag > drag, fin + " drag at " + g);
      film = nextFilm;
      drag = nextDrag;
    }
  }

  @ParameterizedTest
  @MethodSource("fins")
  void denserFinsLeaveLessGapAndMoreSurface(Fin fin) {
    Fin dense = fin.atDensity(800);
    assertEquals(1.0 / 800, dense.pitch(), 1e-15);
    assertTrue(dense.gap() < fin.gap());
    assertTrue(dense.hydraulicDiameter() < fin.hydraulicDiameter());
    assertTrue(dense.surfacePerLength() / dense.pitch() > fin.surfacePerLength() / fin.pitch());
    assertThrows(IllegalArgumentException.class, () -> fin.atDensity(1 / fin.thickness()));
    assertThrows(IllegalArgumentException.class, () -> fin.withGap(0));
  }

  @Test
  void brokenFinsBeatPlainOnes() {
    Fin plain = new PlainFin(1.6e-3, 8e-3, 0.1e-3);
    for (double g : new double[] {5, 10, 20}) {
      assertTrue(STRIP.film(g, AIR, DEPTH) > plain.film(g, AIR, DEPTH));
      assertTrue(
          STRIP.friction(g, AIR.viscosity(), DEPTH) > plain.friction(g, AIR.viscosity(), DEPTH));
    }
  }

  @Test
  void louvreFrictionIsContinuous() {
    LouvreCorrelation louvres = LOUVRED.correlation(20e-3);
    for (double joint : new double[] {LouvreCorrelation.FRICTION_FLOOR, 130, 230}) {
      double below = louvres.friction(joint * (1 - 1e-12));
      double above = louvres.friction(joint * (1 + 1e-12));
      assertEquals(below, above, 1e-9 * below);
    }
    // Laminar below the floor: f Re is constant, and there is no pole at Re 2.
    assertEquals(20 * louvres.friction(20), 2 * louvres.friction(2), 1e-9);
  }

  @Test
  void rangesAreToldButNotEnforced() {
    // At the middle of every range nothing is told.
    OffsetStripFin inside = new OffsetStripFin(1.3e-3, 5.2e-3, 0.1e-3, 3.2e-3);
    double g = 1000 * AIR.viscosity() / inside.hydraulicDiameter();
    assertEquals(List.of(), told(inside, g));
    assertEquals(1, told(inside, g / 100).size());
    OffsetStripFin thick = new OffsetStripFin(1.3e-3, 5.2e-3, 0.3e-3, 3.2e-3);
    assertEquals(2, told(thick, g).size());
    assertTrue(thick.film(g, AIR, DEPTH) > 0);
    assertTrue(told(thick, g).get(0).message().contains("the equation was made for"));
    assertEquals(List.of(), told(LOUVRED, 500 * AIR.viscosity() / 1.2e-3));
    assertEquals(1, told(LOUVRED, 50 * AIR.viscosity() / 1.2e-3).size());
  }

  private static List<OutsideRange> told(Fin fin, double g) {
    List<OutsideRange> told = new ArrayList<>();
    fin.checkRange(g, AIR, DEPTH, told::add);
    return told;
  }

  @Test
  void finEfficiencyHasItsLimits() {
    assertEquals(1, FinSurface.finEfficiency(0, 180, 1e-4, 4e-3));
    double many = FinSurface.finEfficiency(1e9, 180, 1e-4, 4e-3);
    assertEquals(1 / (4e-3 * Math.sqrt(2 * 1e9 / (180 * 1e-4))), many, 1e-12);
    assertEquals(1, FinSurface.overall(0, 0.3));
    assertEquals(0.3, FinSurface.overall(1, 0.3), 1e-15);
    assertThrows(
        IllegalArgumentException.class, () -> FinSurface.finEfficiency(-1, 180, 1e-4, 4e-3));
  }

  @Test
  void aDuctIsSmoothFromLaminarToTurbulent() {
    for (LaminarHeating heating : LaminarHeating.values()) {
      DuctFlow duct = new DuctFlow(new DuctShape.Rectangular(1.5e-3, 1.5e-3), 0.3, heating);
      double before = duct.nusselt(100, 10);
      double lastSlope = Double.NaN;
      for (double re = 110; re < 10_000; re += 10) {
        double now = duct.nusselt(re, 10);
        double slope = (now - before) / 10;
        assertTrue(slope >= 0, heating + " at Re " + re);
        if (re > 120) {
          assertTrue(Math.abs(slope - lastSlope) < 1.2e-3, heating + " bends at Re " + re);
        }
        lastSlope = slope;
        before = now;
      }
    }
  }

  @Test
  void entryFadesAlongTheDuct() {
    DuctShape round = new DuctShape.Circular(2e-3);
    DuctFlow brief = new DuctFlow(round, 0.01, LaminarHeating.ENTRY);
    DuctFlow endless = new DuctFlow(round, 1e4, LaminarHeating.ENTRY);
    assertTrue(brief.nusselt(1000, 5) > 1.5 * 3.66);
    assertEquals(3.66, endless.nusselt(1000, 5), 1e-3);
    assertThrows(IllegalArgumentException.class, () -> endless.nusselt(-1, 5));
    assertThrows(IllegalArgumentException.class, () -> endless.friction(0));
  }

  @Test
  void coolingSpeedsNothingUp() {
    // Without friction and area change, cooling from one density to a greater one wins pressure.
    PassageLoss loss = new PassageLoss(20, 1, 40);
    assertTrue(loss.total(0, 2, 2.2, 2.4) < 0);
    assertEquals(400 / (2 * 2.0) * 2 * (2 / 2.4 - 1), loss.total(0, 2, 2.2, 2.4), 1e-12);
    // Constant density: entrance and exit leave Kc + Ke.
    PassageLoss half = new PassageLoss(20, 0.5, 40);
    double kcKe = PassageLoss.contraction(0.5) + PassageLoss.expansion(0.5);
    assertEquals(400 / 4.0 * kcKe, half.total(0, 2, 2, 2), 1e-9);
  }
}
